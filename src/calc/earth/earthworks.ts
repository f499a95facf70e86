import { requireRange } from "../problem";

/** Limits the earthwork calculations check; SI. Deeper pits need a design by an engineer (29 CFR 1926, subpart P). */
export const EARTH_RANGE = {
  length: { min: 0, max: 500 },
  depth: { min: 0, max: 6.1 },
  /** Horizontal run per 1 of rise: 0 is upright, an overhang would be less. */
  slope: { min: 0, max: 10 },
} as const;

function requireSides(length: number, width: number, depth: number, depthName: string, slope: number): void {
  const { length: side, depth: deep, slope: run } = EARTH_RANGE;
  requireRange("length", length, side.min, side.max, "m");
  requireRange("width", width, side.min, side.max, "m");
  requireRange(depthName, depth, deep.min, deep.max, "m");
  requireRange("side slope", slope, run.min, run.max, "run per 1 of rise");
}

/**
 * Volume of a pit with a rectangular bottom and four sides of one slope, exact:
 * V = L W d + z d² (L + W) + 4/3 z² d³. The same solid upside down is a heap with a flat top.
 *
 * @param length L of the bottom, m, 0 to 500
 * @param width W of the bottom, m, 0 to 500
 * @param depth d, m, 0 to 6.1
 * @param slope z, horizontal run per 1 of depth, 0 (upright) to 10
 * @returns m³, bank volume
 * @throws Problem outside these ranges
 * @example pitVolume(3, 2, 1.5) => 9; 3 × 2 × 1.5
 *
 * Source: prismoidal formula, which is exact here; any surveying text (Davis, Foote and Kelly, "Surveying", from memory).
 */
export function pitVolume(length: number, width: number, depth: number, slope = 0): number {
  requireSides(length, width, depth, "depth", slope);
  const reach = slope * depth;
  return depth * (length * width + reach * (length + width) + (4 / 3) * reach * reach);
}

/**
 * Volume of a berm with square ends: V = (b + z h) h L.
 *
 * @param crestLength L, m, 0 to 500
 * @param crestWidth b, m, 0 to 500; 0 is a ridge
 * @param height h, m, 0 to 6.1
 * @param slope z of both long sides, horizontal run per 1 of height, 0 to 10
 * @returns m³, compacted volume
 * @throws Problem outside these ranges
 * @example bermVolume(10, 1, 0.5, 2) => 10; (1 + 2 × 0.5) × 0.5 × 10
 *
 * Source: area of a trapezoid; US Army FM 5-434 (2000), from memory.
 */
export function bermVolume(crestLength: number, crestWidth: number, height: number, slope: number): number {
  requireSides(crestLength, crestWidth, height, "height", slope);
  return (crestWidth + slope * height) * height * crestLength;
}
