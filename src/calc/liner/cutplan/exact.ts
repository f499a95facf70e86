import { type Blank, type Group, pieceGroup } from "./group";
import { cheapestOf, type Kind, splitsOf } from "./program";
import type { Offer } from "./purchase";
import { Work } from "./work";

/** Ways to part sets that are still looked at one by one, whatever the pieces: those of eleven different ones. */
const MOST_SPLITS = 3 ** 11;
/** Ways that take less time to look through than a first plan to spare some of them: those of five different pieces. */
const QUICK_SPLITS = 3 ** 5;

/** Equal pieces are one kind: which of them is cut where makes no difference. */
export function kindsOf(pieces: readonly Blank[], turn: boolean): Kind[] {
  const kinds: { length: number; width: number; members: Group[] }[] = [];
  pieces.forEach((piece, index) => {
    const { length, width } = piece;
    const group = pieceGroup(piece, index, turn);
    const same = kinds.find(
      (k) => (k.length === length && k.width === width) || (turn && k.length === width && k.width === length),
    );
    if (same) same.members.push(group);
    else kinds.push({ length, width, members: [group] });
  });
  return kinds;
}

/** Whether a set of pieces is small enough to look at every plan. */
export function canProve(kinds: readonly Kind[]): boolean {
  return splitsOf(kinds) <= MOST_SPLITS;
}

/** Whether a set is so small that every plan is looked at without one to begin from. */
export function isQuick(kinds: readonly Kind[]): boolean {
  return splitsOf(kinds) <= QUICK_SPLITS;
}

/** Whether it is worth trying with the little work that is allowed beyond that. */
export function mayProve(kinds: readonly Kind[]): boolean {
  return splitsOf(kinds) <= 3 ** 14;
}

/** The cheapest of all plans that cost no more than `most`; undefined when there is none or the work is spent. */
export function exactPlan(
  kinds: readonly Kind[],
  offers: readonly Offer[],
  most: number,
  work: Work,
): Group[] | undefined {
  return cheapestOf(kinds, offers, most, work);
}

/**
 * The cheapest of all plans of pieces so few that looking at every plan takes less than a first plan and a bound to spare
 * some of them.
 */
export function quickPlan(blanks: readonly Blank[], offers: readonly Offer[], turn: boolean): Group[] | undefined {
  const kinds = kindsOf(blanks, turn);
  return isQuick(kinds) ? exactPlan(kinds, offers, Infinity, new Work(Infinity)) : undefined;
}
