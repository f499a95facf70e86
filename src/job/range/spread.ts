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

/** What two facts do together beyond what each does alone: at both low, low and high, high and low, both high. */
export interface Joint {
  readonly a: string;
  readonly b: string;
  readonly corners: readonly [number, number, number, number];
}

/** How the price spreads around the likely one. */
export interface Spread {
  /** Changes of the price that one draw in ten lies below and above. */
  readonly low: number;
  readonly high: number;
  /** Share of the spread that each fact carries; together 1. */
  readonly shares: ReadonlyMap<string, number>;
}

/** A quarter of the normal curve lies beyond. */
const QUARTER = 0.6744897501960817;

/**
 * The range that four draws in five keep to, from what each fact does alone, what the weightiest do together, and how far
 * that was off where the whole was looked at.
 *
 * The draws are the same every time and belong to the facts by name: a fact that becomes known leaves, and the others draw
 * as before.
 *
 * @param off what the price came to beyond the sum of effects at some places, one of which is dealt to each draw
 */
export function spreadOf(effects: readonly Effect[], joints: readonly Joint[], off: readonly number[] = []): Spread {
  if (effects.length === 0) return { low: 0, high: 0, shares: new Map() };
  const places = effects.map((effect) => placesOf(effect));
  const parts = partsAt(effects, joints, places);
  const sums = new Float64Array(places[0]?.length ?? 0);
  for (const part of parts)
    for (let draw = 0; draw < sums.length; draw++) sums[draw] = (sums[draw] ?? 0) + (part[draw] ?? 0);
  const variance = covariance(sums, sums);
  const shares = new Map(
    effects.map(({ name }, index) => {
      const part = parts[index] ?? sums;
      return [name, variance > 0 ? covariance(part, sums) / variance : 0] as const;
    }),
  );
  if (off.length > 0)
    for (let draw = 0; draw < sums.length; draw++) sums[draw] = (sums[draw] ?? 0) + (off[draw % off.length] ?? 0);
  const sorted = Float64Array.from(sums).sort();
  return { low: quantile(sorted, 0.1), high: quantile(sorted, 0.9), shares };
}

/** What each fact does in each draw, its half of what it does together with others in it. */
export function partsAt(
  effects: readonly Effect[],
  joints: readonly Joint[],
  places: readonly Float64Array[],
): Float64Array[] {
  const parts = effects.map((effect, index) => {
    const does = aloneOf(effect);
    return Float64Array.from(places[index] ?? [], (place) => does(place));
  });
  const indexOf = new Map(effects.map(({ name }, index) => [name, index]));
  for (const { a, b, corners } of joints) {
    const [first, second] = [indexOf.get(a) ?? -1, indexOf.get(b) ?? -1];
    const [atA, atB, ofA, ofB] = [places[first], places[second], parts[first], parts[second]];
    if (!atA || !atB || !ofA || !ofB) continue;
    const [jumpsA, jumpsB] = [effects[first]?.jumps, effects[second]?.jumps];
    for (let draw = 0; draw < ofA.length; draw++) {
      const [x, y] = [atA[draw] ?? 0, atB[draw] ?? 0];
      const corner = corners[(x < 0 ? 0 : 2) + (y < 0 ? 0 : 1)] ?? 0;
      const half = (corner * reach(x, jumpsA) * reach(y, jumpsB)) / 2;
      ofA[draw] = (ofA[draw] ?? 0) + half;
      ofB[draw] = (ofB[draw] ?? 0) + half;
    }
  }
  return parts;
}

/** Where on the normal curve a fact lies in each draw. */
export function placesOf({ name, common }: Pick<Effect, "name" | "common">, count = DRAWS): Float64Array {
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

/** How far out a place lies, in steps of the outer tenth; of what jumps 0 or 1. */
function reach(place: number, jumps: boolean | undefined): number {
  return jumps ? Number(Math.abs(place) > QUARTER) : Math.abs(place) / TENTH;
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
