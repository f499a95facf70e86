import { invalid, plain, requireRange } from "../problem";
import { boulderWeight, boulderWeightRange, USUAL_SHAPE, type BoulderShape } from "./boulder";
import type { Density } from "./density";

/** A size of a mix: how big its stones are and which share of the weight they make up. */
export interface MixSize {
  /** Mean of a stone's length, width and height, m. */
  readonly size: number;
  readonly share: number;
}

/** What a size of a mix comes to. */
export interface MixPart extends MixSize {
  /** kg, of all stones of the size */
  readonly weight: number;
  /** kg, of one stone, as it is counted */
  readonly each: number;
  /** kg: the least one stone weighs */
  readonly light: number;
  /** kg: the most one stone weighs, which is what has to be lifted */
  readonly heavy: number;
  /** Whole stones, less than one from their share of the weight. */
  readonly count: number;
  readonly tooHeavyByHand: boolean;
}

/** How far shares may be from 100 % and still count as rounded figures (33.3 % three times). */
const SHARE_SLACK = 0.005;
/** Limits of a mix; SI. */
export const MIX_RANGE = { total: { min: 0, max: 10_000_000 }, size: { min: 0.01, max: 5 } } as const;

/**
 * Load one person should lift at most, kg. Source: NIOSH revised lifting equation (1994), load constant 23 kg (51 lb),
 * which holds under ideal conditions only; the usual limit of the trade and of the user may be lower.
 */
export const HAND_LIMIT = { usual: 23, min: 0, max: 100 } as const;

/**
 * Stones by size: weight = share × total, each = k ρ D³, count = weight / each, rounded up or down.
 * Shares that are rounded figures are scaled so that the weights add up to the total. From the biggest size down a
 * count is rounded to whichever side brings the weight of the stones so far nearer to their shares: the counts of all
 * sizes together are at most half of the biggest stone from the total.
 *
 * @param total kg, 0 to 10,000,000
 * @param sizes at least one; size 0.01 to 5 m, share 0 to 1, together 1 within half a percent
 * @param density ρ, kg/m³, 900 to 3500: of the solid rock; the usual one for counts, the highest for lifting
 * @param handLimit kg, 0 to 100: a stone that may be heavier needs a machine and rigging
 * @param shape k, for counts; a lift is judged by the stone's box whatever its shape
 * @throws Problem outside these ranges, and when the shares do not add up to 100 %
 * @example boulderMix(1000, [{ size: 0.3, share: 0.25 }, { size: 0.5, share: 0.75 }], exactly(2600))[0].weight =>
 *   250; 0.25 × 1000
 *
 * Source: W = π/6 γ D³, USACE Streambank Manual, appendix A, Eq. A.1, for a sphere; k for other shapes as in boulder.ts.
 */
export function boulderMix(
  total: number,
  sizes: readonly MixSize[],
  density: Density,
  handLimit: number = HAND_LIMIT.usual,
  shape: BoulderShape = USUAL_SHAPE,
): MixPart[] {
  requireRange("weight", total, MIX_RANGE.total.min, MIX_RANGE.total.max, "kg");
  requireRange("hand limit", handLimit, HAND_LIMIT.min, HAND_LIMIT.max, "kg");
  const sum = sizes.reduce((all, { share }) => all + requireRange("share", share, 0, 1), 0);
  if (Math.abs(sum - 1) > SHARE_SLACK) {
    throw invalid(`mix shares must add up to 100%; they add up to ${plain(sum * 100)}%`);
  }
  const parts = sizes.map(({ size, share }) => {
    requireRange("size", size, MIX_RANGE.size.min, MIX_RANGE.size.max, "m");
    const { light, heavy } = boulderWeightRange(size, size, size, density);
    const each = boulderWeight(size, size, size, density.usual, shape);
    const weight = (total * share) / sum;
    return { size, share: share / sum, weight, each, light, heavy, tooHeavyByHand: heavy > handLimit };
  });
  const counts = wholeStones(parts);
  return parts.map((part, index) => ({ ...part, count: counts[index] ?? 0 }));
}

function wholeStones(parts: readonly Pick<MixPart, "weight" | "each">[]): number[] {
  const counts = parts.map(() => 0);
  const biggestFirst = parts.map((part, index) => ({ ...part, index })).sort((a, b) => b.each - a.each);
  let over = 0;
  for (const { weight, each, index } of biggestFirst) {
    // A count that is whole on paper, but not in binary, must not gain or lose a stone.
    const fewer = Math.max(0, Math.floor(weight / each + 1e-9));
    const more = Math.max(0, Math.ceil(weight / each - 1e-9));
    const overWith = (count: number): number => over + count * each - weight;
    const count = Math.abs(overWith(more)) <= Math.abs(overWith(fewer)) ? more : fewer;
    over = overWith(count);
    counts[index] = count;
  }
  return counts;
}
