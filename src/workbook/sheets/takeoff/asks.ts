import type { Ref } from "../../layout";
import { type AskSpec, type Job, type SheetLayout, type TableRef } from "../../layout";
import { areaAddress } from "../../layout/address";
import type { Origin } from "../../model";
import type { ColumnSpec } from "../../layout/tableColumns";
import { cellOf, fill, fillDown } from "../money/cells";
import { inPacks, UNIT_COST_FORMAT } from "./takeoffColumns";

/** What stands as the cost of a product that has no price. */
export const NO_PRICE = "no price";

/** Products in the order of their lines, each with the lines of its rows and the first of these, counted from 1. */
function askedFor(job: Job): { readonly ask: AskSpec; readonly lines: readonly string[]; readonly first: number }[] {
  let first = 1;
  return job.takeoffLines.flatMap(({ code, asks = [] }) =>
    asks.map((ask) => {
      const lines = ask.lines ?? Array.from({ length: ask.rows ?? 1 }, () => code);
      const placed = { ask, lines, first };
      first += lines.length;
      return placed;
    }),
  );
}

/**
 * The products that the lines ask for, by size and type: how much of each, the code it has in the price list, and its
 * price and terms. A line that has none of its own takes theirs: each product is bought in packs of its own, the price is
 * the mean by how much is bought of each, and all freight is paid. Its waste, minimum and pack are for show: the mean, the
 * sum and the largest.
 *
 * @param lines what the lines need, by their codes
 * @returns where it stands how much is asked for of each product of a line, by the line's code
 */
export function asks(s: SheetLayout, job: Job, lines: TableRef): ReadonlyMap<string, Ref> {
  const asked = askedFor(job);
  const lineOf = asked.flatMap((one) => one.lines);
  // Without the line of all freight: it has no products, and its need waits for the orders of the others.
  const [needs, codes] = ["need", "code"].map((key) => {
    const { top, left, bottom } = lines.column(key);
    return areaAddress({ top, left, bottom: bottom - 1, right: left }, true);
  });
  const need = `INDEX(${needs},MATCH([line],${codes},0))`;
  s.section("Products by size");
  s.note(
    "What the lines above ask the price list for: the first code that Rates holds counts. A size that is not there has no price, " +
      "and no other size stands in for it.",
  );
  const table = s.table({
    // Functions that count by a column take no single cell for one.
    rows: Math.max(2, lineOf.length),
    columns: [
      { key: "first", title: "Code", kind: "text", name: "AskCodes" },
      { key: "line", title: "For the line", kind: "text", name: "AskLines", fixed: lineOf },
      { key: "second", title: "or", kind: "text", whole: true, across: 3 },
      { key: "count", title: "How much", kind: "number", name: "AskCounts" },
      {
        key: "place",
        title: "Row",
        kind: "count",
        whole: true,
        formula:
          '=IF([count]<=0,"",IF(ISNUMBER(MATCH([first],RateCodes,0)),MATCH([first],RateCodes,0),' +
          'IF([second]="","",IFERROR(MATCH([second],RateCodes,0),""))))',
      },
      {
        key: "price",
        title: "Price",
        kind: "money",
        format: UNIT_COST_FORMAT,
        whole: true,
        formula: '=IF([place]="","",IF(INDEX(RateCosts,[place])="","",INDEX(RateCosts,[place])))',
      },
      {
        key: "missing",
        title: "Not on Rates",
        kind: "text",
        name: "AskMissing",
        across: 3,
        whole: true,
        formula: '=IF([count]<=0,"",IF(ISNUMBER([price]),"",[first]))',
      },
      // A supplier's name needs the width of its column above.
      said("supplier", "Supplier", "AskSuppliers", "RateSuppliers"),
      said("mark", "Mark", "AskMarks", "RateMarks"),
      said("kind", "Cost kind", "AskKinds", "RateKinds"),
      amount("waste", "Waste", "share", "AskWastes", "RateWastes"),
      amount("minimum", "Minimum", "number", "AskMinimums", "RateMinimums"),
      amount("pack", "Pack", "number", "AskPacks", "RatePacks"),
      {
        key: "freight",
        title: "Freight",
        kind: "money",
        name: "AskFreights",
        whole: true,
        // Once for each product, however many lines want it.
        formula: '=IF([place]="",0,IF(MATCH([place],[place],0)=[number],INDEX(RateFreights,[place])+0,0))',
      },
      said("taxable", "Taxable", "AskTaxables", "RateTaxables"),
      {
        key: "wasted",
        title: "Much × waste",
        source: "by definition: amount × waste, for the mean",
        kind: "number",
        name: "AskWasted",
        whole: true,
        formula: "=[count]*[waste]",
      },
      {
        key: "need",
        title: "Of the need",
        source: "by definition: the line's need, shared by amount",
        kind: "number",
        whole: true,
        formula: `=IF([count]<=0,0,IF(${need}="",0,${need}*[count]/SUMIFS(AskCounts,AskLines,[line])))`,
      },
      {
        key: "least",
        title: "With waste",
        source: "by definition: need with waste, the minimum at least",
        kind: "number",
        whole: true,
        formula: "=IF([need]*(1+[waste])>[minimum],[need]*(1+[waste]),[minimum])",
      },
      {
        key: "buy",
        title: "To buy",
        source: "by definition: in whole packs; a millionth of a pack is noise",
        kind: "number",
        name: "AskBuys",
        whole: true,
        formula: `=IF([count]<=0,0,IF([need]<=0,[count],${inPacks("[least]", "[pack]")}))`,
      },
      {
        key: "cost",
        title: "Cost",
        kind: "money",
        name: "AskCosts",
        whole: true,
        // A price that is no number is none: a text would count as nothing in the sum.
        formula: `=IF([count]<=0,0,IF(ISNUMBER([price]),[buy]*[price],"${NO_PRICE}"))`,
      },
      { key: "number", title: "No.", kind: "count", fixed: lineOf.map((_, index) => index + 1) },
      {
        key: "row",
        title: "Its row",
        kind: "count",
        fixed: asked.flatMap(({ lines }) => lines.map((_, row) => row + 1)),
      },
    ],
  });
  const rowsFrom = (key: string, first: number, count: number): Ref => table.cell(key, first).down(count);
  const put = (key: string, first: number, count: number, formula: string, origin?: Origin): void => {
    const column = (name: string): string => areaAddress(rowsFrom(name, first, count));
    const whole = formula.replaceAll("[line]", column("line")).replaceAll("[row]", column("row"));
    if (count > 1) fillDown(s, rowsFrom(key, first, count), whole, origin);
    else fill(s, rowsFrom(key, first, count), whole, origin);
  };
  for (const [key, which] of [
    ["first", 0],
    ["second", 1],
  ] as const)
    for (const { formula, first, count } of runsOf(asked, which)) put(key, first, count, formula);
  const counts = new Map<string, Ref>();
  for (const { ask, first, lines: of } of asked) {
    const cells = rowsFrom("count", first, of.length);
    if (ask.count === 1) cellOf(s, cells).value = 1;
    else {
      const origin = ask.source === undefined ? undefined : { label: "How much", source: ask.source };
      put("count", first, of.length, ask.count, origin);
    }
    counts.set(of[0] ?? "", cells);
  }
  return counts;
}

/** The formulas of the products' codes, each with the rows it fills: of neighbours that read their own rows by number one is enough. */
function runsOf(
  asked: ReturnType<typeof askedFor>,
  which: number,
): { readonly formula: string; readonly first: number; count: number }[] {
  const runs: { formula: string; first: number; count: number }[] = [];
  for (const { ask, first, lines } of asked) {
    const formula = ask.codes[which] ?? (which === 0 ? '""' : undefined);
    if (formula === undefined) continue;
    const before = runs.at(-1);
    const shared = formula.includes("[row]") && before?.formula === formula && before.first + before.count === first;
    if (shared) before.count += lines.length;
    else runs.push({ formula, first, count: lines.length });
  }
  return runs;
}

/** What the price list says of a product, once it is found there. */
function said(key: string, title: string, name: string, list: string): ColumnSpec {
  return { key, title, kind: "text", name, whole: true, formula: `=IF([place]="","",INDEX(${list},[place])&"")` };
}

/** A word in place of a number is an error, which holds the price back; blank is 0. */
function amount(key: string, title: string, kind: "share" | "number", name: string, list: string): ColumnSpec {
  return { key, title, kind, name, whole: true, formula: `=IF([place]="",0,INDEX(${list},[place])+0)` };
}

/** A number as it stands in a code: with a point, whatever the region writes. */
export function inCode(value: string, decimals = 2): string {
  return `SUBSTITUTE(ROUND(${value},${decimals})&"",",",".")`;
}
