import { dateToSerial, type Cell, type CellValue, type Sheet, type Workbook } from "hucre";
import { parseArea } from "../../xlsx/address";
import { fromFile } from "../formulaText";
import type { Source, SourceCell } from "./book";
import type { Spilling } from "./formula";
import type { Block } from "./block";
import { isErrorCode, type Held } from "./values";
import { isWorkable } from "./workable";

/** What the engine takes of a workbook, and how many of its formulas stay as they are. */
export interface ReadSource extends Source {
  readonly unworkable: number;
}

/**
 * What the engine takes of a workbook that the reading library has read. Where stored results are `trusted`, formulas that
 * cannot be worked out keep theirs.
 */
export function sourceOf({ sheets, namedRanges = [], dateSystem }: Workbook, trusted = false): ReadSource {
  const date1904 = dateSystem === "1904";
  let unworkable = 0;
  const keeps = (formula: string): boolean => {
    if (!trusted || isWorkable(formula)) return false;
    unworkable++;
    return true;
  };
  const read = sheets.map((sheet) => ({ sheet, cells: cellsOf(sheet, date1904, keeps) }));
  return {
    unworkable,
    sheets: read.map(({ sheet, cells }) => ({
      name: sheet.name,
      cells,
      filled: filledIn(sheet),
      merged: (sheet.merges ?? []).map(({ startRow, startCol, endRow, endCol }) => ({
        top: startRow + 1,
        left: startCol + 1,
        bottom: endRow + 1,
        right: endCol + 1,
      })),
      hiddenRows: [...(sheet.rowDefs ?? [])].flatMap(([row, { hidden }]) => (hidden ? [row + 1] : [])),
    })),
    names: namedRanges
      .filter(({ name }) => !name.startsWith("_xl"))
      .map(({ name, range, scope }) => ({ name, formula: fromFile(range), ...(scope === undefined ? {} : { scope }) })),
    date1904,
  };
}

function cellsOf(sheet: Sheet, date1904: boolean, keeps: (formula: string) => boolean): SourceCell[] {
  const leaders = new Map<number, { readonly row: number; readonly column: number; readonly text: string }>();
  for (const [key, { formula, formulaSharedIndex }] of sheet.cells ?? []) {
    if (!formula || formulaSharedIndex === undefined) continue;
    const [row = 0, column = 0] = key.split(",").map(Number);
    leaders.set(formulaSharedIndex, { row, column, text: fromFile(formula) });
  }
  const cells: SourceCell[] = [];
  sheet.rows.forEach((values, row) =>
    values.forEach((plain, column) => {
      const cell = sheet.cells?.get(`${row},${column}`);
      const value = heldIn(cell, plain, date1904);
      const leader = cell?.formulaSharedIndex === undefined ? undefined : leaders.get(cell.formulaSharedIndex);
      const text = cell?.formula ? fromFile(cell.formula) : leader?.text;
      if (text === undefined && value === undefined) return;
      const at = { row: row + 1, column: column + 1, value };
      if (text === undefined || keeps(text)) cells.push(at);
      else if (leader && !cell?.formula)
        cells.push({ ...at, formula: text, by: [row - leader.row, column - leader.column] });
      else cells.push({ ...at, formula: text, spilling: spillingOf(cell) });
    }),
  );
  return cells;
}

/** A formula marked as dynamic fills what it needs, one entered as an array its own block. */
function spillingOf(cell: Cell | undefined): Spilling {
  if (cell?.formulaDynamic) return "free";
  return cell?.formulaType === "array" && cell.formulaRef ? blockOf(cell.formulaRef) : undefined;
}

function filledIn({ cells }: Sheet): Block[] {
  return [...(cells?.values() ?? [])].flatMap(({ formulaType, formulaRef }) =>
    formulaType === "array" && formulaRef?.includes(":") ? (blockOf(formulaRef) ?? []) : [],
  );
}

function blockOf(ref: string): Block | undefined {
  const area = parseArea(ref, "");
  return area && { top: area.top + 1, left: area.left + 1, bottom: area.bottom + 1, right: area.right + 1 };
}

function heldIn(cell: Cell | undefined, plain: CellValue, date1904: boolean): Held | undefined {
  const value = cell?.formulaResult ?? cell?.value ?? plain;
  if (value === null || value === undefined) return undefined;
  if (value instanceof Date) return dateToSerial(value, date1904);
  return cell?.type === "error" || (cell?.formula !== undefined && isErrorCode(value))
    ? { error: String(value) }
    : value;
}
