import { gather } from "./gather";
import { type Blank, type Group, MOST_BOXES, pieceGroup } from "./group";
import { costOf, FEW, improve } from "./improve";
import { cheapestOf } from "./program";
import { type Offer, SAME } from "./purchase";
import { repeatableRandom } from "./random";
import { Work } from "./work";

/** How far a search goes, and where it begins. */
export interface Effort {
  /** See Work. */
  readonly work: number;
  /** 0 in a cell; each other number searches elsewhere. */
  readonly seed: number;
}

/** What a cell may spend: a quarter of a second on a machine of 2020, so that one half as fast stays within 0.6 s. */
export const USUAL_EFFORT: Effort = { work: 6_000_000, seed: 0 };

/** Share of the work that gathers; the rest improves. */
const GATHERING = 0.6;
/** Groups at which a gathering ends: as many as the program puts together at once in no time. */
const GATHERED = 6;
/** What edges that meet are worth, gathering by gathering; by trial on strips cut from edge to edge. */
const EDGES = [1, 2, 3, 0, 1.5, 0.5];
/** Gatherings that the work suffices for at least, and states that one follows at most. */
const GATHERINGS = 6;
const MOST_STATES = 50;
/** Share of the area left to chance once each of these was tried. */
const SHAKE = 0.002;

/**
 * A good plan for more pieces than can be looked at set by set. The pieces are gathered into few groups that leave
 * little empty (see gather), again and again in other ways, and the dynamic program puts these together; then a few
 * lengths of the best plan are taken apart, again and again, to put what comes of them together at the least cost (see
 * improve). The same pieces and rolls give the same plan on every machine: effort is counted in work, not in time.
 *
 * @param goal stops early when a plan costs no more than this
 * @param kept a plan to begin from
 */
export function searchPlan(
  pieces: readonly Blank[],
  offers: readonly Offer[],
  turn: boolean,
  goal: number,
  effort: Effort = USUAL_EFFORT,
  kept?: readonly Group[],
): readonly Group[] {
  const alone = pieces.map((piece, index) => pieceGroup(piece, index, turn));
  const enough = goal * (1 + SAME);
  let best: readonly Group[] = alone;
  let least = costOf(alone, offers);
  const take = (plan: readonly Group[] | undefined): void => {
    const cost = plan ? costOf(plan, offers) : Infinity;
    if (!plan || cost >= least * (1 - SAME)) return;
    least = cost;
    best = plan;
  };
  take(kept);

  const gathering = new Work(GATHERING * effort.work);
  const states = Math.floor(gathering.most / (GATHERINGS * 3 * pieces.length ** 2));
  const beam = Math.max(1, Math.min(MOST_STATES, states));
  for (let turnOf = 0; !gathering.isSpent && least > enough; turnOf++) {
    const edge = EDGES[turnOf % EDGES.length] as number;
    const shake = effort.seed === 0 && turnOf < EDGES.length ? 0 : SHAKE;
    const seed = turnOf + 1000 * effort.seed;
    for (const groups of gather(alone, offers, turn, GATHERED, { beam, edge, shake, seed }, gathering)) {
      const kinds = groups.map((group) => ({ members: [group] }));
      take(groups.length > FEW ? groups : cheapestOf(kinds, offers, least, gathering, MOST_BOXES));
    }
  }
  const work = new Work(effort.work - gathering.done);
  const random = repeatableRandom(effort.seed + 1);
  while (!work.isSpent && least > enough) {
    const next = improve(best, offers, random, work);
    // Plans of the same cost are gone through, so that the next step begins elsewhere.
    if (costOf(next, offers) <= least * (1 + SAME)) best = next;
    least = Math.min(least, costOf(best, offers));
    // A step that finds nothing to put together does no work.
    work.done += 20 * best.length;
  }
  return best;
}
