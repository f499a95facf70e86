import { invalid, plain, requireRange } from "../problem";
import { boulderWeight } from "./boulder";

/** A size of a mix: how big its stones are and which share of the weight they make up. */
export interface MixSize {
  /** Diameter of a ball of the stone's volume, m. */
  readonly size: number;
  readonly share: number;
}

/** What a size of a mix comes to. */
export interface MixPart extends MixSize {
  /** kg, of all stones of the size */
  readonly weight: number;
  /** kg, of one stone */
  readonly each: number;
  /** Whole stones, rounded up. */
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
 * Stones by size: weight = share × total, each = π/6 ρ D³, count = weight / each, rounded up.
 * Shares that are rounded figures are scaled so that the weights add up to the total.
 *
 * @param total kg, 0 to 10,000,000
 * @param sizes at least one; size 0.01 to 5 m, share 0 to 1, together 1 within half a percent
 * @param density ρ, kg/m³, 900 to 3500: of the solid rock
 * @param handLimit kg, 0 to 100: a heavier stone needs a machine and rigging
 * @throws Problem outside these ranges, and when the shares do not add up to 100 %
 *
 * Source: W = π/6 γ D³, USACE Streambank Manual, appendix A, Eq. A.1.
 */
export function boulderMix(
  total: number,
  sizes: readonly MixSize[],
  density: number,
  handLimit: number = HAND_LIMIT.usual,
): MixPart[] {
  requireRange("weight", total, MIX_RANGE.total.min, MIX_RANGE.total.max, "kg");
  requireRange("hand limit", handLimit, HAND_LIMIT.min, HAND_LIMIT.max, "kg");
  const sum = sizes.reduce((all, { share }) => all + requireRange("share", share, 0, 1), 0);
  if (Math.abs(sum - 1) > SHARE_SLACK) {
    throw invalid(`mix shares must add up to 100 %; they add up to ${plain(sum * 100)} %`);
  }
  return sizes.map(({ size, share }) => {
    requireRange("size", size, MIX_RANGE.size.min, MIX_RANGE.size.max, "m");
    const each = boulderWeight(size, size, size, density);
    const weight = (total * share) / sum;
    // A count that is whole on paper, but not in binary, must not gain a stone.
    const count = Math.max(0, Math.ceil(weight / each - 1e-9));
    return { size, share: share / sum, weight, each, count, tooHeavyByHand: each > handLimit };
  });
}
