import type { ICellData, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import type { Cell, CellValue, Sheet, Workbook } from "hucre";
import { parseArea, type Area } from "../../xlsx/address";
import type { OpenedWorkbook } from "./openWorkbook";
import { coveredCells, listCells, mergedRanges, spilledCells } from "./cellSets";
import { conditionalRules } from "./conditional";
import { formulaOf, storedValue } from "../work/fileContent";
import { fromFile } from "../../workbook/formulaText";
import { sheetId } from "./sheetId";
import { columnPixels, fittingZoom, rowHeights, USUAL, type UsualSize } from "./sizes";
import { StyleTable } from "./styles";
import { validationRules } from "./validations";

const TEXT = 1;
const NUMBER = 2;
const BOOLEAN = 3;
/** How a cell with a list shows its text: on one line, where the list would wrap it, and without indentation, for its arrow takes room. */
const LISTED: IStyleData = { tb: 2, pd: { l: 4, r: 0 } };
const SPARE_ROWS = 20;
const SPARE_COLUMNS = 4;
const LEAST_ROWS = 40;
const LEAST_COLUMNS = 12;
/** Rows shown of a table that may grow, at most. */
const MOST_ROWS = 25_000;

/** The last row that a rule for typing reaches: so far a table may grow. */
function lastRuledRow(sheet: Sheet): number {
  const areas = (sheet.dataValidations ?? [])
    .flatMap(({ range }) => range.split(" "))
    .map((part) => parseArea(part, sheet.name));
  return lowest(areas);
}

/** The last row of a sheet that a name reaches: so far the table of a function may spill. */
function lastNamedRow({ name }: Sheet, { namedRanges = [] }: Workbook): number {
  return lowest(namedRanges.map(({ range }) => parseArea(range)).filter((area) => area?.sheet === name));
}

function lowest(areas: readonly (Area | undefined)[]): number {
  return Math.min(MOST_ROWS, Math.max(0, ...areas.map((area) => (area ? area.bottom + 1 : 0))));
}

/** What the grid shows of an opened workbook; `room` pixels across, sheets are shown small enough to fit. */
export function toGrid({ workbook, fileName, usual }: OpenedWorkbook, room = Infinity): IWorkbookData {
  const styles = new StyleTable(workbook.themeColors);
  const dates1904 = workbook.dateSystem === "1904";
  const sheets = workbook.sheets.map((sheet, index) => ({
    zoomRatio: fittingZoom(sheet, room),
    ...sheetData(sheet, sheetId(index), {
      styles,
      dates1904,
      leastRows: lastNamedRow(sheet, workbook),
      usual: usual.get(sheet.name) ?? USUAL,
    }),
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

interface Setting {
  readonly styles: StyleTable;
  readonly dates1904: boolean;
  readonly leastRows: number;
  readonly usual: UsualSize;
}

function sheetData(
  sheet: Sheet,
  id: string,
  { styles, dates1904, leastRows, usual }: Setting,
): Partial<IWorksheetData> & { id: string } {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let rows = 0;
  let columns = 0;
  const spilled = spilledCells(sheet);
  const covered = coveredCells(sheet);
  const listed = listCells(sheet);
  const grows = (sheet.columns ?? []).some(({ style }) => style);
  const put = (row: number, column: number, cell: Cell | undefined, plain: CellValue): void => {
    const key = `${row},${column}`;
    const content = spilled.has(key) || covered.has(key) ? {} : shownCell(cell, plain, dates1904);
    const style = styles.idOf(cell?.style, listed.has(key) ? LISTED : undefined);
    if (style !== undefined) content.s = style;
    if (Object.keys(content).length === 0) return;
    (cellData[row] ??= {})[column] = content;
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  };
  sheet.rows.forEach((cells, row) =>
    cells.forEach((value, column) => put(row, column, sheet.cells?.get(`${row},${column}`), value)),
  );
  const grown = Math.max(leastRows, grows ? lastRuledRow(sheet) : 0);
  const { freezePane } = sheet;
  return {
    id,
    name: sheet.name,
    cellData,
    rowCount: Math.max(LEAST_ROWS, grown, rows + SPARE_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, columns + SPARE_COLUMNS),
    columnData: Object.fromEntries(
      (sheet.columns ?? []).map(({ width, hidden, style }, index) => [
        index,
        {
          // Not as the column's own look, see FreeCells.
          ...(style ? { custom: { look: styles.idOf(style) } } : {}),
          ...(width ? { w: columnPixels(width) } : {}),
          ...(hidden ? { hd: 1 } : {}),
        },
      ]),
    ),
    rowData: rowHeights(sheet, usual.row),
    defaultRowHeight: usual.row,
    defaultColumnWidth: usual.column,
    mergeData: mergedRanges(sheet),
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

/** Value or formula of a cell; the stored result of a formula is shown until the first calculation. */
function shownCell(cell: Cell | undefined, plain: CellValue, dates1904: boolean): ICellData {
  const value = storedValue(cell, plain, dates1904);
  const shown: ICellData =
    value === ""
      ? {}
      : typeof value === "number"
        ? { v: value, t: NUMBER }
        : typeof value === "boolean"
          ? { v: value ? 1 : 0, t: BOOLEAN }
          : // The grid looks at every cell it knows as text for numbers and days in disguise, at each drawing.
            { v: value, ...(/\d/.test(value) ? { t: TEXT } : {}) };
  const formula = formulaOf(cell);
  if (formula) shown.f = formula;
  if (cell?.formulaSharedIndex !== undefined) shown.si = `shared${cell.formulaSharedIndex}`;
  return shown;
}
