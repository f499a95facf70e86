import { erf } from "./erf";

/** Normal scores from -6 to 6, in steps: what lies beyond is one case in a thousand million. */
export const MOST_SCORE = 6;
export const SCORE_STEP = 0.05;
export const SCORES = 2 * Math.round(MOST_SCORE / SCORE_STEP) + 1;

/** The share of normal values below each score. */
const CHANCES = Float64Array.from({ length: SCORES }, (_, index) => normalChance(index * SCORE_STEP - MOST_SCORE));

/** The share of normal values below z. */
export function normalChance(z: number): number {
  return 0.5 * (1 + erf(z / Math.SQRT2));
}

/** The normal density at z. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** Tabulates, for each score, the value that as large a share of a distribution on 0 to 1 lies below. */
export function quantilesByScore(below: Float64Array, values: Float64Array): Float64Array {
  const quantiles = new Float64Array(SCORES);
  let cell = 1;
  for (let index = 0; index < SCORES; index++) {
    const chance = CHANCES[index] ?? 0;
    while (cell < below.length - 1 && (below[cell] ?? 1) < chance) cell++;
    const [from = 0, to = 1] = below.subarray(cell - 1, cell + 1);
    const [left = 0, right = 1] = values.subarray(cell - 1, cell + 1);
    quantiles[index] =
      to > from ? left + (right - left) * Math.min(1, Math.max(0, (chance - from) / (to - from))) : left;
  }
  return quantiles;
}

/** Reads a table of scores at z, straight between its entries. */
export function atScore(table: Float64Array, z: number): number {
  const place = Math.min(SCORES - 1, Math.max(0, (z + MOST_SCORE) / SCORE_STEP));
  const index = Math.min(SCORES - 2, Math.floor(place));
  const [from = 0, to = 0] = [table[index], table[index + 1]];
  return from + (place - index) * (to - from);
}
