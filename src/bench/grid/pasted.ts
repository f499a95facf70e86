import { getNumfmtParseValueFilter } from "@univerjs/core";
import { readRecords } from "../../csv/readRecords";
import type { Area } from "../../xlsx/address";
import type { CellValue } from "../../host/port";

/** Digits that a number holds exactly; longer ones are numbers of papers or parts. */
const EXACT_DIGITS = 15;

/** Copied text as rows of cells, with tabs between the cells. */
export function pastedTexts(text: string): string[][] {
  const rows = readRecords(text, "\t").map(({ cells }) => cells);
  const width = Math.max(0, ...rows.map(({ length }) => length));
  return rows.map((row) => [...row, ...Array<string>(width - row.length).fill("")]);
}

/** What a text would be if it were typed into a cell that measures nothing. */
export function asTyped(text: string): CellValue {
  const content = text.trim();
  if (/^(true|false)$/i.test(content)) return content.toLowerCase() === "true";
  if (content.startsWith("=") || content.replace(/\D/g, "").length > EXACT_DIGITS) return content;
  const number: unknown = getNumfmtParseValueFilter(content)?.v;
  return typeof number === "number" ? number : content;
}

/** Where rows go: from the first selected cell on, and again wherever the selection holds them a whole number of times. */
export function spread<T>(
  rows: readonly (readonly T[])[],
  selected: Area,
): { readonly area: Area; readonly values: T[][] } {
  const [height, width] = [rows.length, rows[0]?.length ?? 0];
  const down = times(selected.bottom - selected.top + 1, height);
  const across = times(selected.right - selected.left + 1, width);
  const { sheet, top, left } = selected;
  const area = { sheet, top, left, bottom: top + height * down - 1, right: left + width * across - 1 };
  const values = Array.from({ length: height * down }, (_, row) =>
    Array.from({ length: width * across }, (_, column) => rows[row % height]?.[column % width] as T),
  );
  return { area, values };
}

function times(room: number, size: number): number {
  return room % size === 0 ? room / size : 1;
}
