import { invalid } from "../calc/problem";
import { COLUMNS, exactnessOf, fieldOf, type Field } from "./priceItem";
import { readRecords, type RawRecord } from "./readRecords";

/** The row of headings of a price list, what separates its cells, and which column is which. */
export interface Headings {
  readonly delimiter: string;
  /** Row of the headings, from 1. */
  readonly row: number;
  readonly cells: readonly string[];
  /** The column of each field that the file has, from 0. */
  readonly columns: ReadonlyMap<Field, number>;
}

const DELIMITERS = [";", "\t", ",", "|"] as const;
/** The headings stand within this many rows from the top; title rows may stand above them. */
const HEADING_ROWS = 10;
const NEEDED: readonly Field[] = ["code", "cost"];

/**
 * The row of headings and the delimiter that make the most of the price list's columns known.
 *
 * @param chosen the user's own columns, in place of those that the headings name
 * @throws Problem where no row names a code and a cost
 */
export function findHeadings(text: string, chosen?: ReadonlyMap<Field, number>): Headings {
  let best: { delimiter: string; heading: RawRecord; known: number } | undefined;
  for (const delimiter of DELIMITERS) {
    for (const heading of readRecords(text, delimiter, HEADING_ROWS)) {
      const found = new Set(heading.cells.map(fieldOf));
      const known = COLUMNS.filter(({ field }) => found.has(field)).length;
      if (NEEDED.every((field) => found.has(field)) && known > (best?.known ?? 0)) best = { delimiter, heading, known };
    }
  }
  if (best) {
    const { delimiter, heading } = best;
    return { delimiter, row: heading.row, cells: heading.cells, columns: chosen ?? columnsOf(heading.cells) };
  }
  throw invalid(
    `the file must have a row of headings with Code and Cost among its first ${HEADING_ROWS} rows; ` +
      `the price list knows ${COLUMNS.map(({ heading }) => heading).join(", ")}`,
  );
}

/** Of two columns for one field the one with the more exact heading is taken: "Cost" before "Price". */
function columnsOf(cells: readonly string[]): Map<Field, number> {
  const columns = new Map<Field, number>();
  cells.forEach((cell, index) => {
    const field = fieldOf(cell);
    if (field === undefined) return;
    const taken = columns.get(field);
    if (taken === undefined || exactnessOf(cell) < exactnessOf(cells[taken] ?? "")) columns.set(field, index);
  });
  return columns;
}
