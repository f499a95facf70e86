import { invalid, Problem } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { inWords, type Argument, type Arguments, type Values } from "./argument";
import type { Later } from "./later";
import { unitsArgument } from "./optional";
import { NoFiniteValue, type Result, type Value } from "./result";

/** The groups the functions are listed under. */
export type Topic =
  | "quantity"
  | "water"
  | "basin"
  | "pipe"
  | "pump"
  | "liner"
  | "stone"
  | "earth"
  | "ground"
  | "levels"
  | "money"
  | "job";

/** A call with the answer a person worked out or read elsewhere; a test executes it. */
export interface Example {
  /** What the user types between the brackets, in order; rows of a range as arrays of arrays. */
  readonly args: readonly unknown[];
  /** The answer, or a part of it: for a table, the cells to look at by [row, column] counted from 0 (header is row 0). */
  readonly gives: number | string | readonly { readonly at: readonly [number, number]; readonly is: number | string }[];
  /** Relative tolerance of numbers: the accuracy of the source. */
  readonly within: number;
  /** Where the answer comes from, outside this project. */
  readonly from: string;
}

/** Everything that is known of one worksheet function; help, wrappers, tests and both engines are made from it. */
export interface Declaration {
  readonly name: string;
  readonly topic: Topic;
  /** One sentence, at most 128 characters: Excel shows it. */
  readonly summary: string;
  /** The formula in plain text, symbols explained. */
  readonly formula: string;
  /** Author, edition, table or equation; or "common practice, no source". */
  readonly source: string;
  /** How far to trust the answer, and where the formula ends. */
  readonly limits: string;
  /** The usual caution, shown where the number is read. */
  readonly caution?: string;
  readonly args: Arguments;
  readonly result: Result<never>;
  readonly examples: readonly Example[];
  /** Code that must be loaded before `evaluate` is called. */
  readonly later?: Later<unknown>;
  /** Reads the host's values, calculates, and returns what the cell shows. Throws only `Problem`. */
  evaluate(raw: readonly unknown[]): Value;
  /** What takes long, a bit at a time; `evaluate` then finds it done. Throws as that does. */
  readonly bits?: (raw: readonly unknown[]) => Iterator<undefined, void>;
}

interface Parts<A extends Arguments, T> extends Omit<Declaration, "args" | "result" | "evaluate" | "bits"> {
  readonly args: A;
  readonly result: Result<T>;
  /** The calculation: arguments in SI in, SI out. */
  compute(values: Values<A>, system: UnitSystem): T;
  /** What `compute` takes long for, a bit at a time, so that a host with one thread is not held up; kept until then. */
  ahead?(values: Values<A>, system: UnitSystem): Iterator<undefined, void>;
}

/** Declares a worksheet function. A `units` argument is added when anything in it has a dimension. */
export function declare<const A extends Arguments, T>(parts: Parts<A, T>): Declaration {
  const { compute, ahead, args: own, result, ...facts } = parts;
  const dimensioned =
    Object.values<Argument<unknown>>(own).some((argument) => argument.dimensioned) ||
    result.measure !== undefined ||
    (result.columns ?? []).some((column) => column.measure !== undefined);
  const args: Arguments = dimensioned ? { ...own, units: unitsArgument } : own;
  const readers = Object.entries<Argument<unknown>>(own).map(([name, argument]) => ({
    name,
    label: inWords(name),
    argument,
  }));
  const read = (raw: readonly unknown[]): { readonly values: Values<A>; readonly system: UnitSystem } => {
    const system = dimensioned ? (unitsArgument.read(raw[readers.length], "units", "US") as UnitSystem) : "US";
    const values: Record<string, unknown> = {};
    readers.forEach(({ name, label, argument }, index) => {
      values[name] = argument.read(raw[index], label, system);
    });
    return { values: values as Values<A>, system };
  };

  return {
    ...facts,
    args,
    result: result as Result<never>,
    ...(ahead && {
      bits: (raw: readonly unknown[]) => {
        const { values, system } = read(raw);
        return ahead(values, system);
      },
    }),
    evaluate(raw) {
      const { values, system } = read(raw);
      try {
        return result.present(compute(values, system), system);
      } catch (error) {
        if (error instanceof Problem) throw error;
        if (error instanceof NoFiniteValue) {
          const names = readers.map(({ label }) => label).join(", ");
          throw invalid(`${error.message} has no finite value; one of ${names} is far too small or too large`);
        }
        // A defect of ours must still read as a sentence, and must not pass for a user's mistake.
        const detail = error instanceof Error ? error.message : String(error);
        throw invalid(`${facts.name} failed inside (${detail}); please report it with the values you used`);
      }
    },
  };
}
