import { requireRange } from "../problem";
import { requireDensity } from "./density";

/** Limits the bulk calculations check; SI. */
export const BULK_RANGE = {
  area: { min: 0, max: 100_000 },
  depth: { min: 0, max: 5 },
  volume: { min: 0, max: 500_000 },
  waste: { min: 0, max: 1 },
} as const;

/**
 * Weight of loose stone in a volume: W = V × ρ × (1 + waste).
 *
 * @param volume m³, 0 to 500,000: the space the stone fills, voids included
 * @param density ρ, kg/m³, 600 to 2500: of the loose stone, voids included
 * @param waste share added to the order for loss, spill and settling, 0 to 1
 * @returns kg
 * @throws Problem outside these ranges
 * @example stoneWeight(2, 1500, 0.1) => 3300; 2 × 1500 × 1.1
 *
 * Source: definition of bulk density (ASTM C29).
 */
export function stoneWeight(volume: number, density: number, waste = 0): number {
  requireRange("volume", volume, BULK_RANGE.volume.min, BULK_RANGE.volume.max, "m³");
  requireDensity("stone", density);
  requireRange("waste", waste, BULK_RANGE.waste.min, BULK_RANGE.waste.max);
  return volume * density * (1 + waste);
}

/**
 * Weight of a layer of loose stone: W = A × d × ρ × (1 + waste).
 *
 * @param area A, m², 0 to 100,000
 * @param depth d, m, 0 to 5
 * @param density ρ, kg/m³, 600 to 2500
 * @param waste share, 0 to 1
 * @returns kg
 * @throws Problem outside these ranges
 * @example gravelWeight(10, 0.1, 1600) => 1600; 10 × 0.1 × 1600
 *
 * Source: as stoneWeight.
 */
export function gravelWeight(area: number, depth: number, density: number, waste = 0): number {
  requireRange("area", area, BULK_RANGE.area.min, BULK_RANGE.area.max, "m²");
  requireRange("depth", depth, BULK_RANGE.depth.min, BULK_RANGE.depth.max, "m");
  return stoneWeight(area * depth, density, waste);
}
