import { TENTH } from "../draft/guess";
import { DRAWS, normalsFor } from "./normals";

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

/** How many places the whole is looked at, all facts moved at once: what a cell has time for. */
const LOOKS = 80;
/** Looks on either side, by rank, whose misses a draw may get. */
const NEAR = 5;

/** A quarter of the normal curve lies beyond. */
const QUARTER = 0.6744897501960817;

/**
 * The range that four draws in five keep to, from what each fact does alone, and how far that is off where the whole was
 * looked at.
 *
 * The draws are the same every time and belong to the facts by name: a fact that becomes known leaves, and the others draw
 * as before.
 *
 * @param wholes what the whole does at each of the places to look at; undefined where it cannot be told
 */
export function spreadOf(effects: readonly Effect[], wholes: readonly (number | undefined)[] = []): Spread {
  if (effects.length === 0) return { low: 0, high: 0, shares: new Map() };
  const parts = partsAt(effects, DRAWS);
  const sums = sumOf(parts);
  const variance = covariance(sums, sums);
  const shares = new Map(
    effects.map(({ name }, index) => {
      const part = parts[index] ?? sums;
      return [name, variance > 0 ? covariance(part, sums) / variance : 0] as const;
    }),
  );
  const looks = looksOf(sumOf(partsAt(effects, LOOKS)), wholes);
  if (looks.length > 0) correct(sums, looks);
  const sorted = Float64Array.from(sums).sort();
  return { low: quantile(sorted, 0.1), high: quantile(sorted, 0.9), shares };
}

/**
 * Where to look at the whole: at so many draws of all facts, one from each of as many slices of every fact's curve. Facts
 * that leave change no other's draws.
 *
 * @returns of each look the places of the facts
 */
export function placesToLook(effects: readonly Effect[]): number[][] {
  const places = effects.map((effect) => placesOf(effect, LOOKS));
  return Array.from({ length: LOOKS }, (_, look) => places.map((place) => place[look] ?? 0));
}

/** A place where the price itself was looked at: the sum of effects, and what the price comes to beyond it. */
interface Look {
  readonly sum: number;
  readonly miss: number;
}

/** Looks, the lowest sum first; those that came to nothing are left out. */
function looksOf(sums: Float64Array, wholes: readonly (number | undefined)[]): Look[] {
  const looks = wholes.flatMap((whole, look) => {
    const sum = sums[look] ?? 0;
    return whole === undefined ? [] : [{ sum, miss: whole - sum }];
  });
  return looks.sort((a, b) => a.sum - b.sum);
}

/**
 * Corrects the sums of effects by how far they are off where the price itself was looked at: by the straight line through
 * the misses, because facts that move a price a lot mostly move it by less together than one by one, or by more; and by
 * what the misses of like rank leave around that line.
 */
function correct(sums: Float64Array, looks: readonly Look[]): void {
  const line = lineThrough(looks);
  const left = looks.map(({ sum, miss }) => miss - line(sum));
  const order = Uint32Array.from(sums, (_, draw) => draw).sort((a, b) => (sums[a] ?? 0) - (sums[b] ?? 0));
  order.forEach((draw, rank) => {
    const sum = sums[draw] ?? 0;
    const near = Math.floor((rank * looks.length) / sums.length) + (draw % (2 * NEAR + 1)) - NEAR;
    sums[draw] = sum + line(sum) + (left[Math.min(looks.length - 1, Math.max(0, near))] ?? 0);
  });
}

/** The straight line of least squares; level where all sums are alike. */
function lineThrough(looks: readonly Look[]): (sum: number) => number {
  const mean = looks.reduce((all, { sum }) => all + sum, 0) / looks.length;
  const level = looks.reduce((all, { miss }) => all + miss, 0) / looks.length;
  const square = looks.reduce((all, { sum }) => all + (sum - mean) ** 2, 0);
  const slope = square > 0 ? looks.reduce((all, { sum, miss }) => all + (sum - mean) * (miss - level), 0) / square : 0;
  return (sum) => level + slope * (sum - mean);
}

/** What each fact does in each draw. */
function partsAt(effects: readonly Effect[], count: number): Float64Array[] {
  return effects.map((effect) => {
    const does = aloneOf(effect);
    return placesOf(effect, count).map((place) => does(place));
  });
}

function sumOf(parts: readonly Float64Array[]): Float64Array {
  const sums = new Float64Array(parts[0]?.length ?? 0);
  for (const part of parts)
    for (let draw = 0; draw < sums.length; draw++) sums[draw] = (sums[draw] ?? 0) + (part[draw] ?? 0);
  return sums;
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
