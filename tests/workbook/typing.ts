import type { CellModel, SheetModel } from "../../src/workbook/model";

/**
 * The cell a test types into. In a table that may grow, a row below the laid-out ones has no cells until something is
 * typed there; a host gives them the look of their column then.
 */
export function cellToType(sheet: SheetModel, row: number, column: number): CellModel | undefined {
  const cell = sheet.rows.get(row)?.get(column);
  const { openFrom } = sheet;
  if (cell !== undefined || openFrom === undefined || row < openFrom) return cell;
  const look = sheet.rows.get(openFrom)?.get(column);
  if (!look) return undefined;
  const cells = sheet.rows.get(row) ?? new Map<number, CellModel>();
  const typed: CellModel = { style: look.style };
  sheet.rows.set(row, cells.set(column, typed));
  return typed;
}
