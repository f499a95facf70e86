import { LEVEL_RANGE } from "../../calc/levels/setOut";
import { optional } from "../contract/optional";
import { aboveZero, type Range } from "../contract/range";
import type { TableCell } from "../contract/result";
import { quantity, text } from "../contract/scalars";

/** A reading of 0 is a blank cell: the rod's foot is never on the line of sight. */
export const READING = aboveZero(LEVEL_RANGE.reading);

/** The columns of a level book, with readings in this range. */
export function rodColumns(range: Range) {
  const reading = (about: string) => optional(quantity("length", about, range), "none");
  return {
    point: optional(text("Name of the point", { longest: 80 }), "no name"),
    backsight: reading("On a point of known level"),
    intermediate: reading("On a point the run does not go on from"),
    foresight: reading("On a turning point or the last point"),
  };
}

/** Each result beside the row it was worked out for; rows between stay blank, so that all keep step with the cells beside them. */
export function inStep(given: readonly { readonly row: number }[], results: readonly TableCell[][]): TableCell[][] {
  const rows: TableCell[][] = [];
  results.forEach((result, index) => {
    while (rows.length < (given[index]?.row ?? 0) - 1) rows.push(result.map(() => ""));
    rows.push(result);
  });
  return rows;
}
