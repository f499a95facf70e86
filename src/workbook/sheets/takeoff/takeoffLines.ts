import type { Job, SheetLayout, TableRef } from "../../layout";
import { bare, whenFilled } from "../../layout/conditions";
import type { ColumnSpec } from "../../layout/tableColumns";
import { partOf } from "../../../job/takeoff/parts";
import { FREIGHT_LINE } from "../../../job/takeoff/terms";
import { RATE_COLUMNS, RATE_TABLE } from "../../rateColumns";
import { cellOf, fill } from "../money/cells";
import { FREIGHT_COLUMN, LOOKED_UP, UNIT_COST_FORMAT, workedOut } from "./takeoffColumns";

/** The columns of what the sheets ask for: texts, then numbers that `fillLines` puts in. */
export function sheetColumns({ takeoffLines: lines, system }: Job, head: number): ColumnSpec[] {
  const { order, cost, ordered, open, look, number, part, mark } = workedOut(head, system);
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
  ];
}

const asTyped = (at: string): string => `IF(${at}="","",${at})`;

/** How a line reads a number of its row of the price list: blank where that is blank. The rest are words. */
const SHOWN: Readonly<Partial<Record<string, (at: string) => string>>> = {
  waste: asTyped,
  minimum: asTyped,
  pack: asTyped,
  price: (at) => `IF(${at}="","",ROUND(${at},4))`,
};

/** Each line reads its own row of the price list, where its code is fixed. */
export function fillLines(s: SheetLayout, job: Job, table: TableRef): void {
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
      fill(s, table.cell(key, index + 1), SHOWN[key]?.(at) ?? `${at}&""`);
    }
    if (line.described) fill(s, table.cell("description", index + 1), line.described);
    const at = (key: string): string => table.cell(key, index + 1).address.replace(`${s.name}!`, "");
    fill(s, table.cell("mark", index + 1), `IF(N(${at("order")})>0,${rates.cell("mark", rateRow).address}&"","")`);
    const freight = table.cell("freight", index + 1);
    if (line.code === FREIGHT_LINE.code) {
      cellOf(s, freight).value = 0;
      const typed = rates.cell("cost", rateRow).address;
      fill(
        s,
        table.cell("price", index + 1),
        `IF(${typed}="",IF(SUM(TakeoffFreights)=0,"",ROUND(SUM(TakeoffFreights),4)),ROUND(${typed},4))`,
      );
    } else fill(s, freight, `IF(N(${at("order")})>0,N(${rates.cell("freight", rateRow).address}),0)`);
    const need = `MAX(0,${bare(line.quantity)})`;
    const known = line.unknownIf === undefined ? need : `IF(${bare(line.unknownIf)},"",${need})`;
    fill(s, table.cell("need", index + 1), whenFilled(known, line.needs));
    const name = bare(line.quantity);
    const origin = table.cell("origin", index + 1);
    const cell = cellOf(s, origin);
    cell.value = job.names.has(name) ? `${line.sheet}: ${name}` : line.sheet;
    cell.link = job.names.has(name) ? name : `${line.sheet}!A1`;
    s.fitHeight(origin.top, cell.value, s.charactersAcross(origin.left, 1));
  });
}
