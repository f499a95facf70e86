import { type Blank, type Group, largestBox, pairOf, pieceGroup } from "./group";
import type { Offer } from "./purchase";

/** A plan as a text that a cell can keep: how the pieces are parted, and how they are grouped. */
export interface Kept {
  /** Number of the parting of every piece in its list; nothing where no piece may be parted. */
  readonly partings: readonly number[];
  /** Groups in brackets, one for each length to buy. */
  readonly grouping: string;
}

/** Pieces of a group by their numbers, two parts in brackets: "((0 1) 2)". */
function writeGroup({ piece, parts }: Group): string {
  return parts ? `(${writeGroup(parts[0])} ${writeGroup(parts[1])})` : `${piece ?? ""}`;
}

/** "0 2 0: ((0 1) 2) (3 4)", the partings only where there are any. */
export function writeKept(partings: readonly number[], groups: readonly Group[]): string {
  const grouping = groups.map(writeGroup).join(" ");
  return partings.length > 0 ? `${partings.join(" ")}: ${grouping}` : grouping;
}

/** A kept plan taken apart; undefined when it is none. */
export function readKept(text: string): Kept | undefined {
  const [, before, grouping] = /^(?:([\d ]+):)?([\d ()]+)$/.exec(text.trim()) ?? [];
  if (grouping === undefined) return undefined;
  return { partings: before === undefined ? [] : before.trim().split(/ +/).map(Number), grouping };
}

/** The groups of a kept plan; undefined when they are not of just these pieces, or of boxes that no roll holds. */
export function regroup(
  grouping: string,
  pieces: readonly Blank[],
  offers: readonly Offer[],
  turn: boolean,
): Group[] | undefined {
  const limit = largestBox(offers);
  const seen = new Set<number>();
  const open: Group[][] = [[]];
  for (const [mark] of grouping.matchAll(/\d+|[()]/g)) {
    const inner = open[open.length - 1] as Group[];
    if (mark === "(") open.push([]);
    else if (mark === ")") {
      open.pop();
      const [a, b] = inner;
      const outer = open[open.length - 1];
      if (!outer || !a || !b || inner.length > 2) return undefined;
      outer.push(pairOf(a, b, limit));
    } else {
      const piece = Number(mark);
      const blank = pieces[piece];
      if (!blank || seen.has(piece)) return undefined;
      seen.add(piece);
      inner.push(pieceGroup(blank, piece, turn));
    }
  }
  const [groups] = open;
  if (open.length !== 1 || seen.size !== pieces.length) return undefined;
  return groups?.every(({ front }) => front.count > 0) ? groups : undefined;
}
