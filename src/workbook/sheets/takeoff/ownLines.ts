import { COST_KIND_WORDS } from "../../../calc/money/costKinds";
import type { UnitSystem } from "../../../calc/quantity/unitSystem";
import { OWN_PART } from "../../../job/takeoff/parts";
import type { SheetLayout, TableRef } from "../../layout";
import type { Ref } from "../../layout/address";
import { areaAddress, cellAddress } from "../../layout/address";
import type { ColumnSpec } from "../../layout/tableColumns";
import { fillDown } from "../money/cells";
import { OWN_LINES } from "../money/demoPapers";
import { BOUGHT, FREIGHT_COLUMN, LOOKED_UP, TITLES, UNIT_COST_FORMAT, workedOut } from "./takeoffColumns";

/** Rows for what the user adds. */
export const OWN_ROWS = 40;

/** How the columns that are typed show, in both tables. */
const SHAPES = {
  description: { title: "What", kind: "text" },
  code: { title: "Code", kind: "text" },
  unit: { title: "Unit", kind: "text" },
  need: { title: "Need", kind: "number", format: "#,##0.00" },
  waste: { title: "Waste", kind: "share" },
  minimum: { title: "Minimum", kind: "number" },
  pack: { title: "Pack", kind: "number" },
  price: { title: "Unit cost", kind: "money", format: UNIT_COST_FORMAT },
  kind: { title: "Cost kind", kind: "text" },
  supplier: { title: "Supplier", kind: "text" },
  taxable: { title: "Taxable", kind: "text" },
  origin: { title: "Remark", kind: "text" },
} as const satisfies Readonly<Record<string, Omit<ColumnSpec, "key">>>;
type TypedKey = keyof typeof SHAPES;

/** The user's own lines as they are bought, below those of the sheets and in the same columns; `fillOwn` fills them in. */
export function usedColumns(): ColumnSpec[] {
  const { order, cost, ordered, open, look, number, part, mark, least } = workedOut(OWN_ROWS);
  const used = (key: TypedKey): ColumnSpec => ({ key, ...SHAPES[key], whole: true });
  return [
    ...(["description", "code", "unit", "need", "waste", "minimum", "pack"] as const).map(used),
    order,
    used("price"),
    cost,
    ...(["kind", "supplier", "taxable", "origin"] as const).map(used),
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

/** Where the user types lines of his own, in the columns of the lines above; what comes of each stands among them. */
export function ownTable(s: SheetLayout, used: TableRef): TableRef {
  s.section("Type your own lines here");
  s.note(
    "Type a code of the price list and a need; what you leave blank comes from Rates. Or type it all. Above it says what is used.",
  );
  return s.table({ name: "OwnLines", rows: OWN_ROWS, columns: typedColumns(s.job.system, used), demo: OWN_LINES });
}

function typedColumns(system: UnitSystem, used: TableRef): ColumnSpec[] {
  const typed = (key: TypedKey, input: ColumnSpec["input"]): ColumnSpec => ({
    key,
    ...SHAPES[key],
    ...(input && { input }),
  });
  const shown = (key: "order" | "cost", title: string, kind: "number" | "money"): ColumnSpec => ({
    key,
    title,
    kind,
    whole: true,
    formula: `=${areaAddress(used.column(key))}`,
  });
  const amount = (key: TypedKey, max: number, message: string): ColumnSpec => typed(key, { min: 0, max, message });
  return [
    typed("description", { max: 200, message: "What it is." }),
    typed("code", { max: 100, message: "A code of the price list on Rates, or blank." }),
    typed("unit", { max: 20, message: "Unit it is bought in." }),
    amount("need", 1e6, "Quantity needed in place, before waste."),
    amount("waste", 2, "Share added to the quantity needed."),
    amount("minimum", 1e6, "Least quantity the supplier sells."),
    amount("pack", 1e6, "Quantity sold in one piece."),
    shown("order", "To order", "number"),
    amount("price", 1e6, "Price you pay for one unit, without tax."),
    shown("cost", "Cost", "money"),
    typed("kind", { choices: COST_KIND_WORDS[system], message: "Which line of Price it counts under." }),
    typed("supplier", { max: 100, message: "Who sells it." }),
    typed("taxable", { choices: ["yes", "no"], message: "Whether sales tax is owed on it." }),
    typed("origin", { message: "Where the need comes from." }),
    {
      key: "place",
      title: "Row on Rates",
      source: `by definition: ${NOWHERE}, a row behind the end of the price list, says that a code is not there`,
      kind: "count",
      whole: true,
      formula: `=IF([code]<>"",IFERROR(MATCH([code],RateCodes,0),${NOWHERE}),IF(ISNUMBER([need]),${NOWHERE},""))`,
    },
    { key: "words", title: "In words", kind: "text", whole: true, across: 3 },
  ];
}

/** What stands for a code that the price list does not have: a row behind its end. */
const NOWHERE = 99_999;
const SOURCE = "by definition: a row behind the end of the price list says that a code is not there";

/**
 * Each own line as it is bought, a column by one formula: what was typed, else what the row of its code in the price list
 * says, else what is usual. The price list may be long: it is searched once for each line.
 */
export function fillOwn(s: SheetLayout, used: TableRef, typed: TableRef): void {
  const place = areaAddress(typed.column("place"));
  const listed = (name: string): string => `INDEX(${name},${place})`;
  const column = (at: Ref, label: string, formula: string): void =>
    fillDown(
      s,
      at,
      formula.replace(/\[(\w+)\]/g, (_, other: string) => areaAddress(used.column(other))),
      { label, source: SOURCE },
    );
  for (const key of ["code", "need", "origin"] as const) {
    const cells = areaAddress(typed.column(key));
    column(used.column(key), SHAPES[key].title, `IF(${cells}="","",${cells})`);
  }
  for (const { key, name, otherwise } of LOOKED_UP) {
    const cells = areaAddress(typed.column(key));
    // A blank cell of the price list counts as 0.
    const found = `IF(${place}=${NOWHERE},${otherwise},IF(${listed(name)}=0,${otherwise},${listed(name)}))`;
    column(used.column(key), SHAPES[key].title, `IF(${cells}<>"",${cells},IF(${place}="","",${found}))`);
  }
  // A line is as invented as the price that it takes from the list; a text is more than any number.
  const invented = `IF(${place}<${NOWHERE},IF([price]=${listed("RateCosts")},${listed("RateMarks")}&"",""),"")`;
  column(used.column("mark"), TITLES.mark ?? "", `IF(${BOUGHT},${invented},"")`);
  const freight = `IF(${place}<${NOWHERE},${listed("RateFreights")}+0,0)`;
  column(used.column("freight"), FREIGHT_COLUMN.title, `IF(${BOUGHT},${freight},0)`);
  // What the client reads of each own line that is in the price: what it is, and how many.
  const words = `[description]&IF(([order]=1)+([unit]="job")>0,""," ("&[order]&")")`;
  const { top, left } = typed.column("words");
  column(typed.column("words"), "In words", `IF(${BOUGHT},${words},"")`);
  const half = OWN_ROWS / 2;
  s.define("OwnWords", top, left, top + OWN_ROWS - 1, left);
  s.define("OwnWordsFirst", top, left, top + half - 1, left);
  s.define("OwnWordsRest", top + half, left, top + OWN_ROWS - 1, left);
  slantUntyped(s, used, typed);
}

/** What is used is slanted while it is not what was typed. */
function slantUntyped(s: SheetLayout, used: TableRef, typed: TableRef): void {
  for (const keys of [["description", "pack"], ["price"], ["kind", "taxable"]]) {
    const [first = "", last = first] = keys;
    const { top, left, bottom } = used.column(first);
    const area = { top, left, bottom, right: used.column(last).left };
    const beside = cellAddress(typed.body.top, left);
    s.sheet.conditionals.push({ area, formula: `=${beside}=""`, style: { italic: true } });
  }
}
