import { correctedBy } from "./corrected";
import { drawsOf, endsOf, placesIn, type Effect, type Look } from "./draws";

/** How many places the whole is looked at: spread over everything, then near the ends of the range, in so many turns. */
const LOOKS = { spread: 100, near: 80, turns: 2 } as const;
/** Draws among which places near the ends are chosen, others in every turn. */
const CHOICE = 2000;
/** No draw is looked at less often than this, beside one on the very end. */
const LEAST_DOUBT = 0.1;

/** Looks at the whole where it is asked for. */
type LookAt = (places: readonly number[][]) => Generator<undefined, Look[]>;

/** Looks over everything, then near the ends, where the looks before say that they are. */
export function* looksOf(effects: readonly Effect[], lookAt: LookAt): Generator<undefined, Look[]> {
  const looks = yield* lookAt(placesToLook(effects));
  for (let turn = 0; turn < LOOKS.turns; turn++) looks.push(...(yield* lookAt(placesNearEnds(effects, looks, turn))));
  return looks;
}

/**
 * Where to look at the whole first: at so many draws of all facts, one from each of as many slices of every fact's curve.
 * Facts that leave change no other's draws.
 *
 * @returns of each look the places of the facts
 */
export function placesToLook(effects: readonly Effect[]): number[][] {
  return placesIn(drawsOf(effects, LOOKS.spread));
}

/**
 * Where to look next: where draws may lie on either side of an end of the range, as far as the looks before tell. A draw far
 * from both tells nothing of where they are (allocation after J. Neyman, Journal of the Royal Statistical Society 97, 1934).
 */
export function placesNearEnds(effects: readonly Effect[], looks: readonly Look[], turn = 0): number[][] {
  // Another number of draws is another choice of them.
  const draws = drawsOf(effects, CHOICE + turn);
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
