import { Boxes, type Pair } from "./boxes";
import { type Group, largestBox, pairOf } from "./group";
import type { Offer } from "./purchase";
import { repeatableRandom } from "./random";
import type { Work } from "./work";

/** How a gathering is steered. */
export interface Steering {
  /** States followed side by side. */
  readonly beam: number;
  /** What it is worth that edges meet all the way, in hundredths of the side of a square of the whole area. */
  readonly edge: number;
  /** Share of the whole area by which the standing of a pair is left to chance. */
  readonly shake: number;
  readonly seed: number;
}

/** Pieces partly gathered: the boxes there are, the pairs that may come next, and what the boxes leave empty. */
interface State {
  readonly boxes: readonly number[];
  readonly pairs: Pair[];
  readonly waste: number;
}

interface Step {
  readonly state: State;
  readonly pair: Pair;
  readonly standing: number;
}

/** Steps tried from each state, and gatherings given back; by trial. */
const STEPS = 10;
const ENDS = 10;
/** With fewer pairs left than this a state looks for them anew. */
const TOO_FEW = 5;

/**
 * Gathers groups two by two into ever larger boxes that a roll holds until only `few` are left, so that little is left
 * empty between them: a beam search over which two come next. Edges that meet over a long way count in favour, because
 * chance makes short edges meet more often than long ones.
 *
 * @returns the gatherings that end best, each as its groups; more than `few` where no two go together any more
 *
 * Source: building boxes two by two with little waste, P. Y. Wang, "Two algorithms for constrained two-dimensional
 * cutting stock problems", Operations Research 31 (1983) 573-586 (from memory).
 */
export function gather(
  groups: readonly Group[],
  offers: readonly Offer[],
  turn: boolean,
  few: number,
  { beam, edge, shake, seed }: Steering,
  work: Work,
): Group[][] {
  const total = groups.reduce((sum, { area }) => sum + area, 0);
  const all = new Boxes(offers, turn, edge * 0.01 * Math.sqrt(total), shake * total, repeatableRandom(seed));
  const boxes = groups.map(({ front }) => all.add(front.across[0] as number, front.along[0] as number));
  let states: readonly State[] = [{ boxes, pairs: pairsOf(boxes, all, work), waste: 0 }];
  for (let left = groups.length; left > few && !work.isSpent; left--) {
    const next = advance(states, all, beam, work);
    if (next.length === 0) break;
    states = next;
  }

  const limit = largestBox(offers);
  const made = groups.slice();
  const groupOf = (box: number): Group => {
    const from = all.parts[box];
    if (!made[box] && from) {
      made[box] = pairOf(groupOf(from[0]), groupOf(from[1]), limit);
      work.done += 2 * (made[box] as Group).front.count;
    }
    return made[box] as Group;
  };
  return states.slice(0, ENDS).map((state) => state.boxes.map(groupOf));
}

/** Every pair of some boxes that is among the best. */
function pairsOf(boxes: readonly number[], all: Boxes, work: Work): Pair[] {
  const pairs: Pair[] = [];
  for (let i = 1; i < boxes.length; i++) {
    for (let j = 0; j < i; j++) all.pairUp(pairs, boxes[i] as number, boxes[j] as number);
  }
  work.done += 2 * boxes.length * boxes.length;
  return pairs;
}

/** The best states that are one step on. */
function advance(states: readonly State[], all: Boxes, beam: number, work: Work): State[] {
  const steps: Step[] = [];
  for (const state of states) {
    const count = Math.min(STEPS, state.pairs.length);
    for (let i = 0; i < count; i++) {
      const pair = state.pairs[i] as Pair;
      steps.push({ state, pair, standing: state.waste + pair.standing });
    }
  }
  steps.sort((a, b) => a.standing - b.standing);
  work.done += 10 * steps.length;
  const seen = new Set<number>();
  const next: State[] = [];
  for (const step of steps) {
    if (next.length >= beam) break;
    const { state, pair } = step;
    const boxes: number[] = [];
    let mark = 0;
    for (const box of state.boxes) {
      if (box === pair.first || box === pair.second) continue;
      boxes.push(box);
      mark = (mark + (all.marks[box] as number)) | 0;
    }
    const box = all.add(pair.across, pair.along, [pair.first, pair.second]);
    mark = (mark + (all.marks[box] as number)) | 0;
    // The same boxes come about by many orders of the same steps.
    if (seen.has(mark)) continue;
    seen.add(mark);
    boxes.push(box);
    next.push({ boxes, pairs: pairsAfter(state, pair, boxes, all, work), waste: state.waste + pair.waste });
  }
  return next;
}

function pairsAfter(state: State, { first, second }: Pair, boxes: readonly number[], all: Boxes, work: Work): Pair[] {
  const pairs: Pair[] = [];
  for (const pair of state.pairs) {
    if (pair.first === first || pair.second === first || pair.first === second || pair.second === second) continue;
    pairs.push(pair);
  }
  if (pairs.length < TOO_FEW && state.pairs.length > TOO_FEW) return pairsOf(boxes, all, work);
  const last = boxes.length - 1;
  for (let i = 0; i < last; i++) all.pairUp(pairs, boxes[last] as number, boxes[i] as number);
  work.done += 4 * boxes.length;
  return pairs;
}
