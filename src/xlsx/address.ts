/** A rectangle of cells on one sheet; rows and columns counted from 0, both ends inside. */
export interface Area {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

const LAST_ROW = 1_048_576;
const LAST_COLUMN = 16_384;

/** "A" for 0, "AA" for 26. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let left = column + 1; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

/** 0 for "A", 26 for "AA". */
export function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** "B7" for row 6, column 1. */
export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** One cell as an area. */
export function cellArea(sheet: string, row: number, column: number): Area {
  return { sheet, top: row, left: column, bottom: row, right: column };
}

/** A sheet's name as a formula writes it: quoted only when it must be. */
export function quotedSheet(sheet: string): string {
  const plainName =
    /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) && !/^([A-Za-z]{1,3}\d+|[Rr]\d*[Cc]\d*|TRUE|FALSE)$/i.test(sheet);
  return plainName ? sheet : `'${sheet.replace(/'/g, "''")}'`;
}

/** "Water!B7" or "Water!B7:C9". */
export function areaName(area: Area): string {
  const first = cellName(area.top, area.left);
  const last = cellName(area.bottom, area.right);
  return `${quotedSheet(area.sheet)}!${first === last ? first : `${first}:${last}`}`;
}

/**
 * Reads "Water!$B$7:$C$9", "'Pipe run'!B7" or "=Water!B7"; a plain "B7" needs `sheet`.
 * Undefined for anything else (formulas, constants, whole columns, several areas).
 */
export function parseArea(text: string, sheet?: string): Area | undefined {
  const match =
    /^=?(?:(?:'((?:[^']|'')+)'|([^'!:,\s()]+))!)?\$?([A-Za-z]{1,3})\$?(\d{1,7})(?::\$?([A-Za-z]{1,3})\$?(\d{1,7}))?$/.exec(
      text.trim(),
    );
  if (!match) return undefined;
  const [, quoted, bare, column, row, lastColumn, lastRow] = match;
  const name = quoted?.replace(/''/g, "'") ?? bare ?? sheet;
  if (name === undefined || column === undefined || row === undefined) return undefined;
  const corners = {
    rows: [Number(row) - 1, Number(lastRow ?? row) - 1],
    columns: [columnNumber(column), columnNumber(lastColumn ?? column)],
  };
  const area: Area = {
    sheet: name,
    top: Math.min(...corners.rows),
    bottom: Math.max(...corners.rows),
    left: Math.min(...corners.columns),
    right: Math.max(...corners.columns),
  };
  return area.top >= 0 && area.bottom < LAST_ROW && area.right < LAST_COLUMN ? area : undefined;
}

/** Whether two areas share a cell. */
export function overlap(a: Area, b: Area): boolean {
  return a.sheet === b.sheet && a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
}
