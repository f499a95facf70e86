import { invalid, plain, requireRange } from "../../problem";
import { solveBracketed } from "../../solve";
import { LARGEST_AMOUNT } from "../cents";
import { betaPertScores, meanOf, varianceOf, type UncertainCost } from "./betaPert";
import { atScore, MOST_SCORE, normalChance } from "./scores";
import { sumOdds } from "./sum";

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

/** Chances of keeping a cost that three guesses per item can answer. */
export const CONFIDENCE_RANGE = { min: 0.5, max: 0.99 } as const;
export const CORRELATION_RANGE = { min: 0, max: 1 } as const;
/** As many items as a cell works out in a tenth of a second. */
export const MOST_ITEMS = 300;

/** An item that is known as closely as this, in money or as a share of all costs, is sure. */
const SURE = 1e-9;
/** The largest correlation that leaves items a part of their own; beyond, they move as one. */
const MOST_MIXED = 0.9999;

/**
 * The mean and spread of a sum of uncertain costs, and the cost that is kept with a given confidence.
 *
 * Each item has a beta-PERT distribution: mean = (low + 4 likely + high) / 6, variance = (mean - low) (high - mean) / 7.
 * The sum is convolved, with one common cause behind all items where they are correlated.
 *
 * @param items low ≤ likely ≤ high, each 0 to 1e12; at most 300
 * @param confidence chance of keeping the cost, 0.5 to 0.99
 * @param correlation of any two items' normal scores, 0 (independent) to 1 (all good or all bad together)
 * @returns the share of cases that keep `atConfidence` is the confidence to 0.2 % of all cases
 * @throws Problem when an item is out of order or out of range
 * @example costOdds([{ low: 80, likely: 100, high: 120 }]).mean => 100; (80 + 4 × 100 + 120) / 6
 *
 * Source: PERT three-point estimate (Malcolm et al., Operations Research 7, 1959; from memory); convolution, any text on
 *         probability; one correlation for all items: common practice, no source
 */
export function costOdds(items: readonly UncertainCost[], confidence = 0.8, correlation = 0): CostOdds {
  requireRange("confidence", confidence, CONFIDENCE_RANGE.min, CONFIDENCE_RANGE.max);
  requireRange("correlation", correlation, CORRELATION_RANGE.min, CORRELATION_RANGE.max);
  requireRange("number of items", items.length, 0, MOST_ITEMS);
  items.forEach((item, index) => requireOrder(item, `item ${index + 1}`));
  const low = sumOf(items, (item) => item.low);
  const likely = sumOf(items, (item) => item.likely);
  const high = sumOf(items, (item) => item.high);
  const mean = sumOf(items, meanOf);
  const sums = { low, likely, high, mean };
  const uncertain = items.filter((item) => item.high - item.low > SURE * Math.max(1, high));
  if (uncertain.length === 0) return { ...sums, spread: 0, atConfidence: mean };
  const sure = sumOf(items, (item) => (uncertain.includes(item) ? 0 : meanOf(item)));
  const scores = uncertain.map(betaPertScores);
  const odds = sumOdds(scores, Math.min(correlation, MOST_MIXED));
  const spread = correlation === 0 ? Math.sqrt(sumOf(uncertain, varianceOf)) : Math.sqrt(odds.variance);
  if (correlation > MOST_MIXED || scores.length === 1) {
    return { ...sums, spread, atConfidence: sure + allAt(scores, confidence) };
  }
  const kept = solveBracketed((value) => odds.chance(value - sure) - confidence, low, high, "the odds", 1e-10);
  return { ...sums, spread, atConfidence: kept };
}

/** The cost at the score that as large a share of cases lies below, the same for all items. */
function allAt(scores: readonly Float64Array[], confidence: number): number {
  const score = solveBracketed((z) => normalChance(z) - confidence, -MOST_SCORE, MOST_SCORE, "the odds");
  return sumOf(scores, (item) => atScore(item, score));
}

function requireOrder(item: UncertainCost, name: string): void {
  requireRange(`${name}: low`, item.low, 0, LARGEST_AMOUNT);
  requireRange(`${name}: high`, item.high, 0, LARGEST_AMOUNT);
  if (item.low <= item.likely && item.likely <= item.high) return;
  throw invalid(
    `${name} must run from low to likely to high; got ${plain(item.low)}, ${plain(item.likely)}, ${plain(item.high)}`,
  );
}

function sumOf<T>(values: readonly T[], of: (value: T) => number): number {
  return values.reduce((sum, value) => sum + of(value), 0);
}
