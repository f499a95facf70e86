import type { IRange } from "@univerjs/core";
import type { Sheet, Workbook } from "hucre";
import { parseArea } from "../../xlsx/address";
import { spillKey } from "../grid/order/spills";
import { sheetId } from "./sheetId";

/** Cells that hold the stored spill of a dynamic formula; the engine fills them again. */
export function spilledCells(sheet: Sheet): Set<string> {
  const keys = new Set<string>();
  for (const [anchor, cell] of sheet.cells ?? []) {
    if (cell.formulaType !== "array" || !cell.formulaRef) continue;
    for (const key of cellsOf(cell.formulaRef, sheet.name)) if (key !== anchor) keys.add(key);
  }
  return keys;
}

/** Where the file's formulas spill, by sheet id and the formula's cell. */
export function storedSpills({ sheets }: Workbook): Map<string, { sheetId: string; range: IRange }> {
  const spills = new Map<string, { sheetId: string; range: IRange }>();
  sheets.forEach((sheet, index) => {
    for (const { formulaType, formulaRef } of sheet.cells?.values() ?? []) {
      const area = formulaType === "array" && formulaRef?.includes(":") ? parseArea(formulaRef, sheet.name) : undefined;
      if (!area) continue;
      const range = { startRow: area.top, startColumn: area.left, endRow: area.bottom, endColumn: area.right };
      spills.set(spillKey(sheetId(index), area.top, area.left), { sheetId: sheetId(index), range });
    }
  });
  return spills;
}

/** Cells that offer a list; the arrow takes room that wrapped text would miss. */
export function listCells(sheet: Sheet): Set<string> {
  const lists = (sheet.dataValidations ?? []).filter(({ type }) => type === "list");
  return new Set(lists.flatMap(({ range }) => range.split(" ").flatMap((part) => cellsOf(part, sheet.name))));
}

/** The merged cells of a sheet, as the grid takes them. */
export function mergedRanges({ merges = [] }: Sheet): IRange[] {
  return merges.map(({ startRow, endRow, startCol, endCol }) => ({
    startRow,
    endRow,
    startColumn: startCol,
    endColumn: endCol,
  }));
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
