import type { IRange } from "@univerjs/core";
import type { Sheet, Workbook } from "hucre";
import { parseArea, type Area } from "../../xlsx/address";
import { spillKey } from "../grid/order/spills";
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
