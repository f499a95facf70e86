import fc from "fast-check";
import { isDeepStrictEqual } from "node:util";
import { describe, expect, it } from "vitest";
import { Problem } from "../../src/calc/problem";
import { fromInside, toInside, type Measure } from "../../src/calc/quantity/measures";
import { catalogue, loadLater } from "../../src/functions/catalogue";
import type { Argument } from "../../src/functions/contract/argument";
import type { Declaration } from "../../src/functions/contract/declaration";
import { limitIn } from "../../src/functions/contract/range";
import type { Value } from "../../src/functions/contract/result";

await loadLater();

const RUNS = 300;
const MEASURES: readonly Measure[] = [
  ...([
    "length",
    "size",
    "area",
    "earth",
    "water",
    "flow",
    "head",
    "speed",
    "wind",
    "load",
    "weight",
    "temperature",
  ] as const),
];

/** What the user of either system types for the same thing. */
interface Pair {
  readonly US: unknown;
  readonly SI: unknown;
}

const same = (value: unknown): Pair => ({ US: value, SI: value });

/** Whether a blank stands for something else in the other system: then nothing can be compared. */
function blankDiffers(argument: Argument<unknown>): boolean {
  return !isDeepStrictEqual(argument.read(null, "x", "US"), argument.read(null, "x", "SI"));
}

/** What the user of either system types for `us`, a number in American units. */
function converted(measure: Measure, us: number): Pair {
  return { US: us, SI: fromInside(measure, toInside(measure, us, "US"), "SI") };
}

const factor = fc.double({ min: 0.5, max: 1.5, noNaN: true });

/** Rows like the example's: each column of numbers scaled by one factor, so that what rises still rises. */
function rowsOf(
  fixed: readonly Argument<unknown>[],
  repeated: readonly Argument<unknown>[],
  like: unknown,
): fc.Arbitrary<Pair> {
  const rows = (Array.isArray(like) ? like : []) as unknown[][];
  const columns = [...fixed, ...repeated];
  const kindOf = (index: number): number =>
    index < fixed.length ? index : fixed.length + ((index - fixed.length) % Math.max(1, repeated.length));
  return fc.array(factor, { minLength: columns.length, maxLength: columns.length }).map((factors) => {
    const cells = rows.map((row) =>
      row.map((value, index): Pair => {
        const kind = kindOf(index);
        const measure = columns[kind]?.measure;
        if (typeof value !== "number" || !measure) return same(value);
        return converted(measure, value * (factors[kind] ?? 1));
      }),
    );
    return { US: cells.map((row) => row.map((cell) => cell.US)), SI: cells.map((row) => row.map((cell) => cell.SI)) };
  });
}

function pairs(argument: Argument<unknown>, like: unknown): fc.Arbitrary<Pair> {
  const { columns, repeated, measure, range, choices, optional, hostType } = argument;
  if (columns) return rowsOf(Object.values(columns), Object.values(repeated ?? {}), like);
  if (hostType === "any[][]" && measure) return rowsOf([], [argument], like);
  if (measure && range && (typeof like === "number" || like === undefined || like === null)) {
    const high = range.max === undefined ? 1000 : limitIn(range.max, "US", measure);
    const low = limitIn(range.min ?? range.above ?? 0, "US", measure);
    const middle = typeof like === "number" ? like : low + (high - low) / 50;
    return factor.map((by) => converted(measure, Math.min(high, Math.max(low, middle * by))));
  }
  const usual = choices?.length ? fc.constantFrom(...choices).map(same) : fc.constant(same(like ?? null));
  return optional && !blankDiffers(argument) ? fc.oneof(fc.constant(same(null)), usual) : usual;
}

/** Whether two numbers, each in its own system, can be one physical value. */
function agree(us: number, si: number, measure: Measure | undefined): boolean {
  const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-7 * Math.max(Math.abs(a), Math.abs(b)) + 1e-9;
  const as = (m: Measure): boolean => close(toInside(m, us, "US"), toInside(m, si, "SI"));
  // A cell may carry a measure of its own row, which the answer no longer shows: then one of all must fit.
  return measure ? as(measure) : close(us, si) || MEASURES.some(as);
}

function disagreement(declaration: Declaration, us: Value, si: Value): string | undefined {
  const { measure, columns } = declaration.result;
  if (!Array.isArray(us) || !Array.isArray(si)) {
    return typeof us === "number" && typeof si === "number" && !agree(us, si, measure) ? `${us} | ${si}` : undefined;
  }
  if (us.length !== si.length) return `${us.length} rows | ${si.length} rows`;
  for (const [at, row] of us.entries()) {
    if (at === 0) continue;
    for (const [column, cell] of row.entries()) {
      const other = si[at]?.[column];
      // A column with a title of its own in each system counts by another piece: an inch of lip, or 100 mm.
      if (typeof columns?.[column]?.title === "object") continue;
      if (typeof cell !== typeof other) return `${String(cell)} | ${String(other)}`;
      if (typeof cell === "number" && !agree(cell, other as number, columns?.[column]?.measure))
        return `${cell} | ${String(other)} in row ${at}, column ${column}`;
    }
  }
  return undefined;
}

function attempt(declaration: Declaration, args: readonly unknown[]): Value | Problem {
  try {
    return declaration.evaluate(args);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

/** Functions whose answer is not one physical value: what is left out has its own round figure in each system. */
const APART = new Map([
  ["STEPS", "drops and treads are whole eighths of an inch, or whole multiples of 5 mm"],
  ["PIPERANK", "prices are per foot or per metre"],
  ["CUTPLAN", "prices are per foot or per metre"],
  ["DRAFT", "a design keeps to what is sold and usual in its own system"],
  ["PRICERANGE", "as DRAFT"],
  ["OPTION", "as DRAFT"],
]);

describe.each(catalogue.filter((d) => "units" in d.args && !APART.has(d.name)).map((d) => [d.name, d] as const))(
  "RILL.%s",
  (_, declaration) => {
    it("gives the same physical answer in both systems", () => {
      const entries = Object.entries(declaration.args).filter(([key]) => key !== "units");
      const examples = declaration.examples.map((e) => e.args).filter((args) => args[entries.length] !== "SI");
      const like = fc.constantFrom(...(examples.length > 0 ? examples : declaration.examples.map((e) => e.args)));
      let compared = 0;
      fc.assert(
        fc.property(
          like.chain((args) => fc.tuple(...entries.map(([, argument], index) => pairs(argument, args[index])))),
          (drawn) => {
            const us = attempt(declaration, [...drawn.map((pair) => pair.US), "US"]);
            const si = attempt(declaration, [...drawn.map((pair) => pair.SI), "SI"]);
            if (us instanceof Problem !== si instanceof Problem) {
              throw new Error([us, si].map((one) => (one instanceof Problem ? one.message : "taken")).join(" | "));
            }
            if (us instanceof Problem || si instanceof Problem) return;
            compared++;
            const wrong = disagreement(declaration, us, si);
            if (wrong !== undefined) throw new Error(wrong);
          },
        ),
        { numRuns: RUNS },
      );
      expect(compared).toBeGreaterThan(RUNS / 10);
    });
  },
);
