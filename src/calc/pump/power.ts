import { CENT_DIGITS, fromCents, lineCents } from "../money/cents";
import { invalid, plain, requireRange } from "../problem";
import { GRAVITY } from "../pipe/friction";
import { waterDensity } from "../pipe/waterProperties";

/** Density of water at 20 °C, kg/m³. */
const DENSITY = waterDensity(20);

/** Limits the running cost checks. */
export const RUNNING_RANGE = {
  watts: { min: 0, max: 100_000 },
  hoursPerDay: { min: 0, max: 24 },
  daysPerYear: { min: 0, max: 366 },
  tariff: { min: 0, max: 1000 },
} as const;

/** How long a pump runs and what a kilowatt-hour costs. */
export interface Running {
  readonly hoursPerDay: number;
  readonly daysPerYear: number;
  /** Money per kWh. */
  readonly tariff: number;
}

/**
 * Electric power a pump draws for a flow and head: P = ρ g Q H / η.
 *
 * @param flow Q, m³/s, 0 or more
 * @param head H, m, 0 or more
 * @param efficiency η, wire to water (pump × motor × drive), above 0 to 1; small pond pumps reach 0.2 to 0.5
 * @returns W
 * @throws Problem for values outside these ranges
 * @example pumpWatts(0.002, 5, 0.5) => 195.8; 998.2 × 9.80665 × 0.002 × 5 / 0.5
 *
 * Source: hydraulic power, any text; WHP = Q H / 3960 in American units. Water at 20 °C.
 */
export function pumpWatts(flow: number, head: number, efficiency: number): number {
  if (!(flow >= 0) || !(head >= 0)) throw invalid("flow and head must be 0 or more");
  if (!(efficiency > 0 && efficiency <= 1)) {
    throw invalid(`efficiency must be more than 0, at most 1; got ${plain(efficiency)}`);
  }
  return (DENSITY * GRAVITY * flow * head) / efficiency;
}

/**
 * Yearly cost of electricity, to the cent: W / 1000 × hours a day × days a year × money per kWh.
 *
 * @param watts 0 to 100,000
 * @param digits behind the point, where the smallest unit of the currency is no cent
 * @returns money in whole cents
 * @throws Problem for values outside RUNNING_RANGE
 * @example runCostCents(300, { hoursPerDay: 12, daysPerYear: 200, tariff: 0.15 }) => 10_800; 0.3 × 12 × 200 × 0.15 =
 *   108.00
 *
 * Source: arithmetic.
 */
export function runCostCents(
  watts: number,
  { hoursPerDay, daysPerYear, tariff }: Running,
  digits = CENT_DIGITS,
): number {
  const { watts: w, hoursPerDay: h, daysPerYear: d, tariff: t } = RUNNING_RANGE;
  requireRange("watts", watts, w.min, w.max, "W");
  requireRange("hours per day", hoursPerDay, h.min, h.max);
  requireRange("days per year", daysPerYear, d.min, d.max);
  requireRange("tariff", tariff, t.min, t.max);
  return lineCents((watts / 1000) * hoursPerDay * daysPerYear, tariff, "cost of electricity", digits);
}

/** What so many cents a year come to over the years, to the cent. */
export function overYears(yearlyCents: number, years: number, digits = CENT_DIGITS): number {
  return lineCents(years, fromCents(yearlyCents, digits), "cost over the years", digits);
}
