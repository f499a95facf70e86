import { fromInside, toInside, unitLabel, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";

/** A value for jobs in US units and one for jobs in SI units, or one for both. */
export type Both<T> = T | { readonly US: T; readonly SI: T };

/** The one of two values that belongs to a system. */
export function inSystem<T>(value: Both<T>, system: UnitSystem): T {
  return isPair(value) ? value[system] : value;
}

function isPair<T>(value: Both<T>): value is { readonly US: T; readonly SI: T } {
  return typeof value === "object" && value !== null && "US" in value && "SI" in value;
}

/** What a number of a job is: a measure, one of the trade's own units, or a number without a unit. */
export type Kind = Measure | keyof typeof TRADE_UNITS | Unitless;

/** Money is in the job's currency, for the unit that the thing is sold in. */
export type Unitless = "money" | "share" | "count" | "number" | "factor" | "hours" | "day";

/** Units of this trade that no measure has: what they are called, and the SI value of one. By definition of the units. */
const TRADE_UNITS = {
  /** A mil is a thousandth of an inch. */
  thickness: { US: { label: "mil", inside: 0.0254e-3 }, SI: { label: "mm", inside: 1e-3 } },
  /** An ounce is 0.45359237 kg / 16, a square yard 0.9144² m². */
  sheetMass: {
    US: { label: "oz/yd²", inside: 0.45359237 / 16 / (0.9144 * 0.9144) },
    SI: { label: "g/m²", inside: 1e-3 },
  },
  /** A pound is 0.45359237 kg, a square foot 0.3048² m². */
  areaWeight: {
    US: { label: "lb/ft²", inside: 0.45359237 / (0.3048 * 0.3048) },
    SI: { label: "kg/m²", inside: 1 },
  },
  percent: { US: { label: "%", inside: 0.01 }, SI: { label: "%", inside: 0.01 } },
} as const;

const UNITLESS: ReadonlySet<Kind> = new Set<Unitless>(["money", "share", "count", "number", "factor", "hours", "day"]);

function isUnitless(kind: Kind): kind is Unitless {
  return UNITLESS.has(kind);
}

function isTradeUnit(kind: Kind): kind is keyof typeof TRADE_UNITS {
  return kind in TRADE_UNITS;
}

/** A number as it was typed in a system, in SI. */
export function toSi(kind: Kind, typed: number, system: UnitSystem): number {
  if (isUnitless(kind)) return typed;
  return isTradeUnit(kind) ? typed * TRADE_UNITS[kind][system].inside : toInside(kind, typed, system);
}

/** An SI number in the unit that a system shows it in. */
export function fromSi(kind: Kind, inside: number, system: UnitSystem): number {
  if (isUnitless(kind)) return inside;
  return isTradeUnit(kind) ? inside / TRADE_UNITS[kind][system].inside : fromInside(kind, inside, system);
}

/** The unit a kind is shown in; "" where it has none. */
export function unitOf(kind: Kind, system: UnitSystem): string {
  if (kind === "hours") return "h";
  if (isUnitless(kind)) return "";
  return isTradeUnit(kind) ? TRADE_UNITS[kind][system].label : unitLabel(kind, system);
}
