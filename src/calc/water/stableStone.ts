import { GRAVITY } from "../pipe/friction";
import { requireRange } from "../problem";

/** How rough the water is that pulls at a stone. */
export type Turbulence = "high" | "low";

/** C of Isbash for each. */
export const ISBASH: Readonly<Record<Turbulence, { readonly c: number; readonly source: string }>> = {
  high: { c: 0.86, source: "Isbash (1936), stone lying alone; NCHRP Report 568, high turbulence" },
  low: { c: 1.2, source: "Isbash (1936), stone bedded among others; NCHRP Report 568, low turbulence" },
};

/** kg/m³ */
const WATER_DENSITY = 1000;

/** What the calculation accepts: speed in m/s; density of solid rock in kg/m³ (lighter rock drifts). */
export const STABLE_STONE_RANGE = { speed: { min: 0, max: 10 }, density: { min: 1200, max: 3500 } } as const;

/**
 * The smallest stone that stays where water runs over it: D = V² / (2 g C² (S - 1)).
 * C is divided by (a larger C, calmer water, gives a smaller stone).
 *
 * @param speed V, mean speed of the water, m/s, 0 to 10
 * @param density of the solid rock, kg/m³, 1200 to 3500; S = density / 1000
 * @param turbulence "high" below drops and at bends, "low" in an even reach
 * @returns D, diameter of a sphere of the stone's weight, m
 * @throws Problem outside these ranges
 * @example stableStone(2, 2650, "high") => 0.167; 2² / (2 × 9.80665 × 0.86² × 1.65), Isbash
 *
 * Source: S. V. Isbash, Construction of Dams by Depositing Rock in Running Water (1936), as in Blevins (2003) and
 * NCHRP Report 568.
 */
export function stableStone(speed: number, density: number, turbulence: Turbulence): number {
  requireRange("speed", speed, STABLE_STONE_RANGE.speed.min, STABLE_STONE_RANGE.speed.max, "m/s");
  requireRange("rock", density, STABLE_STONE_RANGE.density.min, STABLE_STONE_RANGE.density.max, "kg/m³");
  const { c } = ISBASH[turbulence];
  return (speed * speed) / (2 * GRAVITY * c * c * (density / WATER_DENSITY - 1));
}
