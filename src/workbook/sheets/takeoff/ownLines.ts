import { COST_KIND_WORDS } from "../../../calc/money/costKinds";
import type { UnitSystem } from "../../../calc/quantity/unitSystem";
import { OWN_PART } from "../../../job/takeoff/parts";
import { Ref, type SheetLayout, type TableRef } from "../../layout";
import { cellAddress } from "../../layout/address";
import type { ColumnSpec } from "../../layout/tableColumns";
import { cellOf, fill, fillDown } from "../money/cells";
import { FREIGHT_COLUMN, LOOKED_UP, TAKEOFF_KEYS, TITLES, UNIT_COST_FORMAT, workedOut } from "./takeoffColumns";

/** Rows for what the user adds. */
export const OWN_ROWS = 40;

/** The columns of the user's own lines; what is blank in one is looked up by its code. */
export function ownColumns(head: number, system: UnitSystem): ColumnSpec[] {
  const { order, cost, ordered, open, look, number, part, mark } = workedOut(head, system);
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
    ...(kind === "money" ? { format: UNIT_COST_FORMAT } : {}),
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
    choice("kind", "Cost kind", COST_KIND_WORDS[system], "Which line of Price it counts under."),
    text("supplier", "Supplier", 100, "Who sells it."),
    choice("taxable", "Taxable", ["yes", "no"], "Whether sales tax is owed on it."),
    { key: "origin", title: "Remark", kind: "text", input: { message: "Where the need comes from." } },
    ordered,
    open,
    look,
    number,
    { ...part, fixed: Array.from({ length: OWN_ROWS }, () => OWN_PART) },
    mark,
    FREIGHT_COLUMN,
  ];
}

/** What stands for a code that the price list does not have: a row behind its end. */
const NOWHERE = 99_999;

/**
 * Finds each own line's code in the price list, and reads its row a column at a time; blank inputs of the line then read it.
 * The price list may be long: it is searched once for each line, and each of its columns is read once.
 */
export function lookUp(s: SheetLayout, own: TableRef): void {
  s.section("What the price list says of your own lines");
  const headRow = s.row;
  const top = headRow + 1;
  const places = new Ref(s.name, top, CODE_COLUMN, top + OWN_ROWS - 1, CODE_COLUMN);
  s.put(headRow, CODE_COLUMN, { value: "Row", style: "headText" });
  for (let row = 1; row <= OWN_ROWS; row++) {
    const code = own.cell("code", row);
    const at = cellAddress(code.top, code.left);
    s.put(top + row - 1, CODE_COLUMN, {
      formula: `=IF(${at}="","",IFERROR(XMATCH(${at},RateCodes),${NOWHERE}))`,
      style: "plain",
      look: { align: "left" },
    });
  }
  for (const { key, name, otherwise } of LOOKED_UP) {
    const column = TAKEOFF_KEYS.indexOf(key) + 1;
    s.put(headRow, column, { value: TITLES[key] ?? "", style: "headText" });
    const { format, align } = cellOf(s, own.cell(key, 1)).style;
    for (let row = 0; row < OWN_ROWS; row++) s.put(top + row, column, { style: "plain", look: { format, align } });
    // A blank cell of the price list counts as 0.
    const found = `IF(${places.address}=${NOWHERE},${otherwise},LET(found,INDEX(${name},${places.address}),IF(found=0,${otherwise},found)))`;
    fillDown(s, new Ref(s.name, top, column, top + OWN_ROWS - 1, column), `=IF(${places.address}="","",${found})`);
    for (let row = 1; row <= OWN_ROWS; row++) {
      const typed = cellOf(s, own.cell(key, row));
      if (typed.value !== undefined) continue;
      const [code, need] = [own.cell("code", row), own.cell("need", row)].map((at) => cellAddress(at.top, at.left));
      const at = cellAddress(top + row - 1, column);
      typed.formula = `=IF(${code}="",IF(ISNUMBER(${need}),${otherwise},""),${at})`;
      typed.style = { ...typed.style, italic: true };
    }
  }
  marks(s, own, places);
  inWords(s, own, top);
  s.row = top + OWN_ROWS;
}

/** A line is as invented as the price that it takes from the list. */
function marks(s: SheetLayout, own: TableRef, places: Ref): void {
  const [mark, price] = (["mark", "price"] as const).map((key) => TAKEOFF_KEYS.indexOf(key) + 1);
  if (mark === undefined || price === undefined) return;
  s.put(places.top - 1, mark, { value: TITLES.mark ?? "", style: "headText" });
  for (let row = 0; row < OWN_ROWS; row++) s.put(places.top + row, mark, { style: "plain" });
  const listed = `IF(${places.address}=${NOWHERE},"",INDEX(RateMarks,${places.address})&"")`;
  fillDown(s, new Ref(s.name, places.top, mark, places.bottom, mark), `=IF(${places.address}="","",${listed})`);
  for (let row = 1; row <= OWN_ROWS; row++) {
    const [order, paid] = (["order", "price"] as const).map((key) =>
      own.cell(key, row).address.replace(`${s.name}!`, ""),
    );
    const [inList, listPrice] = [mark, price].map((column) => cellAddress(places.top + row - 1, column));
    const place = cellAddress(places.top + row - 1, places.left);
    const freight = `IF(${place}="",0,IFERROR(N(INDEX(RateFreights,${place})),0))`;
    fill(s, own.cell("freight", row), `IF(N(${order})>0,${freight},0)`);
    fill(s, own.cell("mark", row), `IF(AND(N(${order})>0,${paid}=${listPrice}),${inList},"")`);
  }
}

/** What the client reads of each own line that is in the price: what it is, and how many. */
function inWords(s: SheetLayout, own: TableRef, top: number): void {
  const column = TAKEOFF_KEYS.indexOf("origin") + 1;
  s.put(top - 1, column, { value: "In words", style: "headText" });
  for (let row = 1; row <= OWN_ROWS; row++) {
    const [what, unit, order] = (["description", "unit", "order"] as const).map((key) =>
      own.cell(key, row).address.replace(`${s.name}!`, ""),
    );
    s.put(top + row - 1, column, {
      formula: `=IF(N(${order})>0,${what}&IF(OR(${order}=1,${unit}="job"),""," ("&${order}&")"),"")`,
      style: "plain",
    });
  }
  const half = OWN_ROWS / 2;
  s.define("OwnWords", top, column, top + OWN_ROWS - 1, column);
  s.define("OwnWordsFirst", top, column, top + half - 1, column);
  s.define("OwnWordsRest", top + half, column, top + OWN_ROWS - 1, column);
}

const CODE_COLUMN = TAKEOFF_KEYS.indexOf("code") + 1;
