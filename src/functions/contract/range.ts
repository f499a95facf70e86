import { plain } from "../../calc/problem";
import { fromInside, toInside, unitLabel, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";

/**
 * What a number may be. Of a dimensioned argument the limits are those of the calculation, in its SI unit: a limit
 * typed once per unit system would refuse in one what it takes in the other. `above` excludes its bound.
 */
export interface Range {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
}

/** The same limits where a zero can only be a blank cell. */
export function aboveZero(range: { readonly max: number }): Range {
  return { above: 0, max: range.max };
}

/** A limit in the default unit of a system. */
export function limitIn(limit: number, system: UnitSystem, measure?: Measure): number {
  return measure ? fromInside(measure, limit, system) : limit;
}

/** Whether a blank cell, which some hosts pass as 0, can only mean "blank" under this range. */
export function zeroIsBlank({ above, min }: Range, measure?: Measure): boolean {
  // 0 °F and 0 °C are temperatures.
  if (measure === "temperature") return false;
  return above !== undefined ? above >= 0 : min !== undefined && min > 0;
}

/** The range in words: "0 or more", "more than 0, at most 500 ft". */
export function rangeInWords(range: Range, system: UnitSystem, measure?: Measure, unit?: string): string {
  const label = unit ?? (measure ? unitLabel(measure, system) : "");
  const tail = label ? ` ${label}` : "";
  const shown = (limit: number | undefined, round: (x: number) => number): string | undefined =>
    limit === undefined ? undefined : plain(roundLimit(limitIn(limit, system, measure), round));
  const min = shown(range.min, Math.ceil);
  const above = shown(range.above, Math.ceil);
  const max = shown(range.max, Math.floor);
  if (min !== undefined && max !== undefined) return `${min} to ${max}${tail}`;
  if (above !== undefined && max !== undefined) return `more than ${above}, at most ${max}${tail}`;
  if (min !== undefined) return `${min} or more`;
  if (above !== undefined) return `more than ${above}`;
  if (max !== undefined) return `at most ${max}${tail}`;
  return "any number";
}

/** A limit as a person reads it: as it is where it is a short number, else three digits that lie inside. */
function roundLimit(limit: number, round: (x: number) => number): number {
  const short = Number(limit.toPrecision(12));
  if (
    String(Math.abs(short))
      .replace(/^0\.0*|\./g, "")
      .replace(/0+$/, "").length <= 3
  )
    return short;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(limit))) - 2);
  return Number((round(limit / step) * step).toPrecision(3));
}

/** The share of a limit by which the binary digits of a converted unit may overstep it. */
const CONVERSION_NOISE = 1e-12;

/** A value inside the range, brought onto a limit that only its binary digits overstep; undefined outside. */
export function insideRange(value: number, { min, above, max }: Range, measure?: Measure): number | undefined {
  if (!Number.isFinite(value)) return undefined;
  // A temperature loses digits to the kelvins it passes through: 32 °F can come out as -8e-14 °C.
  const least = measure === "temperature" ? 273.15 : 0;
  const noise = (limit: number): number => CONVERSION_NOISE * Math.max(Math.abs(limit), Math.abs(value), least);
  if (above !== undefined && value <= above) return undefined;
  if (min !== undefined && value < min) return value >= min - noise(min) ? min : undefined;
  if (max !== undefined && value > max) return value <= max + noise(max) ? max : undefined;
  return value;
}

/** A number in the default unit of a system, brought into SI and into the range; undefined outside. */
export function insideOf(value: number, measure: Measure, system: UnitSystem, range: Range): number | undefined {
  return insideRange(toInside(measure, value, system), range, measure);
}
