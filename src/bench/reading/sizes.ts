import type { Sheet } from "hucre";
import { attributeOf, childOf, type XmlElement } from "../../xlsx/xml";

/** Pixels of rows and columns for which the file gives no size. */
export interface UsualSize {
  readonly row: number;
  readonly column: number;
}

/** The sizes where the file says nothing at all, and the letter size in points. */
export const USUAL: UsualSize = { row: 20, column: 64 };
const LETTERS = 11;
/** Row numbers and scroll bar beside the cells, in pixels. */
const MARGIN = 66;
const LEAST_ZOOM = 0.8;

/** The size that a sheet gives to rows and columns that have none of their own. */
export function usualSize(worksheet: XmlElement): UsualSize {
  const said = childOf(worksheet, "sheetFormatPr");
  const [points, letters] = [attributeOf(said, "defaultRowHeight"), attributeOf(said, "defaultColWidth")].map(Number);
  return { row: points ? pixels(points) : USUAL.row, column: letters ? columnPixels(letters) : USUAL.column };
}

export function columnPixels(letters: number): number {
  return Math.round(letters * 7 + 5);
}

function pixels(points: number): number {
  return Math.round((points * 96) / 72);
}

/** The zoom at which the sheet's own columns fit the room, within what the eye can read. */
export function fittingZoom(sheet: Sheet, room: number): number {
  const across = (sheet.columns ?? []).reduce(
    (sum, { width, hidden }) => sum + (hidden ? 0 : (width ?? 8.4) * 7 + 5),
    0,
  );
  const fitting = Math.floor(((room - MARGIN) / across) * 20) / 20;
  return Math.min(1, Math.max(LEAST_ZOOM, fitting));
}

/** Heights in pixels: the file's, or for rows without one what their largest letters and wrapped lines need. */
export function rowHeights(sheet: Sheet, usual: number): Record<number, { h?: number; ia?: number; hd?: number }> {
  const heights: Record<number, { h?: number; ia?: number; hd?: number }> = {};
  for (const [key, { style, value }] of sheet.cells ?? []) {
    const [row = 0, column = 0] = key.split(",").map(Number);
    const line = ((style?.font?.size ?? LETTERS) * 96 * 1.35) / 72;
    const width = (sheet.columns?.[column]?.width ?? 8.4) * (LETTERS / (style?.font?.size ?? LETTERS));
    const lines = style?.alignment?.wrapText && typeof value === "string" ? Math.ceil(value.length / width) : 1;
    const needed = value === null ? 0 : Math.ceil(line * lines);
    if (needed > (heights[row]?.h ?? usual)) heights[row] = { h: needed, ia: 0 };
  }
  for (const [row, { height, hidden }] of sheet.rowDefs ?? []) {
    if (height) heights[row] = { h: pixels(height), ia: 0 };
    if (hidden) heights[row] = { ...heights[row], hd: 1 };
  }
  return heights;
}
