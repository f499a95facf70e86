import { requireRange } from "../problem";
import { BULK_RANGE } from "./bulk";
import { requireDensity, type Density } from "./density";

/** How much of the box around a stone is stone. */
export const BOULDER_SHAPES = {
  /** An ellipsoid: π/6 of its box (USACE, Streambank Manual, Eq. A.1, for a sphere). */
  rounded: Math.PI / 6,
  /** Half way between an ellipsoid and its box. Common practice, no source. */
  angular: (1 + Math.PI / 6) / 2,
  /** A sawn or split block fills its box. */
  box: 1,
} as const;

export type BoulderShape = keyof typeof BOULDER_SHAPES;
export const BOULDER_SHAPE_NAMES = Object.keys(BOULDER_SHAPES) as readonly BoulderShape[];

/**
 * The shape taken while none is named: it lies in the middle, so that a stone that turns out an ellipsoid weighs 31 %
 * less and one that turns out a box 31 % more.
 */
export const USUAL_SHAPE: BoulderShape = "angular";

/** How far one stone's weight may be from its estimate, in the words every page uses; the densities come on top. */
export const WEIGHT_ERROR = "a third either way";

/** Limits the boulder calculations check; SI. */
export const BOULDER_RANGE = {
  size: { min: 0, max: 5 },
  faceLength: { min: 0, max: 1000 },
  faceHeight: { min: 0, max: 30 },
  thickness: { min: 0, max: 5 },
  solidShare: { min: 0.3, max: 1 },
} as const;

/** Solid share of stones laid in a face: dumped rock keeps 35 to 40 % voids (FHWA and USACE practice, from memory). */
export const USUAL_SOLID_SHARE = 0.65;

/**
 * Weight of one stone from the sides of the box around it: W = k × L × B × H × ρ.
 *
 * @param length L, width B, height H: m, 0 to 5 each
 * @param density ρ, kg/m³, 900 to 3500: of the solid rock
 * @param shape k: rounded π/6, box 1, angular half way between, which is the usual one
 * @returns kg
 * @throws Problem outside these ranges
 * @example boulderWeight(1, 0.5, 0.5, 2600, "box") => 650; 0.25 × 2600
 *
 * Source: W = π/6 γ D³, USACE Streambank Manual, appendix A, Eq. A.1, for a sphere; k for other shapes as said above.
 */
export function boulderWeight(
  length: number,
  width: number,
  height: number,
  density: number,
  shape: BoulderShape = USUAL_SHAPE,
): number {
  const { min, max } = BOULDER_RANGE.size;
  requireRange("length", length, min, max, "m");
  requireRange("width", width, min, max, "m");
  requireRange("height", height, min, max, "m");
  requireDensity("rock", density);
  return BOULDER_SHAPES[shape] * length * width * height * density;
}

/**
 * The least and the most a stone of known sides can weigh: an ellipsoid of the lightest such rock, and its whole box
 * filled by the heaviest. Lifts are planned for the second.
 *
 * @param length L, width B, height H: m, 0 to 5 each
 * @param density kg/m³, 900 to 3500: of the solid rock
 * @returns kg
 * @throws Problem outside these ranges
 * @example boulderWeightRange(1, 0.5, 0.5, { low: 2500, high: 2700 }).heavy => 675; 0.25 × 2700
 *
 * Source: as boulderWeight; no stone is more than its box.
 */
export function boulderWeightRange(
  length: number,
  width: number,
  height: number,
  density: Pick<Density, "low" | "high">,
): { readonly light: number; readonly heavy: number } {
  return {
    light: boulderWeight(length, width, height, density.low, "rounded"),
    heavy: boulderWeight(length, width, height, density.high, "box"),
  };
}

/**
 * Weight of the stones of a face: W = L × H × t × s × ρ × (1 + waste).
 *
 * @param length L, m, 0 to 1000, along the face
 * @param height H, m, 0 to 30
 * @param thickness t, m, 0 to 5: how far the stones reach back
 * @param density ρ, kg/m³, 900 to 3500: of the solid rock
 * @param solidShare s, 0.3 to 1: what is left when the gaps between the stones are taken off
 * @param waste share, 0 to 1
 * @returns kg
 * @throws Problem outside these ranges
 * @example boulderFaceWeight(10, 1, 0.5, 2600) => 8450; 10 × 1 × 0.5 × 2600 × 0.65
 *
 * Source: geometry; the usual solid share is said at USUAL_SOLID_SHARE.
 */
export function boulderFaceWeight(
  length: number,
  height: number,
  thickness: number,
  density: number,
  solidShare: number = USUAL_SOLID_SHARE,
  waste = 0,
): number {
  const { faceLength, faceHeight, thickness: reach, solidShare: share } = BOULDER_RANGE;
  requireRange("face length", length, faceLength.min, faceLength.max, "m");
  requireRange("face height", height, faceHeight.min, faceHeight.max, "m");
  requireRange("thickness", thickness, reach.min, reach.max, "m");
  requireDensity("rock", density);
  requireRange("solid share", solidShare, share.min, share.max);
  requireRange("waste", waste, BULK_RANGE.waste.min, BULK_RANGE.waste.max);
  return length * height * thickness * solidShare * density * (1 + waste);
}
