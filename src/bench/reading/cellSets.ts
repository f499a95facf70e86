import type { ICellData, IRange } from "@univerjs/core";
import type { Sheet } from "hucre";
import { parseArea, type Area } from "../../xlsx/address";
import { asResult } from "../work/content";
import { rangeOf } from "../work/rangeOf";
import { storedValue } from "../work/fileContent";
import { sheetId } from "./sheetId";

/** Some cells of a sheet, by their keys "row,column"; areas are not taken apart, which may cover a whole sheet. */
export interface CellSet {
  has(key: string): boolean;
}

/** The cells of areas, but for those with the keys of `without`. */
function cellsIn(areas: readonly Omit<Area, "sheet">[], without: ReadonlySet<string> = new Set()): CellSet {
  const wide = areas.filter(({ top, bottom }) => bottom - top >= MANY_ROWS);
  const byRow = new Map<number, Omit<Area, "sheet">[]>();
  for (const area of areas) {
    if (area.bottom - area.top >= MANY_ROWS) continue;
    for (let row = area.top; row <= area.bottom; row++) byRow.set(row, [...(byRow.get(row) ?? []), area]);
  }
  return {
    has(key) {
      const [row = 0, column = 0] = key.split(",").map(Number);
      const covers = ({ top, left, bottom, right }: Omit<Area, "sheet">): boolean =>
        row >= top && row <= bottom && column >= left && column <= right;
      return !without.has(key) && ((byRow.get(row)?.some(covers) ?? false) || wide.some(covers));
    },
  };
}

/** Higher areas are looked through one by one, lower ones are found by their rows. */
const MANY_ROWS = 200;

/** Cells that hold the stored spill of a dynamic formula; the engine fills them again. */
export function spilledCells(sheet: Sheet): CellSet {
  const anchors = new Set<string>();
  const areas: Area[] = [];
  for (const [anchor, cell] of sheet.cells ?? []) {
    const area = cell.formulaType === "array" ? parseArea(cell.formulaRef ?? "", sheet.name) : undefined;
    if (!area) continue;
    anchors.add(anchor);
    areas.push(area);
  }
  return cellsIn(areas, anchors);
}

export type Matrix<T> = Record<number, Record<number, T>>;

/** What the file's formulas fill besides their own cells, by sheet id: the ranges by the formula's cell, and the values. */
export function storedSpills(
  sheets: readonly Sheet[],
  dates1904: boolean,
): { readonly ranges: Record<string, Matrix<IRange>>; readonly cells: Record<string, Matrix<ICellData>> } {
  const ranges: Record<string, Matrix<IRange>> = {};
  const cells: Record<string, Matrix<ICellData>> = {};
  sheets.forEach((sheet, index) => {
    const id = sheetId(index);
    for (const { formulaType, formulaRef } of sheet.cells?.values() ?? []) {
      const area = formulaType === "array" && formulaRef?.includes(":") ? parseArea(formulaRef, sheet.name) : undefined;
      if (!area) continue;
      ((ranges[id] ??= {})[area.top] ??= {})[area.left] = rangeOf(area);
      for (let row = area.top; row <= area.bottom; row++) {
        for (let column = area.left; column <= area.right; column++) {
          const value = storedValue(sheet.cells?.get(`${row},${column}`), sheet.rows[row]?.[column], dates1904);
          ((cells[id] ??= {})[row] ??= {})[column] = asResult(value);
        }
      }
    }
  });
  return { ranges, cells };
}

/** Cells that offer a list; the arrow takes room that wrapped text would miss. */
export function listCells(sheet: Sheet): CellSet {
  const lists = (sheet.dataValidations ?? []).filter(({ type }) => type === "list");
  const areas = lists.flatMap(({ range }) => range.split(" ").map((part) => parseArea(part, sheet.name)));
  return cellsIn(areas.filter((area) => area !== undefined));
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
export function coveredCells({ merges = [] }: Sheet): CellSet {
  return cellsIn(
    merges.map(({ startRow, endRow, startCol, endCol }) => ({
      top: startRow,
      bottom: endRow,
      left: startCol,
      right: endCol,
    })),
    new Set(merges.map(({ startRow, startCol }) => `${startRow},${startCol}`)),
  );
}
