import { decodeText, type Encoding } from "./decode";
import { readRecords, type RawRecord } from "./readRecords";
import { refuseFile } from "./refuseFile";

const DELIMITERS = [";", "\t", ",", "|"] as const;
/** The headings stand within this many rows from the top; title rows may stand above them. */
export const HEADING_ROWS = 10;

/** The row of headings of a list, and what separates its cells. */
export interface HeadingRow {
  readonly delimiter: string;
  /** From 1. */
  readonly row: number;
  readonly cells: readonly string[];
}

/**
 * The text of a list that a person gives as a file, or as a text.
 *
 * @throws Problem when the file is no text
 */
export function listText(file: Uint8Array | string): { readonly text: string; readonly encoding: Encoding } {
  if (typeof file === "string") return { text: file.replace(/^\uFEFF/, ""), encoding: "UTF-8" };
  refuseFile(file);
  return decodeText(file);
}

/**
 * The row of headings and the delimiter that make the most columns known; undefined where no row has enough of them.
 *
 * @param known how many columns a row of headings names; 0 where it lacks one that a list must have
 */
export function findHeadingRow(text: string, known: (cells: readonly string[]) => number): HeadingRow | undefined {
  let best: HeadingRow | undefined;
  let most = 0;
  for (const delimiter of DELIMITERS) {
    for (const { row, cells } of readRecords(text, delimiter, HEADING_ROWS)) {
      const count = known(cells);
      if (count <= most) continue;
      most = count;
      best = { delimiter, row, cells };
    }
  }
  return best;
}

/** How many cells of a row are filled, for lists whose headings nobody knows: 0 where it is no row of a table. */
export function filledCells(cells: readonly string[]): number {
  const filled = cells.filter((cell) => cell.trim() !== "").length;
  return filled > 1 ? filled : 0;
}

/** The records under the headings, without blank ones. */
export function recordsUnder(text: string, { delimiter, row }: Pick<HeadingRow, "delimiter" | "row">): RawRecord[] {
  return readRecords(text, delimiter)
    .slice(row)
    .filter(({ cells, problem }) => problem !== undefined || cells.some((cell) => cell.trim() !== ""));
}
