import { plain } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";

/** A limit that is the same number in both systems, or one round number for each. */
export type Limit = number | Readonly<Record<UnitSystem, number>>;

/** What a number may be, in the default unit of the system in force. `above` excludes its bound. */
export interface Range {
  readonly min?: Limit;
  readonly above?: Limit;
  readonly max?: Limit;
}

export function limitIn(limit: Limit, system: UnitSystem): number {
  return typeof limit === "number" ? limit : limit[system];
}

/** Whether a blank cell, which some hosts pass as 0, can only mean "blank" under this range. */
export function zeroIsBlank(range: Range): boolean {
  const { above, min } = range;
  if (above !== undefined) return limitIn(above, "US") >= 0 && limitIn(above, "SI") >= 0;
  return min !== undefined && limitIn(min, "US") > 0 && limitIn(min, "SI") > 0;
}

/** The range in words: "0 or more", "more than 0, at most 500 ft". */
export function rangeInWords(range: Range, system: UnitSystem, unit = ""): string {
  const tail = unit ? ` ${unit}` : "";
  const min = range.min === undefined ? undefined : plain(limitIn(range.min, system));
  const above = range.above === undefined ? undefined : plain(limitIn(range.above, system));
  const max = range.max === undefined ? undefined : plain(limitIn(range.max, system));
  if (min !== undefined && max !== undefined) return `${min} to ${max}${tail}`;
  if (above !== undefined && max !== undefined) return `more than ${above}, at most ${max}${tail}`;
  if (min !== undefined) return `${min} or more`;
  if (above !== undefined) return `more than ${above}`;
  if (max !== undefined) return `at most ${max}${tail}`;
  return "any number";
}

export function isInside(value: number, range: Range, system: UnitSystem): boolean {
  if (range.min !== undefined && value < limitIn(range.min, system)) return false;
  if (range.above !== undefined && value <= limitIn(range.above, system)) return false;
  return range.max === undefined || value <= limitIn(range.max, system);
}
