import { COST_KIND_WORDS, costKindWord } from "../../../calc/money/costKinds";
import { shippedBook } from "../../../book/shipped";
import { withSides } from "../../../book/sides";
import type { Product } from "../../../book/types";
import { serialOf } from "../../../calc/quantity/dateSerial";
import type { Job, RateLine, SheetLayout, TableRef } from "../../layout";
import { headsInSight } from "../../layout/headsInSight";
import type { CellValue } from "../../model";
import { RATE_COLUMNS, RATE_TABLE } from "../../rateColumns";
import { fill, fillDown, lock } from "../money/cells";
import { costKindOf } from "../money/costKinds";
import { UNIT_COST_FORMAT } from "../takeoff/takeoffColumns";
import { isPriced, MARK, PRICE_DAY } from "./asShipped";

/** Items the list takes, those that the workbook comes with included. */
export const PRICE_ROWS = 20_200;

/** What the sheets ask for, at invented prices, and below it as many of the user's own items as he likes; it ends the sheet. */
export function priceList(s: SheetLayout, job: Job): void {
  s.section("Price list");
  s.note(
    "Add items of your own below the last row, as many as 20,000; or let the pane read a supplier's CSV file, which shows " +
      "what would change first. The first items are asked for by the other sheets, so that code and unit stay. Those without a cost are " +
      "priced by size, from the items below whose code names kind, size and type; a cost typed there goes before. " +
      "So do packs, minimum, waste, supplier and freight. " +
      "what the supplier calls an item goes under Supplier's code, and a file with those codes finds it too.",
  );
  const lines = job.rateLines;
  const invented = job.filled === "demo";
  const known = new Set(lines.map(({ code }) => code));
  // A blank job has no prices at all.
  const products = invented ? shippedBook(job.system).products.filter(({ code }) => !known.has(code)) : [];
  const rows = [...lines.map((line) => rowOf(line, job)), ...products.map((product) => productRow(product, job))];
  s.input({
    name: "PricesConfirmed",
    label: "All prices confirmed on",
    kind: "date",
    optional: true,
    message: "Day you confirmed every price on the list; until then those that came with the workbook are invented.",
    note: '="Amounts are in "&Currency&". One by one: change a price, or type the day it was given under Price of."',
  });
  // Every page says in which money its prices are, and when they were confirmed.
  s.print({ landscape: true, titleRows: [s.row - 1, s.row] });
  const table = s.table({
    name: RATE_TABLE,
    rows: rows.length + 1,
    open: { rows: PRICE_ROWS, from: rows.length + 1 },
    columns: [
      column("description", "Description", "text", { max: 200, message: "What it is." }),
      column("code", "Code", "text", { max: 100, message: "The code it is looked up by; each code once." }),
      column("unit", "Unit", "text", { max: 20, message: "Unit it is priced and bought in." }),
      column("cost", "Cost", "money", { min: 0, max: 1_000_000, message: "Price you pay for one unit, without tax." }),
      column("pack", "Pack", "number", { min: 0.0001, max: 1_000_000, message: "Quantity sold in one piece." }),
      column("minimum", "Minimum", "number", { min: 0, max: 1_000_000, message: "Least quantity the supplier sells." }),
      column("waste", "Waste", "share", { min: 0, max: 2, message: "Share added to the quantity needed." }),
      column("supplier", "Supplier", "text", { max: 100, message: "Who sells it." }),
      column("kind", "Cost kind", "text", {
        choices: COST_KIND_WORDS[job.system],
        message: "Which line of Price it counts under.",
      }),
      column("taxable", "Taxable", "text", { choices: ["yes", "no"], message: "Whether sales tax is owed on it." }),
      column("day", "Price of", "date", { message: "Day the price was given." }),
      column("theirs", "Supplier's code", "text", { max: 100, message: "What the supplier calls it, if anything." }),
      {
        key: "came",
        title: "Came as",
        kind: "text",
        name: "RateOrigins",
        input: {
          max: 20,
          message:
            "Says invented where the price came so, with the workbook or from a book. Clear it if the price is yours.",
        },
      },
      {
        key: "freight",
        title: "Freight",
        kind: "money",
        name: "RateFreights",
        input: { min: 0, max: 1_000_000, message: "Charged once for delivering an order of it, without tax." },
      },
      { key: "mark", title: "Mark", kind: "text", name: "RateMarks" },
    ],
    usual: rows,
  });
  headsInSight(s, table.body.top - 1, "Price list");
  // What is sorted ends before the marks, which follow their rows by the code.
  s.filter(table.body.top - 1, table.body.left, table.body.bottom, table.column("freight").right);
  lines.forEach((line, index) => {
    const { priceFormula } = line;
    // Takeoff reads these rows where they stand, so that codes must not move.
    lock(s, table.cell("code", index + 1));
    lock(s, table.cell("unit", index + 1));
    if (priceFormula !== undefined)
      fill(s, table.cell("cost", index + 1), priceFormula, {
        label: "Price",
        source: "by definition: cost over amount",
      });
  });
  marks(s, table);
}

/** A price that came as invented stays so until it, or the day it is of, is another; as far down as any came so. */
function marks(s: SheetLayout, table: TableRef): void {
  const used = (column: string): string => `FILTER(${column},SEQUENCE(ROWS(${column}))<=MAX(2,RateOriginRows))`;
  fillDown(
    s,
    table.column("mark"),
    `LET(came,${used("RateOrigins")},code,${used("RateCodes")},` +
      `IF(came="","",IFERROR(INDEX(ShippedMarks,MATCH(code,ShippedCodes,0)),came)))`,
    { label: "Mark", source: "by definition: as it came, unless the price, or the day it is of, is another" },
  );
}

function column(
  key: (typeof RATE_COLUMNS)[number]["field"],
  title: string,
  kind: "text" | "money" | "number" | "share" | "date",
  input: { min?: number; max?: number; choices?: readonly string[]; message: string },
) {
  return {
    key,
    title,
    kind,
    name: RATE_COLUMNS.find(({ field }) => field === key)?.name,
    ...(kind === "money" ? { format: UNIT_COST_FORMAT } : {}),
    input,
  };
}

/** A blank job has terms of sale, which are usual, and no prices. */
function rowOf(line: RateLine, job: Job): CellValue[] {
  // What is priced by size is bought as the product of that size is; terms typed here go before.
  if (job.takeoffLines.some(({ code, asks }) => code === line.code && asks)) {
    return [line.description, line.code, line.unit, ...Array.from({ length: 11 }, () => "")];
  }
  const filled = job.filled === "demo";
  return [
    line.description,
    line.code,
    line.unit,
    filled && line.priceFormula === undefined && line.price !== undefined ? job.pick(line.price) : "",
    line.pack === undefined ? 1 : job.pick(line.pack),
    line.minimum === undefined ? 0 : job.pick(line.minimum),
    line.waste ?? 0,
    filled ? line.supplier : "",
    costKindWord(costKindOf(line), job.system),
    "yes",
    filled && isPriced(line) ? PRICE_DAY : "",
    "",
    filled && isPriced(line) ? MARK : "",
    "",
  ];
}

function productRow(product: Product, { system }: Job): CellValue[] {
  const { code, unit, price, pack, minimum, waste, supplier, costKind, taxable, day, theirs, freight } = product;
  const terms = [price ?? "", pack, minimum, waste, supplier, costKindWord(costKind, system), taxable ? "yes" : "no"];
  return [withSides(product, system), code, unit, ...terms, serialOf(day) ?? "", theirs, MARK, freight || ""];
}
