import { canProve, mayProve, exactPlan, kindsOf } from "./exact";
import type { Blank, Group } from "./group";
import { costOf } from "./improve";
import { type Offer, SAME } from "./purchase";
import { type Effort, searchPlan } from "./search";
import { Work } from "./work";

/** One group for each length to buy, and whether no plan costs less. */
export interface Found {
  readonly groups: readonly Group[];
  readonly cost: number;
  readonly proven: boolean;
}

/** What a first plan costs, whose price then spares the proof most of its way. */
const GLIMPSE = { work: 100_000, seed: 0 };
/** What may be spent on proving a plan of more pieces than can always be proven; five times as much the next time, and so on. */
const PROOF = 3_000_000;
/** Share of the effort that goes into the first plan where a proof is tried. */
const BEFORE_PROOF = 0.4;

/** The least cost, proven, where the pieces are few; otherwise the best plan that the effort finds. */
export function leastOrBest(
  blanks: readonly Blank[],
  offers: readonly Offer[],
  turn: boolean,
  bound: number,
  effort: Effort,
  kept?: readonly Group[],
): Found {
  const kinds = kindsOf(blanks, turn);
  const few = canProve(kinds);
  const worthTrying = few || mayProve(kinds);
  const first = few ? GLIMPSE : worthTrying ? { ...effort, work: BEFORE_PROOF * effort.work } : effort;
  const groups = searchPlan(blanks, offers, turn, bound, first, kept);
  const cost = costOf(groups, offers);
  // Few pieces go all the way, because of two plans that cost the same the shorter is wanted.
  if (!few && cost <= bound * (1 + SAME)) return { groups, cost, proven: true };
  const least = worthTrying
    ? exactPlan(kinds, offers, cost, new Work(few ? Infinity : PROOF * (1 + 4 * effort.seed)))
    : undefined;
  return least ? { groups: least, cost: costOf(least, offers), proven: true } : { groups, cost, proven: few };
}
