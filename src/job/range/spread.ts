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
 * The range that four draws in five keep to, from what each fact does alone and what the weightiest do together.
 *
 * The draws are the same every time and belong to the facts by name: a fact that becomes known leaves, and the others draw
 * as before.
 */
export function spreadOf(effects: readonly Effect[], joints: readonly Joint[]): Spread {
  if (effects.length === 0) return { low: 0, high: 0, shares: new Map() };
  const places = new Map(effects.map((effect) => [effect.name, placesOf(effect)]));
  const parts = new Map(effects.map((effect) => [effect.name, new Float64Array(DRAWS)]));
  for (const effect of effects) addAlone(effect, places.get(effect.name), parts.get(effect.name));
  const jumps = new Map(effects.map((effect) => [effect.name, effect.jumps]));
  for (const { a, b, corners } of joints) {
    const [atA, atB, ofA, ofB] = [places.get(a), places.get(b), parts.get(a), parts.get(b)];
    if (!atA || !atB || !ofA || !ofB) continue;
    for (let draw = 0; draw < DRAWS; draw++) {
      const [x, y] = [atA[draw] ?? 0, atB[draw] ?? 0];
      const corner = corners[(x < 0 ? 0 : 2) + (y < 0 ? 0 : 1)] ?? 0;
      // Half of what two do together is counted to each.
      const half = (corner * reach(x, jumps.get(a)) * reach(y, jumps.get(b))) / 2;
      ofA[draw] = (ofA[draw] ?? 0) + half;
      ofB[draw] = (ofB[draw] ?? 0) + half;
    }
  }
  const sums = new Float64Array(DRAWS);
  for (const part of parts.values())
    for (let draw = 0; draw < DRAWS; draw++) sums[draw] = (sums[draw] ?? 0) + (part[draw] ?? 0);
  const variance = covariance(sums, sums);
  const shares = new Map(
    [...parts].map(([name, part]) => [name, variance > 0 ? covariance(part, sums) / variance : 0] as const),
  );
  const sorted = Float64Array.from(sums).sort();
  return { low: quantile(sorted, 0.1), high: quantile(sorted, 0.9), shares };
}

/** Where on the normal curve a fact lies in each draw. */
export function placesOf({ name, common }: Pick<Effect, "name" | "common">): Float64Array {
  const own = normalsFor(name);
  if (!common) return own;
  const shared = normalsFor(common.name);
  const [most, rest] = [Math.sqrt(common.share), Math.sqrt(1 - common.share)];
  return own.map((place, draw) => most * (shared[draw] ?? 0) + rest * place);
}

function addAlone(effect: Effect, places: Float64Array | undefined, part: Float64Array | undefined): void {
  if (!places || !part) return;
  for (let draw = 0; draw < DRAWS; draw++) part[draw] = alone(effect, places[draw] ?? 0);
}

/** What a fact does alone at a place of the curve: between the points in proportion, past the last as before it. */
export function alone({ points, jumps }: Effect, place: number): number {
  if (jumps) {
    const side = place < 0 ? points[0] : points[points.length - 1];
    return Math.abs(place) > QUARTER ? (side?.[1] ?? 0) : 0;
  }
  const side = points.filter(([at]) => (place < 0 ? at < 0 : at > 0));
  const outward = place < 0 ? side.reverse() : side;
  let [from, to]: (readonly [number, number])[] = [[0, 0], outward[0] ?? [TENTH, 0]];
  for (const next of outward.slice(1)) {
    if (Math.abs(to?.[0] ?? 0) >= Math.abs(place)) break;
    [from, to] = [to, next];
  }
  const [[x, y], [toX, toY]] = [from ?? [0, 0], to ?? [TENTH, 0]];
  return y + ((toY - y) * (place - x)) / (toX - x);
}

/** How far out a place lies, in steps of the outer tenth; of what jumps 0 or 1. */
function reach(place: number, jumps: boolean | undefined): number {
  return jumps ? Number(Math.abs(place) > QUARTER) : Math.abs(place) / TENTH;
}

function covariance(a: Float64Array, b: Float64Array): number {
  let [sumA, sumB, both] = [0, 0, 0];
  for (let draw = 0; draw < DRAWS; draw++) {
    const [x, y] = [a[draw] ?? 0, b[draw] ?? 0];
    sumA += x;
    sumB += y;
    both += x * y;
  }
  return both / DRAWS - (sumA / DRAWS) * (sumB / DRAWS);
}

function quantile(sorted: Float64Array, share: number): number {
  const at = share * sorted.length - 0.5;
  const below = Math.max(0, Math.floor(at));
  const [from, to] = [sorted[below] ?? 0, sorted[Math.min(sorted.length - 1, below + 1)] ?? 0];
  return from + (to - from) * (at - below);
}
