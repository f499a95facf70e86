import { dateToSerial, type Cell, type CellValue, type Sheet } from "hucre";
import type { Content } from "./content";
import { fromFile } from "../../workbook/formulaText";

/** A value of the file as the grid and the port hold it: dates as serial numbers, nothing as "". */
export function plainValue(value: CellValue | undefined, dates1904: boolean): string | number | boolean {
  if (value instanceof Date) return dateToSerial(value, dates1904);
  return value ?? "";
}

/** What the file stores for a cell: a formula's result, or the value; `plain` is what it has without a cell of its own. */
export function storedValue(
  cell: Cell | undefined,
  plain: CellValue | undefined,
  dates1904: boolean,
): string | number | boolean {
  return plainValue(cell?.formulaResult ?? cell?.value ?? plain, dates1904);
}

/** The formula of a cell as a person types it, or "". */
export function formulaOf(cell: Cell | undefined): string {
  return cell?.formula ? `=${fromFile(cell.formula)}` : "";
}

/** What the file holds in a cell: its formula, or its value. */
export function contentOf(sheet: Sheet | undefined, row: number, column: number, dates1904: boolean): Content {
  const cell = sheet?.cells?.get(`${row},${column}`);
  return formulaOf(cell) || plainValue(cell?.value ?? sheet?.rows[row]?.[column], dates1904);
}
