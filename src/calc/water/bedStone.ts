import { requireRange } from "../problem";
import { BED_RANGE } from "./bed";
import { STABLE_STONE_RANGE } from "./stableStone";

/** kg/m³ */
const WATER_DENSITY = 1000;

/**
 * Shields number at which stone begins to move, and where it was found.
 * HEC-15 lets it rise to 0.15 for stone and water far larger than a garden's (particle Reynolds number over 200,000);
 * that is not used here, so large stone comes out on the heavy side.
 */
export const SHIELDS = { number: 0.047, mostReynolds: 40_000, leastDepthPerStone: 1.5 } as const;

/** What the calculation accepts: depth in m, slope in m/m, density of solid rock in kg/m³, a factor of safety. */
export const BED_STONE_RANGE = {
  depth: { min: 0, max: BED_RANGE.depth.max },
  slope: BED_RANGE.slope,
  density: STABLE_STONE_RANGE.density,
  safety: { min: 1, max: 3 },
} as const;

/**
 * The smallest stone that the pull of the water leaves lying on a bed: D = SF d S / (F* (SG - 1)).
 * The pull is τ = γ d S, so a rougher bed, which runs deeper at the same flow, asks for a larger stone; a rule that goes
 * by speed alone would let it keep a smaller one.
 *
 * The source holds for water at least 1.5 times as deep as the stone, which is a bed of up to about 5 % in granite.
 * On steeper beds the stone is larger than that and the formula is outside its range, on the heavy side: rock chutes
 * of 10 to 40 % held stone of a half to a third of it (Robinson, Rice and Kadavy 1998).
 *
 * @param depth d, m, 0 to 10
 * @param slope S, m/m, 0.00001 to 1
 * @param density of the solid rock, kg/m³, 1200 to 3500; SG = density / 1000
 * @param safety SF, 1 to 3
 * @returns D50, mean diameter, m
 * @throws Problem outside these ranges
 * @example bedStone(0.1, 0.047, 2000) => 0.1; 0.1 × 0.047 / (0.047 × (2 - 1))
 *
 * Source: FHWA HEC-15, Design of Roadside Channels with Flexible Linings, 3rd ed. (2005), Eq. 3.1, 6.7 and 6.8;
 * F* 0.047 and SF 1.0 up to a particle Reynolds number of 40,000 from its Table 6.1 (from memory).
 */
export function bedStone(depth: number, slope: number, density: number, safety = 1): number {
  const { depth: deep, slope: steep, density: heavy, safety: factor } = BED_STONE_RANGE;
  requireRange("depth", depth, deep.min, deep.max, "m");
  requireRange("slope", slope, steep.min, steep.max, "m/m");
  requireRange("rock", density, heavy.min, heavy.max, "kg/m³");
  requireRange("safety", safety, factor.min, factor.max);
  return (safety * depth * slope) / (SHIELDS.number * (density / WATER_DENSITY - 1));
}
