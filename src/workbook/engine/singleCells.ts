import type { BoundExpr } from "./library";

/** Functions that pass over a text in a cell they refer to, where a text given to them as such is an error; each of their arguments. */
const OVER_CELLS = new Set(
  "SUM PRODUCT AVERAGE MAX MIN MEDIAN SUMSQ STDEV.S STDEV.P VAR.S VAR.P LARGE SMALL NPV IRR".split(" "),
);
/** Functions that count in a range, and the arguments that are ranges, counted from 0. */
const IN_RANGES: ReadonlyMap<string, readonly number[]> = new Map([
  ["COUNTIF", [0]],
  ["SUMIF", [0, 2]],
  ["AVERAGEIF", [0, 2]],
  ["COUNTIFS", [0, 2, 4, 6, 8]],
  ["SUMIFS", [0, 1, 3, 5, 7]],
  ["AVERAGEIFS", [0, 1, 3, 5, 7]],
  ["MAXIFS", [0, 1, 3, 5, 7]],
  ["MINIFS", [0, 1, 3, 5, 7]],
]);

const CELL = 2;
const AREA = 3;
const CALL = 10;

interface Part {
  readonly kind: number;
  readonly name?: string;
  readonly args?: BoundExpr[];
}

/**
 * Makes areas of single cells where a function takes ranges: the library hands a cell on as its value, so that a text in it is an
 * error, where every spreadsheet adds nothing for it. What is silent there must be silent here, or no test hears it.
 */
export function singleCellsAsAreas(part: unknown): void {
  if (Array.isArray(part)) return part.forEach(singleCellsAsAreas);
  if (typeof part !== "object" || part === null) return;
  const { kind, name = "", args } = part as Part;
  if (kind === CALL && args) {
    const ranges = IN_RANGES.get(name);
    args.forEach((argument, at) => {
      if (OVER_CELLS.has(name) || ranges?.includes(at)) args[at] = asArea(argument);
    });
  }
  Object.values(part).forEach(singleCellsAsAreas);
}

function asArea(argument: BoundExpr): BoundExpr {
  if ((argument.kind as number) !== CELL) return argument;
  const { sheet, row, col } = argument as unknown as { sheet: string; row: number; col: number };
  return { kind: AREA, sheet, top: row, left: col, bottom: row, right: col } as unknown as BoundExpr;
}
