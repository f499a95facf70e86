import { invalid } from "../calc/problem";
import { filledCells, findHeadingRow, HEADING_ROWS, type HeadingRow } from "./listFile";
import { COLUMNS, exactnessOf, fieldOf, type Field } from "./priceItem";

/** The row of headings of a price list, and which column is which. */
export interface Headings extends HeadingRow {
  /** The column of each field that the file has, from 0. */
  readonly columns: ReadonlyMap<Field, number>;
}

const NEEDED: readonly Field[] = ["code", "cost"];

/**
 * The row of headings and the delimiter that make the most of the price list's columns known.
 *
 * @param chosen the user's own columns, in place of those that the headings name
 * @param any whether a row that names no code and no cost will do, for the user to say which they are
 * @throws Problem where no row names a code and a cost, or the user's columns do not
 */
export function findHeadings(text: string, chosen?: ReadonlyMap<Field, number>, any = false): Headings {
  const heading = findHeadingRow(text, (cells) => {
    const found = new Set(cells.map(fieldOf));
    return NEEDED.every((field) => found.has(field)) ? COLUMNS.filter(({ field }) => found.has(field)).length : 0;
  });
  const row = heading ?? (any || chosen ? findHeadingRow(text, filledCells) : undefined);
  const columns = chosen ?? columnsOf(row?.cells ?? []);
  if (row && (any || NEEDED.every((field) => columns.has(field)))) return { ...row, columns };
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
