import { FACTS, type FactKey } from "../../../job/facts";
import type { ColumnFact, TableFact } from "../../../job/facts/fact";
import type { Job, SheetLayout } from "../../layout";
import { areaAddress, cellAddress, Ref } from "../../layout/address";
import { COLUMN } from "../../layout/factCells";

/** Tables longer than this are looked through by their readers. */
export const LONGEST_SEARCHED = 60;

/** The fact of that key, where it is a table. */
export function tableOf(key: FactKey): TableFact | undefined {
  const fact = FACTS[key] as TableFact | { readonly type: "number" | "text" | "choice" };
  return fact.type === "table" ? fact : undefined;
}

/** The cells of a table's column, by its name or its place in the table. */
export function cellsOf(job: Job, table: TableFact, column: ColumnFact): Ref | undefined {
  const named = job.places.get(column.name ?? table.name);
  if (!named) return undefined;
  const cells = named.column(column.name === undefined ? column.at : 1);
  // A table may end in a row of the workbook's own.
  const bottom = Math.min(cells.bottom, cells.top + table.rows - 1);
  return new Ref(cells.sheet, cells.top, cells.left, bottom, cells.right);
}

/** Whether the workbook fills every column until somebody types over it. */
export function workedWhole(table: TableFact): boolean {
  return Object.values(table.columns).every(({ worked }) => worked);
}

/** How many cells of a column that the workbook fills hold something else than a formula. */
export function typedOver(cells: Ref): string {
  const formulas = Array.from(
    { length: cells.bottom - cells.top + 1 },
    (_, index) => `ISFORMULA(${cells.sheet}!${cellAddress(cells.top + index, cells.left)})`,
  );
  return `COUNTA(${cells.sheet}!${areaAddress(cells, true)})-(${formulas.join("+")})`;
}

/** Lays out where cells begin, so that one formula of every row can name a cell of them: "Water!B" and 8. */
export function topOf(s: SheetLayout, row: number, { sheet, top, left }: Ref): void {
  s.put(row, COLUMN.letters, { value: `${sheet}!${cellAddress(top, left).replace(/\d/g, "")}` });
  s.put(row, COLUMN.top, { value: top });
}
