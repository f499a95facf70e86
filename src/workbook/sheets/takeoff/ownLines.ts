import { COST_KIND_WORDS } from "../../../calc/money/costKinds";
import type { UnitSystem } from "../../../calc/quantity/unitSystem";
import { OWN_PART } from "../../../job/takeoff/parts";
import { Ref, type SheetLayout, type TableRef } from "../../layout";
import { areaAddress, cellAddress } from "../../layout/address";
import type { ColumnSpec } from "../../layout/tableColumns";
import type { Style } from "../../model";
import { cellOf, fillDown } from "../money/cells";
import { BOUGHT, FREIGHT_COLUMN, LOOKED_UP, TAKEOFF_KEYS, TITLES, UNIT_COST_FORMAT, workedOut } from "./takeoffColumns";

/** Rows for what the user adds. */
export const OWN_ROWS = 40;

/** The columns of the user's own lines; what is blank in one is looked up by its code. */
export function ownColumns(system: UnitSystem): ColumnSpec[] {
  const { order, cost, ordered, open, look, number, part, mark, least } = workedOut(OWN_ROWS);
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
    least,
  ];
}

/** What stands for a code that the price list does not have: a row behind its end. */
const NOWHERE = 99_999;
const NOWHERE_SOURCE = "by definition: a row behind the end of the price list says that a code is not there";

/**
 * Finds each own line's code in the price list, and reads its row a column at a time; blank inputs of the line then read it.
 * The price list may be long: it is searched once for each line, and each of its columns is read once.
 */
export function lookUp(s: SheetLayout, own: TableRef): void {
  s.section("What the price list says of your own lines");
  const headRow = s.row;
  const top = headRow + 1;
  const column = (key: Key, title: string, formula: string, look: Style = {}): Ref => {
    const left = TAKEOFF_KEYS.indexOf(key) + 1;
    s.put(headRow, left, { value: title, style: "headText" });
    for (let row = 0; row < OWN_ROWS; row++) s.put(top + row, left, { style: "plain", look });
    const area = new Ref(s.name, top, left, top + OWN_ROWS - 1, left);
    fillDown(
      s,
      area,
      formula.replace(/\[(\w+)\]/g, (_, other: string) => areaAddress(own.column(other))),
      { label: title, source: NOWHERE_SOURCE },
    );
    return area;
  };
  const code = column("code", "Row", `IF([code]="","",IFERROR(MATCH([code],RateCodes,0),${NOWHERE}))`, {
    align: "left",
  });
  const place = areaAddress(code);
  const listed = (name: string, otherwise: string): string =>
    `IF(${place}=${NOWHERE},${otherwise},INDEX(${name},${place}))`;
  for (const { key, name, otherwise } of LOOKED_UP) {
    const { format, align } = cellOf(s, own.cell(key, 1)).style;
    // A blank cell of the price list counts as 0.
    const found = `IF(${listed(name, "0")}=0,${otherwise},INDEX(${name},${place}))`;
    const area = column(key, TITLES[key] ?? "", `IF(${place}="","",${found})`, { format, align });
    for (let row = 1; row <= OWN_ROWS; row++) {
      const typed = cellOf(s, own.cell(key, row));
      if (typed.value !== undefined) continue;
      const [at, need] = [own.cell("code", row), own.cell("need", row)].map((one) => cellAddress(one.top, one.left));
      const { top: shown, left } = area.cell(row);
      typed.formula = `=IF(${at}="",IF(ISNUMBER(${need}),${otherwise},""),${cellAddress(shown, left)})`;
      typed.style = { ...typed.style, italic: true };
    }
  }
  // A line is as invented as the price that it takes from the list.
  const inList = areaAddress(column("mark", TITLES.mark ?? "", `IF(${place}="","",${listed("RateMarks", '""')}&"")`));
  const listPrice = areaAddress(new Ref(s.name, top, PRICE_COLUMN, top + OWN_ROWS - 1, PRICE_COLUMN));
  const fillOwn = (key: Key, formula: string): void =>
    fillDown(
      s,
      own.column(key),
      formula.replace(/\[(\w+)\]/g, (_, other: string) => areaAddress(own.column(other))),
      { label: TITLES[key] ?? "Freight", source: NOWHERE_SOURCE },
    );
  fillOwn("mark", `IF(IF(${BOUGHT},[price]=${listPrice},FALSE),${inList},"")`);
  fillOwn("freight", `IF(${BOUGHT},IF(${place}="",0,${listed("RateFreights", "0")}+0),0)`);
  // What the client reads of each own line that is in the price: what it is, and how many.
  const words = `[description]&IF(([order]=1)+([unit]="job")>0,""," ("&[order]&")")`;
  const { left } = column("origin", "In words", `IF(${BOUGHT},${words},"")`);
  const half = OWN_ROWS / 2;
  s.define("OwnWords", top, left, top + OWN_ROWS - 1, left);
  s.define("OwnWordsFirst", top, left, top + half - 1, left);
  s.define("OwnWordsRest", top + half, left, top + OWN_ROWS - 1, left);
  s.row = top + OWN_ROWS;
}

const PRICE_COLUMN = TAKEOFF_KEYS.indexOf("price") + 1;
type Key = (typeof TAKEOFF_KEYS)[number];
