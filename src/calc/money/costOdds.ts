import { invalid, plain, requireRange } from "../problem";
import { solveBracketed } from "../solve";
import { LARGEST_AMOUNT } from "./cents";
import { erf } from "./erf";

/** A cost that is not sure: its lowest, likeliest and highest value, in whole money. */
export interface UncertainCost {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** What a list of uncertain costs comes to. */
export interface CostOdds {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly mean: number;
  /** Standard deviation of the sum. */
  readonly spread: number;
  /** The cost that is not exceeded at the confidence asked for. */
  readonly atConfidence: number;
}

/** Confidences that the bell curve can answer for a sum of a few items. */
export const CONFIDENCE_RANGE = { min: 0.5, max: 0.99 } as const;

/**
 * The mean and spread of a sum of uncertain costs, and the cost that is kept with a given confidence.
 *
 * Each item: mean = (low + 4 likely + high) / 6, spread = (high - low) / 6. Sum: means add up, spreads add as squares.
 * Cost at confidence = mean + z × spread, z of the normal distribution, never outside the sums of low and high.
 * The items are taken as independent; costs that rise together (fuel, weather) spread wider than this says.
 *
 * @param items low ≤ likely ≤ high, each 0 to 1e12
 * @param confidence chance of keeping the cost, 0.5 to 0.99
 * @throws Problem when an item is out of order or out of range
 * Source: PERT three-point estimate (Malcolm et al., Operations Research 7, 1959; from memory);
 *         the sum as normal: central limit theorem
 */
export function costOdds(items: readonly UncertainCost[], confidence = 0.8): CostOdds {
  requireRange("confidence", confidence, CONFIDENCE_RANGE.min, CONFIDENCE_RANGE.max);
  let low = 0;
  let likely = 0;
  let high = 0;
  let mean = 0;
  let variance = 0;
  items.forEach((item, index) => {
    const name = `item ${index + 1}`;
    requireRange(`${name}: low`, item.low, 0, LARGEST_AMOUNT);
    requireRange(`${name}: high`, item.high, 0, LARGEST_AMOUNT);
    if (!(item.low <= item.likely && item.likely <= item.high)) {
      throw invalid(
        `${name} must run from low to likely to high; got ${plain(item.low)}, ${plain(item.likely)}, ${plain(item.high)}`,
      );
    }
    low += item.low;
    likely += item.likely;
    high += item.high;
    mean += (item.low + 4 * item.likely + item.high) / 6;
    variance += ((item.high - item.low) / 6) ** 2;
  });
  const spread = Math.sqrt(variance);
  const atConfidence = Math.min(high, Math.max(low, mean + normalQuantile(confidence) * spread));
  return { low, likely, high, mean, spread, atConfidence };
}

/** The z below which a standard normal value lies with the given chance. */
function normalQuantile(chance: number): number {
  return solveBracketed((z) => 0.5 * (1 + erf(z / Math.SQRT2)) - chance, -6, 6, "the odds");
}
