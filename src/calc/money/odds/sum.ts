import { addedUp, chanceBelow, convolve, layOnGrid, type Grid } from "./grid";
import { atScore, MOST_SCORE, normalDensity, SCORE_STEP } from "./scores";

/** Steps of the grid in one spread of the sum: the share kept is then right to a thousandth. */
const STEPS_PER_SPREAD = 20;
/** Widest step between the scores that stand for an item. */
const WIDEST_SCORE = 0.2;
/** Common scores at which the sum is worked out, those at which its mean is, and those that are weighed. */
const SUM_STEP = 1;
const MEAN_STEP = 0.25;
const WEIGHED_STEP = 1 / 96;
const MOST_COMMON = 5;

/** How a sum of items is distributed. */
export interface SumOdds {
  readonly variance: number;
  /** The chance that the sum stays at or below a value. */
  chance(value: number): number;
}

/**
 * The distribution of a sum of items that share one cause, by convolution.
 *
 * Each item's normal score is √ρ × common + √(1 - ρ) × own. For a given common score the items are independent and
 * their distributions are convolved on a grid. All chances are weighed with the normal density of the common score.
 *
 * @param items cost by normal score, one table per item
 * @param correlation ρ of the scores, 0 to less than 1
 * Source: convolution of independent sums and one-factor normal scores, any text on probability; one common cause for
 *         all items: common practice, no source
 */
export function sumOdds(items: readonly Float64Array[], correlation: number): SumOdds {
  const [common, own] = [Math.sqrt(correlation), Math.sqrt(1 - correlation)];
  const scores = correlation > 0 ? evenly(MOST_COMMON, MEAN_STEP) : Float64Array.of(0);
  const weights = normalWeights(scores);
  const moments = [...scores].map((score) => momentsOf(items, common * score, own));
  const mean = weigh(moments, weights, (each) => each.mean);
  const within = weigh(moments, weights, (each) => each.variance);
  const variance = within + weigh(moments, weights, (each) => (each.mean - mean) ** 2);
  const step = Math.sqrt(within) / STEPS_PER_SPREAD;
  if (correlation === 0) {
    const sum = sumAt(items, step, 0, 1);
    return { variance, chance: (value) => chanceBelow(sum, step, value) };
  }
  const means = moments.map((each) => each.mean);
  const sums = [...evenly(MOST_COMMON, SUM_STEP)].map((score) => sumAt(items, step, common * score, own));
  return { variance, chance: weighed(sums, means, step) };
}

/** Chances of the sum for one common score, added up. */
function sumAt(items: readonly Float64Array[], step: number, shift: number, own: number): Grid {
  let sum: Grid = { from: 0, masses: Float64Array.of(1) };
  for (const item of items) {
    const apart = Math.min(WIDEST_SCORE, step / (own * steepest(item)));
    const scores = evenly(MOST_SCORE, apart);
    const values = scores.map((score) => atScore(item, shift + own * score));
    sum = convolve(sum, layOnGrid(values, normalWeights(scores), step));
  }
  return addedUp(sum);
}

/**
 * Weighs the chances for all common scores. Between two scores whose sums are worked out, both are moved to the mean
 * there and mixed.
 */
function weighed(sums: readonly Grid[], means: readonly number[], step: number): (value: number) => number {
  const scores = evenly(MOST_COMMON, WEIGHED_STEP);
  const weights = normalWeights(scores);
  const perSum = SUM_STEP / MEAN_STEP;
  const parts = [...scores].map((score, index) => {
    const place = (score + MOST_COMMON) / SUM_STEP;
    const left = Math.min(sums.length - 2, Math.floor(place));
    const mean = betweenMeans(means, (score + MOST_COMMON) / MEAN_STEP);
    const off = [left, left + 1].map((at) => mean - (means[at * perSum] ?? 0)) as [number, number];
    return { left, off, share: place - left, weight: weights[index] ?? 0 };
  });
  return (value) => {
    let chance = 0;
    for (const { left, off, share, weight } of parts) {
      const [before, after] = [sums[left], sums[left + 1]];
      if (!before || !after) continue;
      chance += weight * (1 - share) * chanceBelow(before, step, value - off[0]);
      chance += weight * share * chanceBelow(after, step, value - off[1]);
    }
    return chance;
  };
}

/** The mean between those worked out, along a parabola through the nearest three. */
function betweenMeans(means: readonly number[], place: number): number {
  const middle = Math.min(means.length - 2, Math.max(1, Math.round(place)));
  const [before = 0, here = 0, after = 0] = means.slice(middle - 1, middle + 2);
  const x = place - middle;
  return here + (x * (after - before)) / 2 + (x * x * (after - 2 * here + before)) / 2;
}

/** Mean and variance of the sum where every item's score is `shift` and a share of its own. */
function momentsOf(items: readonly Float64Array[], shift: number, own: number): { mean: number; variance: number } {
  let mean = 0;
  let variance = 0;
  for (const item of items) {
    let [first, second] = [0, 0];
    // Around a value of the item, so that the squares do not cancel.
    const centre = atScore(item, shift);
    MOMENT_SCORES.forEach((score, index) => {
      const off = atScore(item, shift + own * score) - centre;
      const weight = MOMENT_WEIGHTS[index] ?? 0;
      first += weight * off;
      second += weight * off * off;
    });
    mean += centre + first;
    variance += Math.max(0, second - first * first);
  }
  return { mean, variance };
}

/** Scores from -most to most, at most `apart` from each other, 0 among them. */
function evenly(most: number, apart: number): Float64Array {
  const half = Math.ceil(most / apart);
  return Float64Array.from({ length: 2 * half + 1 }, (_, index) => ((index - half) * most) / half);
}

/** Normal densities that add up to 1: evenly spaced, they integrate a normal weight almost exactly. */
function normalWeights(scores: Float64Array): Float64Array {
  const densities = scores.map(normalDensity);
  const all = densities.reduce((sum, each) => sum + each, 0);
  return densities.map((each) => each / all);
}

const MOMENT_SCORES = evenly(MOST_SCORE, WIDEST_SCORE);
const MOMENT_WEIGHTS = normalWeights(MOMENT_SCORES);

/** The most an item rises for one score. */
function steepest(item: Float64Array): number {
  let most = Number.MIN_VALUE;
  for (let index = 1; index < item.length; index++) most = Math.max(most, (item[index] ?? 0) - (item[index - 1] ?? 0));
  return most / SCORE_STEP;
}

function weigh<T>(values: readonly T[], weights: Float64Array, of: (value: T) => number): number {
  return values.reduce((sum, value, index) => sum + (weights[index] ?? 0) * of(value), 0);
}
