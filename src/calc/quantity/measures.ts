import { plain } from "../problem";
import { convert } from "./units";
import type { UnitSystem } from "./unitSystem";

/** What a dimensioned value measures; each has one default unit in either system, and one SI unit inside. */
export type Measure = keyof typeof UNITS;

interface MeasureUnits {
  readonly US: string;
  readonly SI: string;
  readonly inside: string;
}

const UNITS = {
  length: { US: "ft", SI: "m", inside: "m" },
  size: { US: "in", SI: "mm", inside: "m" },
  area: { US: "ft^2", SI: "m^2", inside: "m^2" },
  earth: { US: "yd^3", SI: "m^3", inside: "m^3" },
  water: { US: "gal", SI: "L", inside: "m^3" },
  flow: { US: "gph", SI: "L/h", inside: "m^3/s" },
  head: { US: "ft", SI: "m", inside: "m" },
  pressure: { US: "psi", SI: "kPa", inside: "Pa" },
  speed: { US: "ft/s", SI: "m/s", inside: "m/s" },
  wind: { US: "mph", SI: "km/h", inside: "m/s" },
  load: { US: "ton", SI: "tonne", inside: "kg" },
  weight: { US: "lb", SI: "kg", inside: "kg" },
  density: { US: "lb/ft^3", SI: "t/m^3", inside: "kg/m^3" },
  temperature: { US: "degF", SI: "degC", inside: "degC" },
  power: { US: "W", SI: "W", inside: "W" },
  // Money per length or area depends on the unit system but has no dimension of its own.
} as const satisfies Record<string, MeasureUnits>;

/**
 * Whether a kind of number is one of the measures.
 *
 * @example isMeasure("flow") => true; it is one of the measures
 */
export function isMeasure(kind: string): kind is Measure {
  return kind in UNITS;
}

/**
 * The unit that the calculations use for a measure.
 *
 * @example insideUnit("flow") => "m^3/s"; SI
 */
export function insideUnit(measure: Measure): string {
  return UNITS[measure].inside;
}

/** How each default unit is printed. */
const LABELS: Readonly<Record<string, string>> = {
  "ft^2": "ft²",
  "m^2": "m²",
  "yd^3": "yd³",
  "m^3": "m³",
  tonne: "t",
  "lb/ft^3": "lb/ft³",
  "t/m^3": "t/m³",
  degF: "°F",
  degC: "°C",
};

interface Scale {
  readonly factor: number;
  readonly offset: number;
}

const scales: Record<UnitSystem, Partial<Record<Measure, Scale>>> = { US: {}, SI: {} };

function scaleOf(measure: Measure, system: UnitSystem): Scale {
  return (scales[system][measure] ??= makeScale(UNITS[measure], system));
}

function makeScale(units: MeasureUnits, system: UnitSystem): Scale {
  const offset = convert(0, units[system], units.inside);
  return { factor: convert(1, units[system], units.inside) - offset, offset };
}

/**
 * A value in the default unit of `system`, turned into the SI unit the calculations use.
 *
 * @example toInside("length", 10, "US") => 3.048; 10 × 0.3048
 */
export function toInside(measure: Measure, value: number, system: UnitSystem): number {
  const { factor, offset } = scaleOf(measure, system);
  return value * factor + offset;
}

/**
 * A value in the SI unit of the calculations, turned into the default unit of `system`.
 *
 * @example fromInside("length", 3.048, "US") => 10; 3.048 / 0.3048
 */
export function fromInside(measure: Measure, value: number, system: UnitSystem): number {
  const { factor, offset } = scaleOf(measure, system);
  return (value - offset) / factor;
}

/**
 * The default unit of a measure, as the unit library spells it.
 *
 * @example defaultUnit("length", "US") => "ft"; by definition
 */
export function defaultUnit(measure: Measure, system: UnitSystem): string {
  return UNITS[measure][system];
}

/**
 * The default unit of a measure, as it is printed beside a number.
 *
 * @example unitLabel("length", "SI") => "m"; by definition
 */
export function unitLabel(measure: Measure, system: UnitSystem): string {
  const unit = UNITS[measure][system];
  return LABELS[unit] ?? unit;
}

/**
 * An SI value written in the user's units, for sentences: "12.5 ft".
 *
 * @example say("length", 3.048, "US") => "10 ft"; 3.048 / 0.3048
 */
export function say(measure: Measure, inside: number, system: UnitSystem): string {
  return `${plain(fromInside(measure, inside, system))} ${unitLabel(measure, system)}`;
}

/**
 * An SI value in the default units of both systems, for sentences of the calculations: "1.2 m (3.937 ft)".
 *
 * @example sayBoth("length", 3.048).includes("10 ft") => true; 3.048 / 0.3048
 */
export function sayBoth(measure: Measure, inside: number): string {
  const short = (system: UnitSystem): string =>
    `${plain(Number(fromInside(measure, inside, system).toPrecision(4)))} ${unitLabel(measure, system)}`;
  return `${short("SI")} (${short("US")})`;
}
