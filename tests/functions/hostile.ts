import fc from "fast-check";
import type { Measure } from "../../src/calc/quantity/measures";
import type { UnitSystem } from "../../src/calc/quantity/unitSystem";
import type { Argument } from "../../src/functions/contract/argument";
import type { Declaration } from "../../src/functions/contract/declaration";
import { limitIn, type Range } from "../../src/functions/contract/range";

/** What the host appends to every call, and what an older signature lets slip into an optional argument. */
export const INVOCATION = { address: "Sheet1!A1", functionName: "RILL.X", parameterAddresses: [] };

const numbers = fc.oneof(
  fc.double({ noNaN: false }),
  fc.double({ min: -1000, max: 1000, noNaN: true }),
  fc.integer({ min: -5, max: 200 }),
  fc.constantFrom(
    0,
    -0,
    1e-300,
    -1e-300,
    5e-324,
    1e300,
    Number.MAX_VALUE,
    Infinity,
    -Infinity,
    NaN,
    45_000.75,
    2 ** 53,
  ),
);

const texts = fc.oneof(
  fc.string({ maxLength: 30 }),
  fc.string({ unit: "grapheme", maxLength: 20 }),
  fc.constantFrom(
    ...["12 ft", "2' 6 1/2\"", "45 cm", "40 gpm", "-3 in", "1,250", "1,5", "10%", "1e308 ft", "1e5000", "0x10", "½ in"],
    ...["US", "SI", "TRUE", "yes", "Sch 40 PVC", "granite", "__proto__", "constructor", "toString", "hasOwnProperty"],
    ...["深い", "пруд", "عمق", "दो फुट", "🪨💧", "\u0000", "\u202e12 ft", " ", "\t\n", "=1+1", "'", '"', "#N/A", "NaN"],
  ),
  fc.integer({ min: 190, max: 5000 }).map((length) => "9".repeat(length)),
);

const errors = fc
  .constantFrom("#N/A", "#VALUE!", "#REF!", "#DIV/0!")
  .chain((code) => fc.constantFrom({ code }, { error: code }));

/** One cell, as any of the hosts may pass it. */
const cells: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: numbers },
  { weight: 3, arbitrary: texts },
  { weight: 2, arbitrary: fc.constantFrom<unknown>(null, "", 0, undefined) },
  { weight: 1, arbitrary: fc.boolean() },
  { weight: 1, arbitrary: errors },
);

const rectangle = fc
  .tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 8 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(cells, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  );
const ragged = fc.array(fc.array(cells, { maxLength: 5 }), { maxLength: 5 });
const long = fc
  .tuple(cells, cells, fc.integer({ min: 1, max: 4 }))
  .map(([a, b, width]) =>
    Array.from({ length: 10_000 }, (_, row) =>
      Array.from({ length: width }, (__, column) => ((row + column) % 3 === 0 ? a : b)),
    ),
  );

/** Anything a host can pass for one argument. */
export const anything: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 40, arbitrary: cells },
  { weight: 20, arbitrary: rectangle },
  { weight: 6, arbitrary: ragged },
  { weight: 1, arbitrary: long },
  { weight: 3, arbitrary: fc.constant(INVOCATION) },
);

/** A number inside a range: its ends, and what lies between them on a scale that small numbers share with large ones. */
function inside(range: Range, system: UnitSystem, measure?: Measure): fc.Arbitrary<number> {
  const low = range.min ?? range.above;
  const from = low === undefined ? -1000 : limitIn(low, system, measure);
  const to = range.max === undefined ? Math.max(1e6, from * 10) : limitIn(range.max, system, measure);
  const bottom = Math.max(from, to * 1e-7);
  const spread = fc.double({ min: 0, max: 1, noNaN: true });
  return fc.oneof(
    spread.map((share) => from + share * (to - from)),
    spread.map((share) => (bottom > 0 ? bottom * (to / bottom) ** share : from + share * (to - from))),
    fc.integer({ min: Math.ceil(from), max: Math.max(Math.ceil(from), Math.min(Math.floor(to), 60)) }),
    fc.constantFrom(to, ...(range.min === undefined ? [] : [from])),
  );
}

/** A value that an argument should take, as far as its declaration tells; `like` is what an example passes there. */
export function fitting(argument: Argument<unknown>, system: UnitSystem, like: unknown): fc.Arbitrary<unknown> {
  const { columns, repeated, choices, range, hostType, measure } = argument;
  if (columns) {
    const row = Array.isArray(like) ? (like[0] as unknown[]) : [];
    const fixed = Object.values(columns).map((column, index) => fitting(column, system, row[index]));
    const group = repeated
      ? Object.values(repeated).map((column, index) => fitting(column, system, row[fixed.length + index]))
      : [];
    return fc.integer({ min: 0, max: group.length > 0 ? 4 : 0 }).chain((groups) => {
      const cellsOfRow = [...fixed, ...Array.from({ length: groups }, () => group).flat()];
      return fc.array(fc.tuple(...cellsOfRow), { minLength: 1, maxLength: 8 });
    });
  }
  if (hostType === "any[][]") {
    const item = range ? inside(range, system, measure) : fc.constantFrom<unknown>(...firstColumn(like));
    return fc.array(
      item.map((value) => [value]),
      { minLength: 1, maxLength: 12 },
    );
  }
  const options: fc.Arbitrary<unknown>[] = [];
  if (choices && choices.length > 0) options.push(fc.constantFrom(...choices));
  if (range) options.push(inside(range, system, measure));
  if (like !== undefined && like !== null) options.push(fc.constant(like));
  if (argument.optional) options.push(fc.constantFrom<unknown>(null, "", undefined));
  return options.length > 0 ? fc.oneof(...options) : cells;
}

function firstColumn(like: unknown): unknown[] {
  const rows = Array.isArray(like) ? (like as unknown[][]) : [];
  return rows.length > 0 ? rows.map((row) => row[0]) : [1];
}

/** How much a number of an example may change and still be sensible; half the numbers stay as they are. */
const nudge = fc.oneof(fc.constant(1), fc.double({ min: 0.8, max: 1.25, noNaN: true }));

/** A value much like an example's: numbers moved a little, by one factor for a whole column, so that what rises still rises. */
export function alike(argument: Argument<unknown>, like: unknown): fc.Arbitrary<unknown> {
  const columns = [...Object.values(argument.columns ?? {}), ...Object.values(argument.repeated ?? {})];
  const fixed = Object.keys(argument.columns ?? {}).length;
  const columnAt = (at: number): number =>
    at < fixed ? at : fixed + ((at - fixed) % Math.max(1, columns.length - fixed));
  const moved = (of: Argument<unknown>, value: unknown, by: number): unknown => {
    // A size is one that is sold, and shares add up to one.
    const stays = of.measure === "size" || /^share\b/.test(of.rule("US"));
    if (typeof value !== "number" || stays) return value;
    return of.rule("US").includes("whole") ? Math.round(value * by) : value * by;
  };
  if (!Array.isArray(like)) return nudge.map((by) => moved(argument, like, by));
  return fc
    .array(nudge, { minLength: Math.max(1, columns.length), maxLength: Math.max(1, columns.length) })
    .map((factors) =>
      (like as unknown[][]).map((row) =>
        row.map((value, at) => moved(columns[columnAt(at)] ?? argument, value, factors[columnAt(at)] ?? 1)),
      ),
    );
}

/** A call, and where something strange was put into what was sensible before: the place of the argument. */
export interface Call {
  readonly args: readonly unknown[];
  readonly spoilt?: { readonly at: number; readonly before: readonly unknown[] };
}

/** Puts something strange into one argument: in place of all of it, or of one cell of a range. */
function spoil(args: readonly unknown[]): fc.Arbitrary<Call> {
  return fc.nat({ max: args.length - 1 }).chain((at) => {
    const own = args[at];
    const replaced = (value: unknown): Call => ({
      args: args.map((kept, index) => (index === at ? value : kept)),
      spoilt: { at, before: args },
    });
    if (!Array.isArray(own)) return anything.map(replaced);
    const rows = own as unknown[][];
    const place = fc.tuple(fc.nat({ max: rows.length - 1 }), fc.nat({ max: (rows[0]?.length ?? 1) - 1 }), cells);
    const oneCell = place.map(([y, x, cell]) =>
      replaced(rows.map((row, r) => row.map((kept, c) => (r === y && c === x ? cell : kept)))),
    );
    return fc.oneof({ weight: 3, arbitrary: oneCell }, { weight: 2, arbitrary: anything.map(replaced) });
  });
}

/** Calls of a function: mostly sensible, often with one argument strange, sometimes with all of them. */
export function calls(declaration: Declaration): fc.Arbitrary<Call> {
  const entries = Object.entries(declaration.args);
  const example = fc.constantFrom(...declaration.examples.map((e) => e.args));
  const fitted = fc
    .tuple(example, fc.constantFrom<UnitSystem>("US", "SI"))
    .chain(([like, system]) =>
      fc.tuple(
        ...entries.map(([key, argument], index) =>
          key === "units" ? fc.constant(system) : fitting(argument, system, like[index]),
        ),
      ),
    );
  const near = example.chain((like) =>
    fc.tuple(...entries.map(([, argument], index) => alike(argument, like[index] ?? null))),
  );
  const wild = fc.tuple(...entries.map(() => anything));
  const plain = (args: fc.Arbitrary<unknown[]>): fc.Arbitrary<Call> => args.map((all) => ({ args: all }));
  return fc.oneof(
    { weight: 3, arbitrary: plain(fitted) },
    { weight: 4, arbitrary: plain(near) },
    { weight: 5, arbitrary: near.chain(spoil) },
    { weight: 1, arbitrary: plain(wild) },
    { weight: 1, arbitrary: plain(fc.tuple(near, anything).map(([args, more]) => [...args, more, INVOCATION])) },
  );
}
