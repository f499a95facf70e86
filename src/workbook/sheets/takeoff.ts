import { COST_KINDS } from "../../calc/money/priceBuildUp";
import { defineSheet, Ref, type Job, type PlacedTakeoffLine, type SheetLayout, type TableRef } from "../layout";
import { cellAddress } from "../layout/address";
import { bare, whenFilled } from "../layout/conditions";
import type { ColumnSpec } from "../layout/tables";
import { RATE_COLUMNS, RATE_TABLE } from "../rateColumns";
import { cellOf, fill, fillDown } from "./money/cells";
import { LOOKED_UP, orderedFormula, TAKEOFF_KEYS, TAKEOFF_NAMES, TITLES, workedOut } from "./money/takeoffColumns";

/** Rows for what the user adds. */
const OWN_ROWS = 40;

/** Every quantity of the job, with waste, rounded up to what can be bought, at the price list's prices. */
export const takeoff = defineSheet({
  name: "Takeoff",
  order: 11,
  turn: 1,
  build(s, job) {
    s.widths([34, 13, 9, 11, 9, 10, 10, 11, 12, 13, 12, 26, 9, 22, 11, 14, 9]);
    s.title("Takeoff", "Read what the job needs and what to buy; add your own lines below.");
    s.note(
      "To order = need with waste, at least the minimum, rounded up to whole packs. Prices and packs come from Rates.",
    );
    s.section("From the sheets");
    const head = s.row;
    const lines = s.table({ rows: job.takeoffLines.length, columns: sheetColumns(job.takeoffLines, head) });
    fillLines(s, job, lines);
    s.section("Your own lines");
    s.note(
      "Type a code of the price list and a need; everything else follows, and you may type over it. Or type it all.",
    );
    const own = s.table({ name: "OwnLines", rows: OWN_ROWS, columns: ownColumns(head), demo: OWN_DEMO });
    for (const table of [lines, own]) {
      const [codes, units] = [table.column("code"), table.column("unit")];
      fillDown(s, table.column("ordered"), orderedFormula(codes.address, units.address));
    }
    for (const [key, name] of Object.entries(TAKEOFF_NAMES)) {
      const at = lines.column(key);
      s.define(name, at.top, at.left, own.column(key).bottom, at.left);
    }
    s.define("TakeoffLines", lines.body.top, lines.body.left, own.body.bottom, lines.column("supplier").left);
    s.section("Together");
    s.result({
      name: "TakeoffTotal",
      label: "All lines",
      formula: "=SUM(TakeoffCosts)",
      kind: "money",
      strong: true,
      note: "Without the crew's and machines' hours of Labour.",
    });
    lookUp(s, own);
    s.print({ landscape: true, titleRows: [1, 2] });
    markUnused(s, lines, own);
    checks(s);
  },
});

function sheetColumns(lines: readonly PlacedTakeoffLine[], head: number): ColumnSpec[] {
  const { order, cost, ordered, look, number } = workedOut(head);
  return [
    { key: "description", title: "What", kind: "text", fixed: lines.map(({ description }) => description) },
    { key: "code", title: "Code", kind: "text", fixed: lines.map(({ code }) => code) },
    { key: "unit", title: "Unit", kind: "text", fixed: lines.map(({ unit }) => unit) },
    { key: "need", title: "Need", kind: "number", format: "#,##0.00" },
    { key: "waste", title: "Waste", kind: "share" },
    { key: "minimum", title: "Minimum", kind: "number" },
    { key: "pack", title: "Pack", kind: "number" },
    order,
    { key: "price", title: "Unit cost", kind: "money" },
    cost,
    { key: "kind", title: "Cost kind", kind: "text" },
    { key: "supplier", title: "Supplier", kind: "text" },
    { key: "taxable", title: "Taxable", kind: "text" },
    { key: "origin", title: "From", kind: "text" },
    ordered,
    look,
    number,
  ];
}

/** Each line reads its own row of the price list, where its code is fixed. */
function fillLines(s: SheetLayout, job: Job, table: TableRef): void {
  const rates = job.tables.get(RATE_TABLE);
  if (!rates) throw new Error("Rates must be laid out before Takeoff");
  const rateRows = new Map(job.rateLines.map(({ code }, index) => [code, index + 1]));
  const fieldOf = new Map(RATE_COLUMNS.map(({ field, name }) => [name, field]));
  job.takeoffLines.forEach((line, index) => {
    const rateRow = rateRows.get(line.code);
    if (rateRow === undefined) throw new Error(`${line.sheet}: the takeoff line ${line.code} has no rate`);
    for (const { key, name } of LOOKED_UP) {
      if (key === "description" || key === "unit") continue;
      const at = rates.cell(fieldOf.get(name) ?? "", rateRow).address;
      fill(s, table.cell(key, index + 1), key === "price" ? `IF(ISNUMBER(${at}),${at},"")` : at);
    }
    fill(s, table.cell("need", index + 1), whenFilled(`MAX(0,${bare(line.quantity)})`, line.needs));
    const name = bare(line.quantity);
    const origin = table.cell("origin", index + 1);
    const cell = cellOf(s, origin);
    cell.value = job.names.has(name) ? `${line.sheet}: ${name}` : line.sheet;
    cell.link = job.names.has(name) ? name : `${line.sheet}!A1`;
    s.fitHeight(origin.top, cell.value, s.charactersAcross(origin.left, 1));
  });
}

function ownColumns(head: number): ColumnSpec[] {
  const { order, cost, ordered, look, number } = workedOut(head);
  const text = (key: string, title: string, max: number, message: string): ColumnSpec => ({
    key,
    title,
    kind: "text",
    input: { max, message },
  });
  const choice = (key: string, title: string, choices: readonly string[], message: string): ColumnSpec => ({
    key,
    title,
    kind: "text",
    input: { choices, message },
  });
  const amount = (
    key: string,
    title: string,
    kind: "number" | "share" | "money",
    max: number,
    message: string,
  ): ColumnSpec => ({
    key,
    title,
    kind,
    input: { min: 0, max, message },
  });
  return [
    text("description", "What", 200, "What it is."),
    {
      key: "code",
      title: "Code",
      kind: "text",
      input: { max: 100, message: "A code of the price list on Rates, or blank." },
    },
    text("unit", "Unit", 20, "Unit it is bought in."),
    {
      key: "need",
      title: "Need",
      kind: "number",
      format: "#,##0.00",
      input: { min: 0, max: 1e6, message: "Quantity needed in place, before waste." },
    },
    amount("waste", "Waste", "share", 2, "Share added to the need."),
    amount("minimum", "Minimum", "number", 1e6, "Least quantity the supplier sells."),
    amount("pack", "Pack", "number", 1e6, "Quantity sold in one piece."),
    order,
    amount("price", "Unit cost", "money", 1e6, "Price you pay for one unit, without tax."),
    cost,
    choice("kind", "Cost kind", COST_KINDS, "Which line of Price it counts under."),
    text("supplier", "Supplier", 100, "Who sells it."),
    choice("taxable", "Taxable", ["yes", "no"], "Whether sales tax is owed on it."),
    { key: "origin", title: "Remark", kind: "text", input: { message: "Where the need comes from." } },
    ordered,
    look,
    number,
  ];
}

/** Finds each own line's code in the price list, once for each column; blank inputs of the line then read it. */
function lookUp(s: SheetLayout, own: TableRef): void {
  s.section("What the price list says of your own lines");
  const codes = own.column("code");
  const headRow = s.row;
  const top = headRow + 1;
  for (const [index, key] of TAKEOFF_KEYS.entries()) {
    const from = own.cell(key, 1);
    const found = LOOKED_UP.find((one) => one.key === key);
    if (key !== "code" && !found) continue;
    s.put(headRow, index + 1, { value: TITLES[key] ?? "", style: "headText" });
    const { format, align } = cellOf(s, from).style;
    for (let row = 0; row < OWN_ROWS; row++) s.put(top + row, index + 1, { style: "result", look: { format, align } });
    const column = new Ref(s.name, top, index + 1, top + OWN_ROWS - 1, index + 1);
    const looked = found ? `XLOOKUP(${codes.address},RateCodes,${found.name},${found.otherwise})` : codes.address;
    fillDown(s, column, `=IF(${codes.address}="","",${looked})`);
    if (!found) continue;
    for (let row = 1; row <= OWN_ROWS; row++) {
      const typed = cellOf(s, own.cell(key, row));
      if (typed.value !== undefined) continue;
      const [code, need] = [own.cell("code", row), own.cell("need", row)].map((at) => cellAddress(at.top, at.left));
      const at = cellAddress(top + row - 1, index + 1);
      typed.formula = `=IF(${code}="",IF(ISNUMBER(${need}),${found.otherwise},""),${at})`;
      typed.style = { ...typed.style, italic: true };
    }
  }
  s.row = top + OWN_ROWS;
}

/** What, code, unit, need, waste, minimum, pack, unit cost, kind, supplier, taxable, remark; blanks are looked up. */
const OWN_DEMO = {
  US: [
    [
      "Electrician: outlet with GFCI at the pump",
      "",
      "job",
      1,
      "",
      "",
      "",
      640,
      "subcontract",
      "Corliss Electric (demo)",
      "no",
      "Quoted by telephone",
    ],
    [
      "Marsh plants in 4 in pots",
      "",
      "each",
      18,
      0.05,
      "",
      6,
      7.35,
      "",
      "Tern Nursery (demo)",
      "",
      "Client picks colours",
    ],
    ["Permit", "", "job", 1, "", "", "", 85, "other", "", "no", ""],
  ],
  SI: [
    [
      "Electrician: socket with residual-current device",
      "",
      "job",
      1,
      "",
      "",
      "",
      590,
      "subcontract",
      "Elektro Wendelin (demo)",
      "no",
      "Quoted by telephone",
    ],
    [
      "Marsh plants, 9 cm pots",
      "",
      "each",
      22,
      0.05,
      "",
      6,
      4.85,
      "",
      "Gärtnerei Sumpfohr (demo)",
      "",
      "Client picks colours",
    ],
    ["Notice to the water board", "", "job", 1, "", "", "", 70, "other", "", "no", ""],
  ],
} as const;

/** Lines that need nothing stand back. */
function markUnused(s: SheetLayout, ...tables: readonly TableRef[]): void {
  for (const table of tables) {
    const { top, left, bottom } = table.body;
    const order = `$${cellAddress(top, table.column("order").left)}`;
    s.sheet.conditionals.push({
      area: { top, left, bottom, right: table.column("origin").left },
      formula: `=AND(ISNUMBER(${order}),${order}=0)`,
      style: { color: "8A959A", italic: true },
    });
  }
}

function checks(s: SheetLayout): void {
  const count = (word: string): string => `COUNTIF(TakeoffLooks,"${word}")`;
  const add = (label: string, word: string, cure: string, fix: string, weight: "stop" | "look" = "stop"): void => {
    s.check({ label, value: `=${count(word)}`, limit: 0, ok: `${count(word)}=0`, cure, fix, kind: "count", weight });
  };
  add(
    "Lines to order without a cost",
    "no cost",
    "Give the item a cost on Rates under the code of the line, or type its unit cost.",
    "TakeoffPrices",
  );
  add(
    "Lines under no cost kind",
    "no cost kind",
    "Pick a cost kind for the line, here or on Rates; Price leaves it out otherwise.",
    "TakeoffKinds",
  );
  add(
    "Lines ordered short of the takeoff",
    "ordered short",
    "Order what is missing, or note on Takeoff why less was ordered.",
    "OrderLines",
    "look",
  );
}
