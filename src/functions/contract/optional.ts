import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { readUnitSystem } from "../../calc/quantity/unitSystem";
import type { Argument } from "./argument";
import { refuseErrorCell, single } from "./raw";

/** Makes an argument optional; a blank reads as `undefined`, explained by `fallback`. */
export function optional<T>(argument: Argument<T>, fallback: string): Argument<T | undefined>;
/** Makes an argument optional; a blank reads as `value`, written as the user would write it, in either system. */
export function optional<T>(argument: Argument<T>, fallback: string, value: unknown): Argument<T>;
export function optional<T>(argument: Argument<T>, fallback: string, value?: unknown): Argument<T | undefined> {
  return {
    ...argument,
    optional: true,
    fallback,
    read(passed, label, system) {
      // A blank cell can come as a range of one cell.
      const raw = argument.hostType === "any" ? cellOf(passed) : passed;
      if (!argument.blank(raw)) return argument.read(raw, label, system);
      if (value === undefined) return undefined;
      return argument.read(valueIn(value, system), label, system);
    },
  };
}

/** The cell of a range of one; anything else as it is. */
function cellOf(raw: unknown): unknown {
  if (!Array.isArray(raw) || raw.length !== 1) return raw;
  const row: unknown = raw[0];
  return Array.isArray(row) && row.length === 1 ? (row[0] as unknown) : raw;
}

function valueIn(value: unknown, system: UnitSystem): unknown {
  if (typeof value === "object" && value !== null && "US" in value && "SI" in value) {
    return (value as Record<UnitSystem, unknown>)[system];
  }
  return value;
}

/** The last argument of every dimensioned function. */
export const unitsArgument: Argument<UnitSystem> = {
  about: "Default units of inputs and result",
  hostType: "any",
  optional: true,
  dimensioned: false,
  fallback: '"US"',
  choices: ["US", "SI"],
  rule: () => '"US" or "SI"',
  blank: (raw) => raw === undefined || raw === null || raw === "",
  read(raw, label) {
    // Some hosts pass a single cell as a range of one.
    const cell = single(raw, label);
    refuseErrorCell(cell, label);
    return readUnitSystem(cell);
  },
};
