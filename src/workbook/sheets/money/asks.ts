import type { Job, Ref, SheetLayout, TableRef } from "../../layout";
import { cellOf, fill } from "./cells";
import { MARK } from "./priceList";
import { UNIT_COST_FORMAT } from "./takeoffColumns";

/**
 * The products that the lines ask for, by size and type: how much of each, the code it has in the price list, and its
 * price. A line that has no price of its own is priced by them, each size by its own.
 */
export function asks(s: SheetLayout, job: Job, lines: TableRef): void {
  const asked = job.takeoffLines.flatMap(({ code, asks: some = [] }, line) =>
    some.map((ask) => ({ ...ask, code, line })),
  );
  s.section("Products by size");
  s.note(
    "What the lines above ask the price list for: the first code that Rates holds counts. A size that is not there has no price, " +
      "and no other size stands in for it.",
  );
  const table = s.table({
    rows: asked.length,
    columns: [
      { key: "first", title: "Code", kind: "text", name: "AskCodes" },
      { key: "line", title: "For the line", kind: "text", fixed: asked.map(({ code }) => code) },
      { key: "second", title: "or", kind: "text", across: 3 },
      { key: "count", title: "How much", kind: "number" },
      {
        key: "place",
        title: "Row",
        kind: "count",
        formula:
          '=IF([count]<=0,"",IFERROR(MATCH([first],RateCodes,0),IF([second]="","",IFERROR(MATCH([second],RateCodes,0),""))))',
      },
      {
        key: "price",
        title: "Price",
        kind: "money",
        format: UNIT_COST_FORMAT,
        formula: '=IF([place]="","",IF(INDEX(RateCosts,[place])="","",INDEX(RateCosts,[place])))',
      },
      {
        key: "missing",
        title: "Not on Rates",
        kind: "text",
        name: "AskMissing",
        across: 3,
        // A price that is no number is none: a text would count as nothing in the sum.
        formula: '=IF([count]<=0,"",IF(ISNUMBER([price]),"",[first]))',
      },
      { key: "mark", title: "Mark", kind: "text", formula: '=IF([place]="","",INDEX(RateMarks,[place])&"")' },
    ],
  });
  asked.forEach(({ count, codes: [first = '""', second = '""'] }, index) => {
    fill(s, table.cell("first", index + 1), first);
    fill(s, table.cell("second", index + 1), second);
    fill(s, table.cell("count", index + 1), count);
  });
  job.takeoffLines.forEach((_, line) => {
    const first = asked.findIndex((ask) => ask.line === line);
    if (first < 0) return;
    const last = asked.filter((ask) => ask.line === line).length + first;
    const over = (key: string): string => `${inSheet(table.cell(key, first + 1))}:${inSheet(table.cell(key, last))}`;
    const [price, mark, order] = (["price", "mark", "order"] as const).map((key) => lines.cell(key, line + 1));
    if (!price || !mark || !order) return;
    const rate = /^=IF\((.+?)="","",/.exec(cellOf(s, price).formula ?? "")?.[1] ?? '""';
    const ofList = /,(\S+)&"",""\)$/.exec(cellOf(s, mark).formula ?? "")?.[1] ?? '""';
    fill(s, price, priceByProducts(rate, over("count"), over("price")));
    const invented = `IF(COUNTIFS(${over("count")},">0",${over("mark")},"${MARK}")>0,"${MARK}","")`;
    fill(s, mark, `IF(N(${inSheet(order)})>0,IF(${rate}<>"",${ofList}&"",${invented}),"")`);
  });
}

function inSheet(at: Ref): string {
  return at.address.replace(/^.*!/, "");
}

/** The mean of the products' prices by how much there is of each, where the line has no price of its own on Rates. */
function priceByProducts(rate: string, count: string, price: string): string {
  const mean = `ROUND(SUMPRODUCT(${count},${price})/SUM(${count}),4)`;
  const missing = `SUMPRODUCT((${count}>0)*(1-ISNUMBER(${price})))>0`;
  return `IF(${rate}<>"",ROUND(${rate},4),IF(SUM(${count})=0,"",IF(${missing},"",${mean})))`;
}

/** A number as it stands in a code: with a point, whatever the region writes. */
export function inCode(value: string, decimals = 2): string {
  return `SUBSTITUTE(ROUND(${value},${decimals})&"",",",".")`;
}
