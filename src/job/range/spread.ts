import { TENTH } from "../draft/guess";
import { DRAWS, normalsFor } from "./normals";
import { fitPlane } from "./surface";

/** What a fact in doubt does to the price, all others being as likely. */
export interface Effect {
  readonly name: string;
  /** Changes of the price at places of the normal curve, the lowest first, the middle left out. */
  readonly points: readonly (readonly [place: number, change: number])[];
  /** It jumps at the outer quarters and does not run. */
  readonly jumps: boolean;
  /** What it has in common with others. */
  readonly common?: { readonly name: string; readonly share: number } | undefined;
}

/** How the price spreads around the likely one. */
export interface Spread {
  /** Changes of the price that one draw in ten lies below and above. */
  readonly low: number;
  readonly high: number;
  /** Share of the spread that each fact carries; together 1. */
  readonly shares: ReadonlyMap<string, number>;
}

/** A place where the whole is looked at, all facts moved at once. */
export interface Look {
  /** Of each fact. */
  readonly places: readonly number[];
  /** What the price changes by; undefined where there is none. */
  readonly whole: number | undefined;
}

/** How many places the whole is looked at: spread over everything, then near the ends of the range. */
const LOOKS = { spread: 60, near: 60 } as const;
/** Draws among which places near the ends are chosen. */
const CHOICE = 2000;
/** Looks at either side of a draw, by what it comes to, whose misses it may get: one in so many of all. */
const NEAR = 12;
const LEAST_NEAR = 3;

/** A quarter of the normal curve lies beyond. */
const QUARTER = 0.6744897501960817;

/**
 * The range that four draws in five keep to, from what each fact does alone, and how far that is off where the whole was
 * looked at.
 *
 * The draws are the same every time and belong to the facts by name: a fact that becomes known leaves, and the others draw
 * as before.
 */
export function spreadOf(effects: readonly Effect[], looks: readonly Look[] = []): Spread {
  if (effects.length === 0) return { low: 0, high: 0, shares: new Map() };
  const draws = drawsOf(effects, DRAWS);
  const { parts, sums } = draws;
  const variance = covariance(sums, sums);
  const shares = new Map(
    effects.map(({ name }, index) => {
      const part = parts[index] ?? sums;
      return [name, variance > 0 ? covariance(part, sums) / variance : 0] as const;
    }),
  );
  return { ...endsOf(correctedBy(effects, looks, draws)?.drawn ?? sums), shares };
}

/**
 * Where to look at the whole first: at so many draws of all facts, one from each of as many slices of every fact's curve.
 * Facts that leave change no other's draws.
 *
 * @returns of each look the places of the facts
 */
export function placesToLook(effects: readonly Effect[]): number[][] {
  return placesIn(drawsOf(effects, LOOKS.spread), undefined);
}

/**
 * Where to look next: where draws may lie on either side of an end of the range, as far as the first looks tell. A draw far
 * from both tells nothing of where they are (allocation after J. Neyman, Journal of the Royal Statistical Society 97, 1934).
 */
export function placesNearEnds(effects: readonly Effect[], looks: readonly Look[]): number[][] {
  const draws = drawsOf(effects, CHOICE);
  const corrected = correctedBy(effects, looks, draws);
  if (!corrected) return [];
  const { told, drawn, noise } = corrected;
  const { low, high } = endsOf(drawn);
  const order = Uint32Array.from(told, (_, draw) => draw).sort((a, b) => (told[a] ?? 0) - (told[b] ?? 0));
  // The standard deviation of which side a draw lies on, the misses taken as logistic.
  const doubt = (end: number, value: number): number => 1 / Math.cosh((0.85 * (end - value)) / (noise || 1));
  const weights = Array.from(order, (draw) => {
    const value = told[draw] ?? 0;
    return Math.max(LEAST_DOUBT, doubt(low, value), doubt(high, value));
  });
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const chosen: number[] = [];
  let upTo = 0;
  weights.forEach((weight, rank) => {
    upTo += weight;
    while (chosen.length < LOOKS.near && upTo >= ((chosen.length + 0.5) * all) / LOOKS.near)
      chosen.push(order[rank] ?? 0);
  });
  return placesIn(draws, chosen);
}

/** No draw is looked at less often than this, beside one on the very end. */
const LEAST_DOUBT = 0.1;

/** Draws of all facts: where each lies, what it does there, and what all do together. */
interface Draws {
  readonly places: readonly Float64Array[];
  readonly parts: readonly Float64Array[];
  readonly sums: Float64Array;
}

function drawsOf(effects: readonly Effect[], count: number): Draws {
  const places = effects.map((effect) => placesOf(effect, count));
  return { places, ...partsAt(effects, places, count) };
}

function partsAt(
  effects: readonly Effect[],
  places: readonly ArrayLike<number>[],
  count: number,
): Omit<Draws, "places"> {
  const parts = effects.map((effect, index) => {
    const does = aloneOf(effect);
    return Float64Array.from(places[index] ?? [], (place) => does(place));
  });
  const sums = new Float64Array(count);
  for (const part of parts) for (let draw = 0; draw < count; draw++) sums[draw] = (sums[draw] ?? 0) + (part[draw] ?? 0);
  return { parts, sums };
}

/** Places of all facts in some draws, or in all. */
function placesIn({ places, sums }: Draws, chosen: readonly number[] | undefined): number[][] {
  const which = chosen ?? Array.from(sums, (_, draw) => draw);
  return which.map((draw) => places.map((place) => place[draw] ?? 0));
}

interface Corrected {
  /** What each draw most likely comes to. */
  readonly told: Float64Array;
  /** The same with the misses that remain around that. */
  readonly drawn: Float64Array;
  /** Standard deviation of those misses. */
  readonly noise: number;
}

/**
 * Corrects the sums of effects by how far they are off where the price itself was looked at: by the plane through the misses
 * over what each fact does and where it lies, because together they mostly move a price by less than one by one, or by more;
 * and by what the looks that come to about as much leave around that plane.
 *
 * @returns undefined where there was nothing to look at
 */
function correctedBy(effects: readonly Effect[], looks: readonly Look[], draws: Draws): Corrected | undefined {
  const seen = looks.filter(({ whole }) => whole !== undefined);
  if (seen.length === 0) return undefined;
  const seenPlaces = effects.map((_, fact) => Float64Array.from(seen, ({ places }) => places[fact] ?? 0));
  const at: Draws = { places: seenPlaces, ...partsAt(effects, seenPlaces, seen.length) };
  const unit = Math.sqrt(covariance(draws.sums, draws.sums)) || 1;
  const row = new Float64Array(2 + 3 * effects.length);
  const rowOf = ({ places, parts, sums }: Draws, draw: number): Float64Array => {
    row[0] = 1;
    row[1] = (sums[draw] ?? 0) / unit;
    effects.forEach((_, fact) => {
      const place = places[fact]?.[draw] ?? 0;
      row[2 + 3 * fact] = (parts[fact]?.[draw] ?? 0) / unit;
      row[3 + 3 * fact] = place;
      row[4 + 3 * fact] = Math.abs(place) - MEAN_DISTANCE;
    });
    return row;
  };
  const misses = Float64Array.from(seen, ({ whole = 0 }, look) => whole - (at.sums[look] ?? 0));
  const plane = fitPlane(
    seen.map((_, look) => Float64Array.from(rowOf(at, look))),
    misses,
    [PENALTY.level, PENALTY.sum, ...effects.flatMap(() => [PENALTY.part, PENALTY.place, PENALTY.distance])],
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

/** How little the plane leans on what it is told by, the level and the sum being surest; found by trials on random sites. */
const PENALTY = { level: 1e-6, sum: 0.1, part: 3, place: 4, distance: 8 } as const;
/** How far from the middle of the normal curve a draw lies on average. */
const MEAN_DISTANCE = 0.8;

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

function endsOf(changes: Float64Array): { readonly low: number; readonly high: number } {
  const sorted = Float64Array.from(changes).sort();
  return { low: quantile(sorted, 0.1), high: quantile(sorted, 0.9) };
}

/** Where on the normal curve a fact lies in each draw. */
function placesOf({ name, common }: Pick<Effect, "name" | "common">, count: number): Float64Array {
  const own = normalsFor(name, count);
  if (!common) return own;
  const shared = normalsFor(common.name, count);
  const [most, rest] = [Math.sqrt(common.share), Math.sqrt(1 - common.share)];
  return own.map((place, draw) => most * (shared[draw] ?? 0) + rest * place);
}

/** What a fact does alone at a place of the curve: between the points in proportion, past the last as before it. */
export function aloneOf({ points, jumps }: Effect): (place: number) => number {
  const below: (readonly [number, number])[] = [[0, 0], ...points.filter(([at]) => at < 0).reverse()];
  const above: (readonly [number, number])[] = [[0, 0], ...points.filter(([at]) => at > 0)];
  return (place) => {
    const side = place < 0 ? below : above;
    const outer = side[side.length - 1];
    if (jumps) return Math.abs(place) > QUARTER ? (outer?.[1] ?? 0) : 0;
    let to = 1;
    while (to < side.length - 1 && Math.abs(side[to]?.[0] ?? 0) < Math.abs(place)) to++;
    const [[x, y], [toX, toY]] = [side[to - 1] ?? [0, 0], side[to] ?? [TENTH, 0]];
    return y + ((toY - y) * (place - x)) / (toX - x);
  };
}

function covariance(a: Float64Array, b: Float64Array): number {
  let [sumA, sumB, both] = [0, 0, 0];
  for (let draw = 0; draw < a.length; draw++) {
    const [x, y] = [a[draw] ?? 0, b[draw] ?? 0];
    sumA += x;
    sumB += y;
    both += x * y;
  }
  return both / a.length - (sumA / a.length) * (sumB / a.length);
}

function quantile(sorted: Float64Array, share: number): number {
  const at = share * sorted.length - 0.5;
  const below = Math.max(0, Math.floor(at));
  const [from, to] = [sorted[below] ?? 0, sorted[Math.min(sorted.length - 1, below + 1)] ?? 0];
  return from + (to - from) * (at - below);
}
