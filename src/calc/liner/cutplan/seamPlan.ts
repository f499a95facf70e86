import { lanesOf, lotsOf, lowerBound } from "./bound";
import { canProve, exactPlan, isQuick, kindsOf } from "./exact";
import type { Blank, Group } from "./group";
import { costOf } from "./improve";
import { readKept, regroup } from "./kept";
import { type Parting, partingsOf } from "./partings";
import { type Offer, SAME } from "./purchase";
import type { Piece, Roll } from "./request";
import { type Effort, searchPlan } from "./search";
import { fits } from "./seams";
import { toSteps } from "./steps";
import { sharesByWidth } from "./widths";
import { Work } from "./work";

/** A seam's lap, m, and what a metre of it costs. */
export interface Seaming {
  readonly lap: number;
  readonly price: number;
}

/** The best plan with seams: what the pieces became, one group for each length to buy, and how sure it is. */
export interface Seamed {
  readonly pieces: readonly Piece[];
  /** Number of every piece's parting in its list. */
  readonly partings: readonly number[];
  readonly groups: readonly Group[];
  readonly seamLength: number;
  /** Whether no other of the partings costs less. */
  readonly proven: boolean;
  /** Money, seams included, that no plan undercuts, however the pieces are parted. */
  readonly bound: number;
}

/** A parting for every piece, and money that no plan with it undercuts. */
interface Combination {
  readonly partings: readonly Parting[];
  readonly seamLength: number;
  readonly atLeast: number;
}

/** Combinations that are listed and looked at in order; of more, one piece at a time is parted otherwise. */
const MOST_COMBINATIONS = 4000;
/** How many times as much a longer search may spend on choosing the partings. */
const MOST_TIMES = 8;
/** Share of the effort that goes into choosing the partings; the rest into the plan with them. */
const CHOOSING = 0.7;
/** Work for one combination of so many parts that it cannot be proven. */
const GLIMPSE = 150_000;

/**
 * The plan that costs least with its seams, over the ways to part the pieces (see partingsOf): combinations that are
 * sure to cost more than the best so far are passed over, each of the others is planned like any job.
 */
export function planSeams(
  pieces: readonly Piece[],
  rolls: readonly Roll[],
  offers: readonly Offer[],
  turn: boolean,
  { lap, price }: Seaming,
  effort: Effort,
  kept = "",
): Seamed | undefined {
  const partings = pieces.map((piece) => {
    // A strip lies beside one or two other pieces, so of equal ones two stand for all.
    const seen = new Map<string, number>();
    const others = pieces.filter((other) => {
      const size = `${other.length} ${other.width}`;
      const count = other === piece ? 0 : (seen.get(size) ?? 0) + 1;
      if (count > 0) seen.set(size, count);
      return count === 1 || count === 2;
    });
    return partingsOf(piece, rolls, turn, lap, others);
  });
  if (partings.some((ways) => ways.length === 0)) return undefined;
  const work = new Work(CHOOSING * effort.work * Math.min(1 + effort.seed, MOST_TIMES));
  const lanes = lanesOf(offers);
  let best: Seamed | undefined;
  let least = Infinity;
  let all = true;

  const combine = (chosen: readonly Parting[]): Combination => {
    const parts = chosen.flatMap((parting) => parting.parts);
    const seamLength = chosen.reduce((sum, parting) => sum + parting.seamLength, 0);
    work.done += 20 * parts.length;
    const rate = Math.min(...offers.map((offer) => offer.areaRate));
    const area = blanksOf(parts).reduce((sum, { length, width }) => sum + length * width, 0);
    return { partings: chosen, seamLength, atLeast: rate * area + price * seamLength };
  };
  /** Plans a combination if it may cost less than the best. */
  const look = ({ partings: chosen, seamLength, atLeast }: Combination): void => {
    if (atLeast >= least * (1 - SAME)) return;
    if (work.isSpent && best) {
      all = false;
      return;
    }
    const parts = chosen.flatMap((parting) => parting.parts);
    const blanks = blanksOf(parts);
    work.done += 100 * parts.length;
    const most = least - price * seamLength;
    const bound = sharesByWidth(lotsOf(blanks, turn), lanes);
    if (bound >= most * (1 - SAME)) return;
    const kinds = kindsOf(blanks, turn);
    const provable = canProve(kinds);
    let groups: readonly Group[] | undefined;
    let cost = most;
    if (!isQuick(kinds) && (!best || !provable)) {
      groups = searchPlan(blanks, offers, turn, bound, { work: GLIMPSE, seed: 0 });
      work.done += GLIMPSE;
      cost = Math.min(most, costOf(groups, offers));
    }
    if (provable) groups = exactPlan(kinds, offers, cost * (best ? 1 - SAME : 1), work) ?? groups;
    if (!provable || work.isSpent) all = false;
    const total = groups ? costOf(groups, offers) + price * seamLength : Infinity;
    if (!groups || total >= least * (1 - SAME)) return;
    least = total;
    best = { pieces: parts, partings: numbersOf(chosen), groups, seamLength, proven: false, bound: 0 };
  };
  const numbersOf = (chosen: readonly Parting[]): number[] =>
    chosen.map((parting, index) => (partings[index] as Parting[]).indexOf(parting));

  const before = readKept(kept);
  const chosenBefore = partings.flatMap((ways, index) => ways[before?.partings[index] ?? -1] ?? []);
  if (before && chosenBefore.length === pieces.length) {
    const { seamLength } = combine(chosenBefore);
    const parts = chosenBefore.flatMap((parting) => parting.parts);
    const groups = regroup(before.grouping, blanksOf(parts), offers, turn);
    const cost = groups ? costOf(groups, offers) : Infinity;
    if (groups && cost < Infinity) {
      least = cost + price * seamLength;
      best = { pieces: parts, partings: numbersOf(chosenBefore), groups, seamLength, proven: false, bound: 0 };
    }
  }

  const count = partings.reduce((product, ways) => product * ways.length, 1);
  if (count <= MOST_COMBINATIONS) {
    let combinations: Parting[][] = [[]];
    for (const ways of partings) combinations = combinations.flatMap((some) => ways.map((way) => [...some, way]));
    combinations
      .map(combine)
      .sort((a, b) => a.atLeast - b.atLeast || a.seamLength - b.seamLength)
      .forEach(look);
  } else {
    all = false;
    let current = partings.map((ways) => ways[0] as Parting);
    look(combine(current));
    for (let changed = true; changed && !work.isSpent;) {
      changed = false;
      partings.forEach((ways, index) => {
        for (const way of ways) {
          const before = least;
          const next = current.map((parting, at) => (at === index ? way : parting));
          look(combine(next));
          if (least >= before) continue;
          current = next;
          changed = true;
        }
      });
    }
  }
  if (!best) return undefined;
  const proven = all;
  if (!proven) {
    // The partings are settled; what is left of the effort goes into the plan with them.
    const blanks = blanksOf(best.pieces);
    const rest = { ...effort, work: (1 - CHOOSING) * effort.work };
    const groups = searchPlan(blanks, offers, turn, 0, rest, best.groups);
    best = { ...best, groups };
  }
  return { ...best, proven, bound: boundWithSeams(pieces, rolls, offers, turn, { lap, price }) };
}

function blanksOf(pieces: readonly Piece[]): Blank[] {
  return pieces.map(({ length, width }) => ({ length: toSteps(length), width: toSteps(width) }));
}

/**
 * Money that no plan undercuts, however pieces are parted: the area of all pieces, and of the lap of a seam along the
 * shorter side of every piece that fits no roll; or the bound of the pieces that every roll holds; and those seams.
 */
function boundWithSeams(
  pieces: readonly Piece[],
  rolls: readonly Roll[],
  offers: readonly Offer[],
  turn: boolean,
  { lap, price }: Seaming,
): number {
  const rate = Math.min(...offers.map((offer) => offer.areaRate));
  const parted = pieces.filter((piece) => !rolls.some((roll) => fits(piece, roll, turn)));
  const seam = parted.reduce((sum, { length, width }) => sum + Math.min(length, width), 0);
  const own = blanksOf(pieces).reduce((sum, { length, width }) => sum + length * width, 0);
  const area = rate * (own + toSteps(seam) * toSteps(lap));
  const whole = blanksOf(pieces.filter((piece) => rolls.every((roll) => fits(piece, roll, turn))));
  return Math.max(area, whole.length > 0 ? lowerBound(whole, offers, turn) : 0) + price * seam;
}
