import type { Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Range } from "./range";

/** How the host is told to pass an argument. */
export type HostType = "any" | "any[][]";

/**
 * One argument of a worksheet function: everything that reading, help and tests need to know of it.
 * `T` is what the calculation receives, in SI.
 */
export interface Argument<T> {
  readonly about: string;
  readonly hostType: HostType;
  readonly optional: boolean;
  /** Set when the default unit depends on the unit system. */
  readonly dimensioned: boolean;
  readonly measure?: Measure;
  readonly range?: Range;
  readonly choices?: readonly string[];
  readonly columns?: Readonly<Record<string, Argument<unknown>>>;
  /** The columns that repeat in groups behind the fixed ones. */
  readonly repeated?: Readonly<Record<string, Argument<unknown>>>;
  /** What stands in for a blank, in words, for the help. */
  readonly fallback?: string;
  /** Unit and range in words: "ft, 0 or more". */
  rule(system: UnitSystem): string;
  /** Reads what the host passed; `label` is the argument's name in sentences. */
  read(raw: unknown, label: string, system: UnitSystem): T;
  /** Whether what the host passed counts as left out. */
  blank(raw: unknown): boolean;
}

/** Arguments by name, in the order the worksheet function takes them. */
export type Arguments = Readonly<Record<string, Argument<unknown>>>;

/** What the calculation receives for a set of arguments. */
export type Values<A extends Arguments> = { readonly [K in keyof A]: A[K] extends Argument<infer T> ? T : never };

/** "lip_width" as it stands in a sentence: "lip width". */
export function inWords(name: string): string {
  return name.replace(/_/g, " ");
}
