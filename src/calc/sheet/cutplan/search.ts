import { gather } from "./gather";
import { type Blank, type Group, MOST_BOXES, pieceGroup } from "./group";
import { costOf, FEW, improve } from "./improve";
import { cheapestOf } from "./program";
import type { Offer } from "./purchase";
import { repeatableRandom } from "./random";
import { Work } from "./work";

/** How far a search goes. */
export interface Effort {
  /** Work of one round; see Work. */
  readonly work: number;
  /** Rounds, each from the beginning. */
  readonly rounds: number;
}

/** What a cell may spend: a quarter of a second on a machine of 2020, so that one half as fast stays within 0.6 s. */
export const USUAL_EFFORT: Effort = { work: 6_000_000, rounds: 1 };

/** Share of a round that gathers; the rest improves. */
const GATHERING = 0.6;
/** Groups at which a gathering ends: as many as the program puts together at once in no time. */
const GATHERED = 6;
/** What edges that meet are worth, gathering by gathering; by trial on strips cut from edge to edge. */
const EDGES = [1, 2, 3, 0, 1.5, 0.5];
/** Gatherings that a round has work for at least, and states that one follows at most. */
const GATHERINGS = 6;
const MOST_STATES = 50;
/** Share of the area left to chance once each of these was tried. */
const SHAKE = 0.002;

/** Called with every plan that costs less than those before, and with the share of the work that is done. */
export type Report = (share: number, better?: readonly Group[]) => void;

/**
 * A good plan for more pieces than can be looked at set by set. Every round gathers the pieces into few groups that
 * leave little empty (see gather), puts these together by the dynamic program, and then takes a few lengths of the plan
 * apart again and again, to put what comes of them together at the least cost (see improve). The same pieces and rolls
 * give the same plan on every machine: effort is counted in work, not in time.
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
  report: Report = () => undefined,
): readonly Group[] {
  const alone = pieces.map((piece, index) => pieceGroup(piece, index, turn));
  let best: readonly Group[] = alone;
  let least = costOf(alone, offers);
  const enough = goal * (1 + 1e-9);
  const take = (plan: readonly Group[]): number => {
    const cost = costOf(plan, offers);
    if (cost < least * (1 - 1e-9)) {
      least = cost;
      best = plan;
      report(0, plan);
    }
    return cost;
  };
  if (kept) take(kept);

  let seed = 0;
  for (let round = 0; round < effort.rounds && least > enough; round++) {
    const work = new Work(effort.work);
    let own = round === 0 ? best : alone;
    let ownCost = costOf(own, offers);
    const gathering = new Work(GATHERING * effort.work);
    const beam = Math.max(1, Math.min(MOST_STATES, Math.floor(gathering.most / (GATHERINGS * 3 * pieces.length ** 2))));
    while (!gathering.isSpent && least > enough) {
      const steering = {
        beam,
        edge: EDGES[seed % EDGES.length] as number,
        shake: seed < EDGES.length ? 0 : SHAKE,
        seed,
      };
      seed++;
      for (const groups of gather(alone, offers, turn, GATHERED, steering, gathering)) {
        const kinds = groups.map((group) => ({ members: [group] }));
        const together = groups.length > FEW ? groups : cheapestOf(kinds, offers, ownCost, gathering, MOST_BOXES);
        if (!together) continue;
        const cost = take(together);
        if (cost >= ownCost) continue;
        own = together;
        ownCost = cost;
      }
    }
    work.done += gathering.done;
    const random = repeatableRandom(round + 1);
    // A step that finds nothing to put together does no work.
    while (!work.isSpent && least > enough) {
      own = improve(own, offers, random, work);
      take(own);
      work.done += 20 * own.length;
    }
    report((round + 1) / effort.rounds);
  }
  return best;
}
