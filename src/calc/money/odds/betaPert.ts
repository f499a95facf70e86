import { quantilesByScore } from "./scores";

/** A cost that is not sure: its lowest, likeliest and highest value, in whole money. */
export interface UncertainCost {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Cells that the density is added up in. */
const CELLS = 160;

/** Mean of the beta-PERT distribution: (low + 4 likely + high) / 6. */
export function meanOf({ low, likely, high }: UncertainCost): number {
  return (low + 4 * likely + high) / 6;
}

/** Variance of the beta-PERT distribution: (mean - low) (high - mean) / 7. */
export function varianceOf(cost: UncertainCost): number {
  const mean = meanOf(cost);
  return ((mean - cost.low) * (cost.high - mean)) / 7;
}

/**
 * The cost below which the same share of cases lies as below each normal score, for a beta-PERT distribution:
 * density ∝ t^(a-1) (1-t)^(b-1) with t = (cost - low) / (high - low), a = 1 + 4 (likely - low) / (high - low), b = 6 - a.
 *
 * Source: PERT: Malcolm, Roseboom, Clark, Fazar, "Application of a technique for research and development program
 * evaluation", Operations Research 7 (1959), from memory; this beta of it: common practice
 */
export function betaPertScores({ low, likely, high }: UncertainCost): Float64Array {
  const width = high - low;
  const a = width > 0 ? 1 + (4 * (likely - low)) / width : 3;
  const b = 6 - a;
  // With t = sin² θ the density has no corner at the ends: dt = 2 sin θ cos θ dθ.
  const density = (angle: number): number => Math.sin(angle) ** (2 * a - 1) * Math.cos(angle) ** (2 * b - 1);
  const step = Math.PI / 2 / CELLS;
  const below = new Float64Array(CELLS + 1);
  const values = new Float64Array(CELLS + 1);
  let before = density(0);
  for (let cell = 1; cell <= CELLS; cell++) {
    // Simpson's rule; cos may fall a hair below 0 at the last end.
    const after = cell < CELLS ? density(cell * step) : 0;
    below[cell] = (below[cell - 1] ?? 0) + before + 4 * density((cell - 0.5) * step) + after;
    values[cell] = Math.sin(cell * step) ** 2;
    before = after;
  }
  const all = below[CELLS] ?? 1;
  return quantilesByScore(
    below.map((sum) => sum / all),
    values,
  ).map((t) => low + width * t);
}
