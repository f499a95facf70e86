import type { Job, Ref, SheetLayout, TableRef } from "../../layout";
import { columnLetters } from "../../layout/address";
import { bare } from "../../layout/conditions";
import type { ColumnSpec } from "../../layout/tableColumns";
import { RATE_TABLE } from "../../rateColumns";
import { cellOf, fill } from "../money/cells";
import { MARK } from "../rates/priceList";
import { UNIT_COST_FORMAT } from "./takeoffColumns";

/**
 * The products that the lines ask for, by size and type: how much of each, the code it has in the price list, and its
 * price and terms. A line that has none of its own takes theirs: each product is bought in packs of its own, the price is
 * the mean by how much is bought of each, and all freight is paid. Its waste, minimum and pack are for show: the mean, the
 * sum and the largest.
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
  const head = s.row;
  const above = (key: string, column: number): string => `$${columnLetters(column)}$${head}:[${key}:above]`;
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
      // A supplier's name needs the width of its column above.
      said("supplier", "Supplier", "RateSuppliers"),
      said("mark", "Mark", "RateMarks"),
      said("kind", "Cost kind", "RateKinds"),
      amount("waste", "Waste", "share", "RateWastes"),
      amount("minimum", "Minimum", "number", "RateMinimums"),
      amount("pack", "Pack", "number", "RatePacks"),
      {
        key: "freight",
        title: "Freight",
        kind: "money",
        // Once for each product, however many lines want it.
        formula:
          `=IF([place]="",0,IF(COUNTIFS(${above("place", 7)},[place],${above("count", 6)},">0")>0,0,` +
          "INDEX(RateFreights,[place])+0))",
      },
      said("taxable", "Taxable", "RateTaxables"),
      { key: "buy", title: "To buy", kind: "number" },
    ],
  });
  asked.forEach(({ count, codes: [first = '""', second = '""'] }, index) => {
    fill(s, table.cell("first", index + 1), first);
    fill(s, table.cell("second", index + 1), second);
    fill(s, table.cell("count", index + 1), count);
  });
  const rates = job.tables.get(RATE_TABLE);
  if (!rates) throw new Error("Rates must be laid out before Takeoff");
  const rateRows = new Map(job.rateLines.map(({ code }, index) => [code, index + 1]));
  job.takeoffLines.forEach(({ code }, line) => {
    const top = asked.findIndex((ask) => ask.line === line);
    if (top < 0) return;
    const last = asked.filter((ask) => ask.line === line).length + top;
    const over = (key: string): string => `${inSheet(table.cell(key, top + 1))}:${inSheet(table.cell(key, last))}`;
    const at = (key: string): Ref => lines.cell(key, line + 1);
    const listed = (field: string): string => rates.cell(field, rateRows.get(code) ?? 1).address;
    const rate = listed("cost");
    const [order, need] = [inSheet(at("order")), inSheet(at("need"))];
    for (let row = top + 1; row <= last; row++) {
      const [count, waste, minimum, pack] = ["count", "waste", "minimum", "pack"].map((key) =>
        inSheet(table.cell(key, row)),
      );
      const share = `${need}*${count}/SUM(${over("count")})`;
      const bought = inPacks(`MAX(${share}*(1+${waste}),${minimum})`, String(pack));
      fill(s, table.cell("buy", row), `IF(N(${count})<=0,0,IF(N(${need})<=0,${count},${bought}))`);
    }
    const own = ["pack", "minimum", "waste"].map(listed).join("&");
    const [whole, each] = [cellOf(s, at("order")).formula ?? "", `ROUND(SUM(${over("buy")}),6)`];
    fill(s, at("order"), `IF(OR(${own}<>"",SUM(${over("buy")})=0,N(${need})<=0),${bare(whole)},${each})`);
    fill(s, at("price"), priceByProducts(rate, over("buy"), over("price")));
    const invented = `IF(COUNTIFS(${over("count")},">0",${over("mark")},"${MARK}")>0,"${MARK}","")`;
    fill(s, at("mark"), `IF(N(${order})>0,IF(${rate}<>"",${listed("mark")}&"",${invented}),"")`);
    const orElse = (key: string, otherwise: string): void =>
      fill(s, at(key), `IF(${listed(key)}<>"",${listed(key)},${otherwise})`);
    const [count, waste, pack] = [over("count"), over("waste"), over("pack")];
    orElse("waste", `IF(SUM(${count})=0,0,SUMPRODUCT(${count},${waste})/SUM(${count}))`);
    orElse("minimum", `SUM(${over("minimum")})`);
    orElse("pack", `IF(MAX(${pack})>0,MAX(${pack}),1)`);
    const first = (key: string, otherwise: string): void =>
      orElse(key, `IFERROR(INDEX(${over(key)},MATCH("?*",${over(key)},0)),"${otherwise}")`);
    first("supplier", "");
    first("kind", "material");
    first("taxable", "yes");
    const freight = `IF(${listed("freight")}<>"",${listed("freight")},IF(${rate}<>"",0,SUM(${over("freight")})))`;
    fill(s, at("freight"), `IF(N(${order})>0,${freight},0)`);
  });
}

/** What the price list says of a product, once it is found there. */
function said(key: string, title: string, name: string): ColumnSpec {
  return { key, title, kind: "text", formula: `=IF([place]="","",INDEX(${name},[place])&"")` };
}

/** A word in place of a number is an error, which holds the price back; blank is 0. */
function amount(key: string, title: string, kind: "share" | "number", name: string): ColumnSpec {
  return { key, title, kind, formula: `=IF([place]="",0,INDEX(${name},[place])+0)` };
}

function inSheet(at: Ref): string {
  return at.address.replace(/^.*!/, "");
}

/** The mean of the products' prices by how much is bought of each, where the line has no price of its own on Rates. */
function priceByProducts(rate: string, count: string, price: string): string {
  const mean = `ROUND(SUMPRODUCT(${count},${price})/SUM(${count}),4)`;
  const missing = `SUMPRODUCT((${count}>0)*(1-ISNUMBER(${price})))>0`;
  return `IF(${rate}<>"",ROUND(${rate},4),IF(SUM(${count})=0,"",IF(${missing},"",${mean})))`;
}

/** So much in whole packs; a millionth of a pack is noise. */
function inPacks(wanted: string, pack: string): string {
  const size = `IF(${pack}>0,${pack},1)`;
  return `ROUND(MAX(1,ROUNDUP(ROUND(${wanted}/${size}-0.000001,9),0))*${size},6)`;
}

/** A number as it stands in a code: with a point, whatever the region writes. */
export function inCode(value: string, decimals = 2): string {
  return `SUBSTITUTE(ROUND(${value},${decimals})&"",",",".")`;
}
