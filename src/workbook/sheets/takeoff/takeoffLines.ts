import { Ref, type Job, type SheetLayout, type TableRef, type TakeoffLine } from "../../layout";
import { bare, whenFilled } from "../../layout/conditions";
import type { ColumnSpec } from "../../layout/tableColumns";
import { partOf } from "../../../job/takeoff/parts";
import { cellOf, fill, fillDown } from "../money/cells";
import { FREIGHT_COLUMN, UNIT_COST_FORMAT, workedOut } from "./takeoffColumns";

/** The columns of what the sheets ask for: texts, then numbers that `fillLines` and `termsOfLines` put in. */
export function sheetColumns({ takeoffLines: lines }: Pick<Job, "takeoffLines">): ColumnSpec[] {
  // The last line is that of all freight: its need follows from the orders of the others.
  const { order, cost, ordered, open, look, number, part, mark, least } = workedOut(lines.length, lines.length - 1);
  return [
    { key: "description", title: "What", kind: "text", fixed: lines.map(({ description }) => description) },
    { key: "code", title: "Code", kind: "text", fixed: lines.map(({ code }) => code) },
    { key: "unit", title: "Unit", kind: "text", fixed: lines.map(({ unit }) => unit) },
    { key: "need", title: "Need", kind: "number", format: "#,##0.00" },
    { key: "waste", title: "Waste", kind: "share" },
    { key: "minimum", title: "Minimum", kind: "number" },
    { key: "pack", title: "Pack", kind: "number" },
    order,
    { key: "price", title: "Unit cost", kind: "money", format: UNIT_COST_FORMAT },
    cost,
    { key: "kind", title: "Cost kind", kind: "text" },
    { key: "supplier", title: "Supplier", kind: "text" },
    { key: "taxable", title: "Taxable", kind: "text" },
    { key: "origin", title: "From", kind: "text" },
    ordered,
    open,
    look,
    number,
    { ...part, fixed: lines.map(({ code }) => partOf(code)) },
    mark,
    FREIGHT_COLUMN,
    least,
  ];
}

/** What each line needs, and where from; the line of all freight waits for the other orders, so that its own is apart. */
export function fillLines(s: SheetLayout, job: Job, table: TableRef): void {
  job.takeoffLines.forEach((line, index) => {
    if (line.described) fill(s, table.cell("description", index + 1), line.described);
    needOf(s, line, table.cell("need", index + 1));
    const name = bare(line.quantity);
    const origin = table.cell("origin", index + 1);
    const cell = cellOf(s, origin);
    cell.value = line.sheet;
    cell.link = job.names.has(name) ? name : `${line.sheet}!A1`;
    s.fitHeight(origin.top, cell.value, s.charactersAcross(origin.left, 1));
  });
}

function needOf(s: SheetLayout, { quantity, unknownIf, needs, down = 1 }: TakeoffLine, at: Ref): void {
  const amount = bare(quantity);
  if (amount === "") return;
  const origin = { label: "Quantity", source: "by definition: each pump has its riser" };
  const need = down > 1 ? `IF(${amount}>0,${amount},0)` : `MAX(0,${amount})`;
  const known = whenFilled(unknownIf === undefined ? need : `IF(${bare(unknownIf)},"",${need})`, needs);
  if (down === 1) fill(s, at, known, origin);
  else fillDown(s, new Ref(at.sheet, at.top, at.left, at.top + down - 1, at.left), known, origin);
}
