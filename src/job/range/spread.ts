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

/** What the price really comes to when every fact stands at a place, as a change. */
export type Whole = (places: readonly number[]) => number;

/** Places where the whole is looked at, all facts moved at once. */
const LOOKS = 40;
/** Looks on either side, by rank, whose misses a draw may get. */
const NEAR = 3;

/** A quarter of the normal curve lies beyond. */
const QUARTER = 0.6744897501960817;

/**
 * The range that four draws in five keep to, from what each fact does alone, what the weightiest do together, and how far
 * that was off where the whole was looked at.
 *
 * The draws are the same every time and belong to the facts by name: a fact that becomes known leaves, and the others draw
 * as before.
 *
 * @param whole the price itself, asked at as many places as LOOKS
 */
export function spreadOf(effects: readonly Effect[], joints: readonly Joint[], whole?: Whole): Spread {
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
  if (whole && effects.length > 1) correct(sums, looksAt(effects, joints, whole));
  const sorted = Float64Array.from(sums).sort();
  return { low: quantile(sorted, 0.1), high: quantile(sorted, 0.9), shares };
}

/** A place where the price itself was looked at: the sum of effects, and what the price comes to beyond it. */
interface Look {
  readonly sum: number;
  readonly miss: number;
}

/** The whole looked at where few draws of all facts lead, the lowest sum first; facts that leave change no other's draws. */
function looksAt(effects: readonly Effect[], joints: readonly Joint[], whole: Whole): Look[] {
  const places = effects.map((effect) => placesOf(effect, LOOKS));
  const parts = partsAt(effects, joints, places);
  const looks = Array.from({ length: LOOKS }, (_, look): Look => {
    const sum = parts.reduce((all, part) => all + (part[look] ?? 0), 0);
    return { sum, miss: whole(places.map((place) => place[look] ?? 0)) - sum };
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
    const near = Math.floor((rank * LOOKS) / sums.length) + (draw % (2 * NEAR + 1)) - NEAR;
    sums[draw] = sum + line(sum) + (left[Math.min(LOOKS - 1, Math.max(0, near))] ?? 0);
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

/** What each fact does in each draw, its half of what it does together with others in it. */
function partsAt(
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
function placesOf({ name, common }: Pick<Effect, "name" | "common">, count = DRAWS): Float64Array {
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
