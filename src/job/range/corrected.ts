import { covariance, drawsAt, MEAN_DISTANCE, type Draws, type Effect, type Look } from "./draws";
import { stepsOf } from "./steps";
import { fitPlane } from "./surface";

export interface Corrected {
  /** What each draw most likely comes to. */
  readonly told: Float64Array;
  /** The same with the misses that remain around that. */
  readonly drawn: Float64Array;
  /** Standard deviation of those misses. */
  readonly noise: number;
}

/** Looks at either side of a draw, by what it comes to, whose misses it may get: one in so many of all. */
const NEAR = 24;
const LEAST_NEAR = 3;
/** How little the plane leans on what it is told by, the level and the sum being surest; found by trials on random sites. */
const PENALTY = { level: 1e-6, sum: 0.1, part: 3, place: 4, distance: 8, step: 3 } as const;

/**
 * Corrects the sums of effects by how far they are off where the price itself was looked at: by the plane through the misses
 * over what each fact does and where it lies, because together they mostly move a price by less than one by one, or by more,
 * and over steps in what the pump is chosen by; and by what the looks that come to about as much leave around that plane.
 *
 * @returns undefined where there was nothing to look at
 */
export function correctedBy(effects: readonly Effect[], looks: readonly Look[], draws: Draws): Corrected | undefined {
  const seen = looks.filter(({ whole }) => whole !== undefined);
  if (seen.length === 0) return undefined;
  const seenPlaces = effects.map((_, fact) => Float64Array.from(seen, ({ places }) => places[fact] ?? 0));
  const at = drawsAt(effects, seenPlaces, seen.length);
  const unit = Math.sqrt(covariance(draws.sums, draws.sums)) || 1;
  const steps = stepsOf(seen);
  const first = 2 + 3 * effects.length;
  const row = new Float64Array(first + steps.columns);
  const rowOf = ({ places, parts, sums }: Draws, draw: number): Float64Array => {
    row[0] = 1;
    row[1] = (sums[draw] ?? 0) / unit;
    effects.forEach((_, fact) => {
      const place = places[fact]?.[draw] ?? 0;
      row[2 + 3 * fact] = (parts[fact]?.[draw] ?? 0) / unit;
      row[3 + 3 * fact] = place;
      row[4 + 3 * fact] = Math.abs(place) - MEAN_DISTANCE;
    });
    steps.write((fact) => places[fact]?.[draw] ?? 0, row, first);
    return row;
  };
  const misses = Float64Array.from(seen, ({ whole = 0 }, look) => whole - (at.sums[look] ?? 0));
  const plane = fitPlane(
    seen.map((_, look) => Float64Array.from(rowOf(at, look))),
    misses,
    [
      PENALTY.level,
      PENALTY.sum,
      ...effects.flatMap(() => [PENALTY.part, PENALTY.place, PENALTY.distance]),
      ...Array<number>(steps.columns).fill(PENALTY.step),
    ],
  );
  const left = seen.map((_, look) => {
    const told = plane.leftOut[look] ?? 0;
    return { told: (at.sums[look] ?? 0) + told, miss: (misses[look] ?? 0) - told };
  });
  left.sort((a, b) => a.told - b.told);
  const near = Math.max(LEAST_NEAR, Math.floor(left.length / NEAR));
  const told = draws.sums.map((sum, draw) => sum + plane.at(rowOf(draws, draw)));
  const drawn = told.map((value, draw) => {
    const one = rankOf(left, value) + (draw % (2 * near)) - near;
    return value + (left[Math.min(left.length - 1, Math.max(0, one))]?.miss ?? 0);
  });
  return { told, drawn, noise: Math.sqrt(left.reduce((sum, { miss }) => sum + miss * miss, 0) / left.length) };
}

/** How many looks come to less. */
function rankOf(looks: readonly { readonly told: number }[], value: number): number {
  let [from, to] = [0, looks.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((looks[middle]?.told ?? 0) < value) from = middle + 1;
    else to = middle;
  }
  return from;
}
