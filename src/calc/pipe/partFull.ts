import { invalid, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";
import { solveBracketed } from "../solve";
import { manningSpeed } from "../water/bed";
import { boreArea } from "./friction";

/** A round pipe that runs by its slope alone, with air above the water. */
export interface DrainPipe {
  /** m */
  readonly bore: number;
  /** Fall per length, m/m. */
  readonly slope: number;
  /** Manning's n. */
  readonly roughness: number;
}

/** What the calculations accept. */
export const DRAIN_RANGE = { slope: { min: 1e-5, max: 1 }, roughness: { min: 0.008, max: 0.03 } } as const;

/** Manning's n of plastic pipe, on the careful side: ASCE Manual 60 gives 0.009 to 0.011 for PVC (from memory). */
export const PLASTIC_ROUGHNESS = 0.011;

/** The water in a part-full pipe. */
export interface PartFull {
  /** m² */
  readonly area: number;
  /** Edge that the water wets, m. */
  readonly wetted: number;
  /** m/s */
  readonly speed: number;
  /** m³/s */
  readonly flow: number;
}

/**
 * What a round pipe carries at a depth of water: A = d² (θ - sin θ) / 8, P = d θ / 2, Q = A R^(2/3) S^½ / n with
 * θ = 2 acos(1 - 2 y/d).
 *
 * @param depth y, m, 0 to the bore
 * @throws Problem outside the ranges
 * @example partFull({ bore: 0.1, slope: 0.01, roughness: 0.011 }, 0.05).area => 0.003927; half of π/4 × 0.1²
 *
 * Source: Manning (1891); the section: V. T. Chow, Open-Channel Hydraulics (1959), Table 2-1.
 */
export function partFull(pipe: DrainPipe, depth: number): PartFull {
  const { bore, slope, roughness } = pipe;
  requireRange("slope", slope, DRAIN_RANGE.slope.min, DRAIN_RANGE.slope.max, "m/m");
  requireRange("roughness", roughness, DRAIN_RANGE.roughness.min, DRAIN_RANGE.roughness.max);
  // The binary digits of a converted unit may overstep the bore by a hair.
  if (!(depth >= 0 && depth <= bore * (1 + 1e-9))) {
    throw invalid(
      `depth must be 0 to the bore of this size, ${sayBoth("size", bore)}; got ${sayBoth("size", depth)}: ` +
        "give a larger size or another pipe type",
    );
  }
  if (depth === 0) return { area: 0, wetted: 0, speed: 0, flow: 0 };
  // The same angle as 2 acos(1 - 2 y/d), which would lose the digits of thin water.
  const angle = 4 * Math.asin(Math.sqrt(Math.min(1, depth / bore)));
  const segment = angle < 1e-3 ? angle ** 3 / 6 : angle - Math.sin(angle);
  const area = (bore ** 2 * segment) / 8;
  const wetted = (bore * angle) / 2;
  const speed = manningSpeed(area / wetted, slope, roughness);
  return { area, wetted, speed, flow: area * speed };
}

/**
 * What the pipe carries when it is just full, m³/s: A d^(2/3) / 4^(2/3) S^½ / n.
 *
 * @example fullFlow({ bore: 0.1, slope: 0.01, roughness: 0.011 }) => 0.006105; 0.0078540 × 0.025^(2/3) × 0.1 / 0.011
 */
export function fullFlow(pipe: DrainPipe): number {
  return boreArea(pipe.bore) * manningSpeed(pipe.bore / 4, pipe.slope, pipe.roughness);
}

/**
 * Depth of water at which a round pipe carries a flow by its slope, m: the inverse of `partFull`.
 *
 * Between the full pipe's flow and 1.076 times it there are two depths and the water surges between them, so that
 * more than the full pipe's flow is refused.
 *
 * @param flow m³/s, 0 up to the flow of the full pipe
 * @throws Problem outside the ranges, or for more than the full pipe carries
 * @example partFullDepth(0.00305243, { bore: 0.1, slope: 0.01, roughness: 0.011 }) => 0.05; half of the full flow
 *   stands at half of the bore
 */
export function partFullDepth(flow: number, pipe: DrainPipe): number {
  requireRange("slope", pipe.slope, DRAIN_RANGE.slope.min, DRAIN_RANGE.slope.max, "m/m");
  requireRange("roughness", pipe.roughness, DRAIN_RANGE.roughness.min, DRAIN_RANGE.roughness.max);
  const most = fullFlow(pipe);
  if (!(flow >= 0 && flow <= most)) {
    throw invalid(
      `flow must be 0 to what the full pipe carries, ${sayBoth("flow", most)}; got ${sayBoth("flow", flow)}: ` +
        "give a larger size, another pipe type, more slope or a smoother pipe (roughness)",
    );
  }
  // Below 0.82 of the bore the flow grows with depth and reaches the full pipe's; the root there is the stable one.
  return solveBracketed((depth) => partFull(pipe, depth).flow - flow, 0, 0.9 * pipe.bore, "the depth in the pipe");
}
