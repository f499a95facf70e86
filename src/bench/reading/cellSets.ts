import type { Sheet } from "hucre";
import { parseArea } from "../../host/address";

/** Cells that hold the stored spill of a dynamic formula; the engine fills them again. */
export function spilledCells(sheet: Sheet): Set<string> {
  const keys = new Set<string>();
  for (const [anchor, cell] of sheet.cells ?? []) {
    if (cell.formulaType !== "array" || !cell.formulaRef) continue;
    for (const key of cellsOf(cell.formulaRef, sheet.name)) if (key !== anchor) keys.add(key);
  }
  return keys;
}

/** Cells that offer a list; the arrow takes room that wrapped text would miss. */
export function listCells(sheet: Sheet): Set<string> {
  const lists = (sheet.dataValidations ?? []).filter(({ type }) => type === "list");
  return new Set(lists.flatMap(({ range }) => range.split(" ").flatMap((part) => cellsOf(part, sheet.name))));
}

/** Cells under a merge, except the one that shows. */
export function coveredCells(sheet: Sheet): Set<string> {
  const keys = new Set<string>();
  for (const { startRow, endRow, startCol, endCol } of sheet.merges ?? []) {
    for (let row = startRow; row <= endRow; row++) {
      for (let column = startCol; column <= endCol; column++) {
        if (row !== startRow || column !== startCol) keys.add(`${row},${column}`);
      }
    }
  }
  return keys;
}

function cellsOf(range: string, sheet: string): string[] {
  const area = parseArea(range, sheet);
  if (!area) return [];
  const keys: string[] = [];
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++) keys.push(`${row},${column}`);
  }
  return keys;
}
