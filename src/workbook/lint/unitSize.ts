import { insideUnit, isMeasure, toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";

/**
 * What is known of a number's unit: its dimensions, as powers of base units, and how large it may be in them. A plain number that
 * something is multiplied by may be an amount or turn one unit into another, so that there may be several sizes.
 */
export interface UnitSize {
  readonly powers: Readonly<Record<string, number>>;
  readonly sizes: readonly number[];
}

/** Digits in which the factor between two units has to be right. */
const CLOSE = 1e-5;
/** More sizes than this tell nothing. */
const MOST_SIZES = 16;

export const PURE: UnitSize = { powers: {}, sizes: [1] };
const MONEY: UnitSize = { powers: { money: 1 }, sizes: [1] };

/** The unit of a number of this kind; undefined where the kind does not tell. */
export function sizeOf(kind: string | undefined, system: UnitSystem): UnitSize | undefined {
  if (kind === "money") return MONEY;
  if (kind === "share" || kind === "count" || kind === "factor") return PURE;
  if (kind === "hours") return { powers: { s: 1 }, sizes: [3600] };
  // Degrees have a zero of their own.
  if (kind === undefined || !isMeasure(kind) || kind === "temperature") return undefined;
  const [above = "", below] = insideUnit(kind).split("/");
  const powers: Record<string, number> = {};
  for (const [part, sign] of [[above, 1] as const, ...(below === undefined ? [] : [[below, -1] as const])]) {
    const [base = "", power = "1"] = part.split("^");
    powers[base] = (powers[base] ?? 0) + sign * Number(power);
  }
  return { powers, sizes: [toInside(kind, 1, system)] };
}

/** The unit of a product or, with -1, of a quotient. A price is per unit of something: times any amount it stays money. */
export function times(one: UnitSize, other: UnitSize, sign: 1 | -1): UnitSize | undefined {
  if (one.powers.money || other.powers.money)
    return one.powers.money && other.powers.money
      ? sign === 1
        ? undefined
        : PURE
      : sign === 1 || one.powers.money
        ? MONEY
        : undefined;
  const powers: Record<string, number> = { ...one.powers };
  for (const [base, power] of Object.entries(other.powers)) powers[base] = (powers[base] ?? 0) + sign * power;
  for (const [base, power] of Object.entries(powers)) if (power === 0) delete powers[base];
  const sizes = one.sizes.flatMap((size) => other.sizes.map((by) => (sign === 1 ? size * by : size / by)));
  return sizes.length > MOST_SIZES ? undefined : { powers, sizes };
}

/** The unit of something times a plain number, which may be an amount or turn its unit into another by one of these. */
export function timesNumbers({ powers, sizes }: UnitSize, numbers: readonly number[]): UnitSize | undefined {
  if (!numbers.every((number) => number !== 0 && Number.isFinite(number))) return undefined;
  // A share of pure numbers is one again.
  if (Object.keys(powers).length === 0 || powers.money) return { powers, sizes };
  const both = [...sizes, ...numbers.flatMap((number) => sizes.map((size) => size / number))];
  return both.length > MOST_SIZES ? undefined : { powers, sizes: both };
}

/** What two numbers have in common that are added or compared; undefined where their units differ. */
export function common(one: UnitSize, other: UnitSize): UnitSize | undefined {
  const bases = new Set([...Object.keys(one.powers), ...Object.keys(other.powers)]);
  for (const base of bases) if ((one.powers[base] ?? 0) !== (other.powers[base] ?? 0)) return undefined;
  const sizes = one.sizes.filter((size) => other.sizes.some((same) => Math.abs(size / same - 1) < CLOSE));
  return sizes.length > 0 ? { powers: one.powers, sizes } : undefined;
}

/** "m^3 × 0.00378": base units and size, for sentences. */
export function inWords({ powers, sizes }: UnitSize): string {
  const bases = Object.entries(powers).map(([base, power]) => (power === 1 ? base : `${base}^${power}`));
  return `${bases.join(" ") || "a plain number"} × ${sizes.map((size) => Number(size.toPrecision(4))).join(" or ")}`;
}
