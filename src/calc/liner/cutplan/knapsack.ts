import type { Work } from "./work";

/** Something that may lie across a roll: what it takes of the width, and what it counts for. */
export interface Candidate {
  readonly size: number;
  readonly value: number;
  /** Which of the things it is; a thing may be a candidate in several ways. */
  readonly thing: number;
  /** What it takes the other way. */
  readonly along: number;
}

/** The best choice found, and a value that no choice passes: its own, if the work sufficed. */
export interface Choice {
  readonly chosen: readonly Candidate[];
  readonly value: number;
  readonly atMost: number;
}

/** Steps of one choice before it is left at what is known. */
const MOST_STEPS = 20_000;

/**
 * The most valuable candidates abreast within a room, each thing at most as often as there is of it: depth first, the
 * best value for size before the others, as long as filling the rest of the room to the brim could do better.
 */
export function choose(candidates: readonly Candidate[], counts: readonly number[], room: number, work: Work): Choice {
  const order = candidates.filter(({ size, value }) => size <= room && value > 0);
  order.sort((a, b) => b.value * a.size - a.value * b.size || a.thing - b.thing || a.size - b.size);
  const left = counts.slice();
  const taken: Candidate[] = [];
  let best: readonly Candidate[] = [];
  let most = 0;
  let steps = 0;

  /** What the room could hold if the last to go in could be cut. */
  const upTo = (from: number, space: number): number => {
    let value = 0;
    for (let i = from; i < order.length; i++) {
      const { size, value: own, thing } = order[i] as Candidate;
      const count = left[thing] as number;
      if (count === 0) continue;
      if (count * size >= space) return value + (own * space) / size;
      value += count * own;
      space -= count * size;
    }
    return value;
  };
  const descend = (from: number, space: number, value: number): void => {
    if (value > most) {
      most = value;
      best = taken.slice();
    }
    for (let i = from; i < order.length && steps < MOST_STEPS; i++) {
      const candidate = order[i] as Candidate;
      const { size, thing } = candidate;
      if (left[thing] === 0 || size > space) continue;
      steps++;
      if (value + upTo(i, space) <= most * (1 + 1e-12)) return;
      left[thing] = (left[thing] as number) - 1;
      taken.push(candidate);
      descend(i, space - size, value + candidate.value);
      taken.pop();
      left[thing] = (left[thing] as number) + 1;
    }
  };
  const brim = upTo(0, room);
  descend(0, room, 0);
  work.done += 10 * steps + 10 * order.length;
  return { chosen: best, value: most, atMost: steps < MOST_STEPS ? most * (1 + 1e-12) : brim };
}
