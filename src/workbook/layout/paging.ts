import type { SheetModel } from "../model";
import { DEFAULT_HEIGHT } from "./style";

/** Inches of US Letter and A4, of which the smaller counts in either direction: every sheet prints well on both. */
const PAPER = { short: 8.27, long: 11 } as const;
/** Margins on both sides together, inches. */
export const MARGINS = { left: 0.5, right: 0.5, top: 0.65, bottom: 0.6, header: 0.35, footer: 0.3 } as const;

/** Rows grow a little where the host fits them to wrapped text, so that a page is not planned to its last line. */
const SPARE = 0.96;
/** No larger than life, and no smaller than a person reads. */
const SCALES = { least: 40, most: 100 } as const;

/** Height of a row in points, as far as it is known before the host draws it. */
function heightOf(sheet: SheetModel, row: number): number {
  return sheet.heights.get(row) ?? DEFAULT_HEIGHT;
}

export function lastRowOf(sheet: SheetModel): number {
  return Math.max(1, ...sheet.rows.keys(), ...sheet.charts.map(({ area }) => area.bottom));
}

/** The last row on paper: tables that only formulas and charts read may stand below it. */
export function lastPrintedRow(sheet: SheetModel): number {
  return sheet.print.lastRow ?? lastRowOf(sheet);
}

/** The last column on paper: those right of it are for the screen. */
export function lastPrintedColumn(sheet: SheetModel): number {
  return sheet.print.lastColumn ?? sheet.widths.length;
}

/** Percent at which the sheet's columns fit the width of a page. */
export function pageScale(sheet: SheetModel): number {
  const paper = sheet.print.landscape ? PAPER.long : PAPER.short;
  const width = sheet.widths
    .slice(0, lastPrintedColumn(sheet))
    .reduce((sum, characters) => sum + (characters * 7 + 5) / 96, 0);
  const scale = Math.floor(((paper - MARGINS.left - MARGINS.right) / width) * 97);
  return Math.max(SCALES.least, Math.min(SCALES.most, scale));
}

/**
 * Rows after which a page ends: those the sheet asks for, and more where a section would be cut in two
 * though it fits a page of its own.
 */
export function pageBreaks(sheet: SheetModel, sectionRows: readonly number[]): number[] {
  const wanted = new Set(sheet.print.breaks);
  if (sheet.print.pagesHigh > 0) return [];
  const paper = sheet.print.landscape ? PAPER.short : PAPER.long;
  const room = ((paper - MARGINS.top - MARGINS.bottom) * 72 * SPARE * 100) / pageScale(sheet);
  const last = lastPrintedRow(sheet);
  const starts = sectionRows.filter((row) => row > 1 && row <= last);
  const breaks = [...wanted];
  let used = 0;
  for (let row = 1; row <= last; row++) {
    if (wanted.has(row - 1)) used = 0;
    else if (starts.includes(row) && used > 0) {
      const end = starts.find((start) => start > row) ?? last + 1;
      const height = sum(sheet, row, end);
      if (used + height > room && height <= room) {
        breaks.push(row - 1);
        used = 0;
      }
    }
    used += heightOf(sheet, row);
    if (used > room) used = heightOf(sheet, row);
  }
  return breaks.sort((a, b) => a - b);
}

function sum(sheet: SheetModel, from: number, before: number): number {
  let height = 0;
  for (let row = from; row < before; row++) {
    if (row > from && sheet.print.breaks.includes(row - 1)) break;
    height += heightOf(sheet, row);
  }
  return height;
}
