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

/** A place where the whole is looked at, all facts moved at once. */
export interface Look {
  /** Of each fact. */
  readonly places: readonly number[];
  /** What the price changes by; undefined where there is none. */
  readonly whole: number | undefined;
  /** Measures of the design that its pump is chosen by: the price takes steps in them. */
  readonly measures?: readonly number[] | undefined;
}

/** Draws of all facts: where each lies, what it does there, and what all do together. */
export interface Draws {
  readonly places: readonly Float64Array[];
  readonly parts: readonly Float64Array[];
  readonly sums: Float64Array;
}

/** A quarter of the normal curve lies beyond. */
const QUARTER = 0.6744897501960817;

/** How far from the middle of the normal curve a draw lies on average. */
export const MEAN_DISTANCE = 0.8;

/**
 * Draws that are the same every time and belong to the facts by name: a fact that becomes known leaves, and the others draw
 * as before.
 */
export function drawsOf(effects: readonly Effect[], count = DRAWS): Draws {
  return drawsAt(
    effects,
    effects.map((effect) => placesOf(effect, count)),
    count,
  );
}

/** What facts do at given places: of each fact one for each draw. */
export function drawsAt(effects: readonly Effect[], places: readonly Float64Array[], count: number): Draws {
  const parts = effects.map((effect, index) => {
    const does = aloneOf(effect);
    return Float64Array.from(places[index] ?? [], (place) => does(place));
  });
  const sums = new Float64Array(count);
  for (const part of parts) for (let draw = 0; draw < count; draw++) sums[draw] = (sums[draw] ?? 0) + (part[draw] ?? 0);
  return { places, parts, sums };
}

/** Places of all facts in some draws, or in all. */
export function placesIn({ places, sums }: Draws, chosen?: readonly number[]): number[][] {
  const which = chosen ?? Array.from(sums, (_, draw) => draw);
  return which.map((draw) => places.map((place) => place[draw] ?? 0));
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

export function covariance(a: Float64Array, b: Float64Array): number {
  let [sumA, sumB, both] = [0, 0, 0];
  for (let draw = 0; draw < a.length; draw++) {
    const [x, y] = [a[draw] ?? 0, b[draw] ?? 0];
    sumA += x;
    sumB += y;
    both += x * y;
  }
  return both / a.length - (sumA / a.length) * (sumB / a.length);
}

/** The changes that one draw in ten lies below and above. */
export function endsOf(changes: Float64Array): { readonly low: number; readonly high: number } {
  const sorted = Float64Array.from(changes).sort();
  return { low: quantile(sorted, 0.1), high: quantile(sorted, 0.9) };
}

/** The number below which a share of sorted ones lies. */
export function quantile(sorted: Float64Array, share: number): number {
  const at = share * sorted.length - 0.5;
  const below = Math.max(0, Math.floor(at));
  const [from, to] = [sorted[below] ?? 0, sorted[Math.min(sorted.length - 1, below + 1)] ?? 0];
  return from + (to - from) * (at - below);
}
