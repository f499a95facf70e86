import { type BoxLimit, emptyFront, type Front, join, pieceFront } from "./front";
import type { Offer } from "./purchase";

/** A piece as the search sees it; steps. */
export interface Blank {
  readonly length: number;
  readonly width: number;
}

/** Pieces that are cut from one box: a piece itself, or two groups with one cut between them. */
export interface Group {
  readonly front: Front;
  /** Square steps of its pieces. */
  readonly area: number;
  /** Index of the piece, of a group of one. */
  readonly piece?: number;
  readonly parts?: readonly [Group, Group];
}

/** Boxes kept of a group while plans are compared; more add little and cost time. */
export const MOST_BOXES = 64;

/** A piece as a group of its own. */
export function pieceGroup({ length, width }: Blank, piece: number, turn: boolean): Group {
  return { front: pieceFront(length, width, turn), area: length * width, piece };
}

/** Two groups as one. */
export function pairOf(a: Group, b: Group, limit: BoxLimit): Group {
  const front = emptyFront();
  join(front, a.front, b.front, limit, MOST_BOXES);
  return { front, area: a.area + b.area, parts: [a, b] };
}

/** The largest box that any roll holds. */
export function largestBox(offers: readonly Offer[]): BoxLimit {
  return {
    across: Math.max(...offers.map((o) => o.width)),
    along: Math.max(...offers.map((o) => o.longest)),
    area: Infinity,
  };
}

/** Square steps that the least box of a group leaves without a piece; Infinity when no box is left. */
export function leastWaste({ across, along, count }: Front, area: number): number {
  let least = Infinity;
  for (let i = 0; i < count; i++) least = Math.min(least, (across[i] as number) * (along[i] as number));
  return Math.max(0, least - area);
}
