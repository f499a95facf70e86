import type { ICellData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import type { Cell, CellValue, Sheet } from "hucre";
import { parseArea } from "../../host/address";
import type { OpenedWorkbook } from "./openWorkbook";
import { conditionalRules } from "./conditional";
import { formulaOf, plainValue } from "./contents";
import { fromFile } from "../../workbook/formulaText";
import { StyleTable } from "./styles";
import { validationRules } from "./validations";

const TEXT = 1;
const NUMBER = 2;
const BOOLEAN = 3;
const SPARE_ROWS = 20;
const SPARE_COLUMNS = 4;
const LEAST_ROWS = 40;
const LEAST_COLUMNS = 12;
/** Pixels of a row and a column, and the letter size in points, where the file says nothing. */
const ROW_HEIGHT = 20;
const COLUMN_WIDTH = 64;
const LETTERS = 11;
/** Row numbers and scroll bar beside the cells, in pixels. */
const MARGIN = 66;
const LEAST_ZOOM = 0.8;

/** The grid's id of the sheet at `index`. */
export function sheetId(index: number): string {
  return `sheet${index + 1}`;
}

/** What the grid shows of an opened workbook; `room` pixels across, sheets are shown small enough to fit. */
export function toGrid({ workbook, fileName }: OpenedWorkbook, room = Infinity): IWorkbookData {
  const styles = new StyleTable(workbook.themeColors);
  const dates1904 = workbook.dateSystem === "1904";
  const sheets = workbook.sheets.map((sheet, index) => ({
    zoomRatio: fittingZoom(sheet, room),
    ...sheetData(sheet, sheetId(index), styles, dates1904),
  }));
  const names = (workbook.namedRanges ?? []).filter((entry) => !entry.name.startsWith("_xl"));
  const byId = <T>(rules: (sheet: Sheet) => T): Record<string, T> =>
    Object.fromEntries(workbook.sheets.map((sheet, index) => [sheetId(index), rules(sheet)]));
  return {
    id: "bench",
    name: fileName,
    appVersion: "0.25.1",
    locale: "enUS" as IWorkbookData["locale"],
    styles: styles.styles,
    sheetOrder: sheets.map(({ id }) => id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: [
      {
        name: "SHEET_DEFINED_NAME_PLUGIN",
        data: JSON.stringify(
          Object.fromEntries(
            names.map(({ name, range, scope }, index) => {
              const owner = scope === undefined ? -1 : workbook.sheets.findIndex((sheet) => sheet.name === scope);
              const formulaOrRefString = parseArea(range) ? range : `=${fromFile(range)}`;
              const localSheetId = owner < 0 ? "AllDefaultWorkbook" : sheetId(owner);
              return [`name${index}`, { id: `name${index}`, name, formulaOrRefString, localSheetId }];
            }),
          ),
        ),
      },
      { name: "SHEET_DATA_VALIDATION_PLUGIN", data: JSON.stringify(byId(validationRules)) },
      {
        name: "SHEET_CONDITIONAL_FORMATTING_PLUGIN",
        data: JSON.stringify(byId((sheet) => conditionalRules(sheet, styles))),
      },
    ],
  };
}

function sheetData(
  sheet: Sheet,
  id: string,
  styles: StyleTable,
  dates1904: boolean,
): Partial<IWorksheetData> & { id: string } {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let rows = 0;
  let columns = 0;
  const spilled = spilledCells(sheet);
  const covered = coveredCells(sheet);
  const put = (row: number, column: number, cell: Cell | undefined, plain: CellValue): void => {
    const key = `${row},${column}`;
    const content = spilled.has(key) || covered.has(key) ? {} : shownCell(cell, plain, dates1904);
    const style = styles.idOf(cell?.style);
    if (style !== undefined) content.s = style;
    if (Object.keys(content).length === 0) return;
    (cellData[row] ??= {})[column] = content;
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  };
  sheet.rows.forEach((cells, row) =>
    cells.forEach((value, column) => put(row, column, sheet.cells?.get(`${row},${column}`), value)),
  );
  const { freezePane } = sheet;
  return {
    id,
    name: sheet.name,
    cellData,
    rowCount: Math.max(LEAST_ROWS, rows + SPARE_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, columns + SPARE_COLUMNS),
    columnData: Object.fromEntries(
      (sheet.columns ?? []).map(({ width, hidden }, index) => [
        index,
        { ...(width ? { w: Math.round(width * 7 + 5) } : {}), ...(hidden ? { hd: 1 } : {}) },
      ]),
    ),
    rowData: rowHeights(sheet),
    defaultRowHeight: ROW_HEIGHT,
    defaultColumnWidth: COLUMN_WIDTH,
    mergeData: (sheet.merges ?? []).map(({ startRow, endRow, startCol, endCol }) => ({
      startRow,
      endRow,
      startColumn: startCol,
      endColumn: endCol,
    })),
    hidden: sheet.hidden || sheet.veryHidden ? 1 : 0,
    tabColor: styles.rgb(sheet.view?.tabColor) ?? "",
    showGridlines: sheet.view?.showGridLines === false ? 0 : 1,
    ...(freezePane
      ? {
          freeze: {
            xSplit: freezePane.columns ?? 0,
            ySplit: freezePane.rows ?? 0,
            startRow: freezePane.rows ?? -1,
            startColumn: freezePane.columns ?? -1,
          },
        }
      : {}),
  };
}

/** The zoom at which the sheet's own columns fit the room, within what the eye can read. */
function fittingZoom(sheet: Sheet, room: number): number {
  const across = (sheet.columns ?? []).reduce(
    (sum, { width, hidden }) => sum + (hidden ? 0 : (width ?? 8.4) * 7 + 5),
    0,
  );
  const fitting = Math.floor(((room - MARGIN) / across) * 20) / 20;
  return Math.min(1, Math.max(LEAST_ZOOM, fitting));
}

/** Heights in pixels: the file's, or for rows without one what their largest letters and wrapped lines need. */
function rowHeights(sheet: Sheet): Record<number, { h?: number; ia?: number; hd?: number }> {
  const heights: Record<number, { h?: number; ia?: number; hd?: number }> = {};
  for (const [key, { style, value }] of sheet.cells ?? []) {
    const [row = 0, column = 0] = key.split(",").map(Number);
    const line = ((style?.font?.size ?? LETTERS) * 96 * 1.35) / 72;
    const width = (sheet.columns?.[column]?.width ?? 8.4) * (LETTERS / (style?.font?.size ?? LETTERS));
    const lines = style?.alignment?.wrapText && typeof value === "string" ? Math.ceil(value.length / width) : 1;
    const needed = value === null ? 0 : Math.ceil(line * lines);
    if (needed > (heights[row]?.h ?? ROW_HEIGHT)) heights[row] = { h: needed, ia: 0 };
  }
  for (const [row, { height, hidden }] of sheet.rowDefs ?? []) {
    if (height) heights[row] = { h: Math.round((height * 96) / 72), ia: 0 };
    if (hidden) heights[row] = { ...heights[row], hd: 1 };
  }
  return heights;
}

/** Value or formula of a cell; the stored result of a formula is shown until the first calculation. */
function shownCell(cell: Cell | undefined, plain: CellValue, dates1904: boolean): ICellData {
  const value = plainValue(cell?.formulaResult ?? cell?.value ?? plain, dates1904);
  const shown: ICellData =
    value === ""
      ? {}
      : typeof value === "number"
        ? { v: value, t: NUMBER }
        : typeof value === "boolean"
          ? { v: value ? 1 : 0, t: BOOLEAN }
          : { v: value, t: TEXT };
  const formula = formulaOf(cell);
  if (formula) shown.f = formula;
  if (cell?.formulaSharedIndex !== undefined) shown.si = `shared${cell.formulaSharedIndex}`;
  return shown;
}

/** Cells that hold the stored spill of a dynamic formula; the engine fills them again. */
function spilledCells(sheet: Sheet): Set<string> {
  const keys = new Set<string>();
  for (const [anchor, cell] of sheet.cells ?? []) {
    if (cell.formulaType !== "array" || !cell.formulaRef) continue;
    for (const key of cellsOf(cell.formulaRef, sheet.name)) if (key !== anchor) keys.add(key);
  }
  return keys;
}

/** Cells under a merge, except the one that shows. */
function coveredCells(sheet: Sheet): Set<string> {
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
