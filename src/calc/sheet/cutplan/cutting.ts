import { type Front, narrowestWithin, shortestWithin } from "./front";

/** A set of pieces, however the search numbers it, and the ways it may part in two. */
export interface Parting {
  readonly front: (set: number) => Front;
  /** The two sets of every way the set may part; none for a single piece. */
  readonly splits: (set: number) => Iterable<readonly [number, number]>;
  /** Index of the next piece of a set of one. */
  readonly piece: (set: number) => number;
}

/** Where a piece's box lies; steps. */
export interface Spot {
  readonly piece: number;
  readonly along: number;
  readonly across: number;
  /** Along and across the roll. */
  readonly length: number;
  readonly width: number;
}

interface Box {
  readonly along: number;
  readonly across: number;
  readonly length: number;
  readonly width: number;
}

/** Cuts a set of pieces from a box that one of its front's boxes fits into; every cut runs from edge to edge. */
export function cutFrom(box: Box, set: number, parting: Parting): Spot[] {
  const { front, splits, piece } = parting;
  const { along, across, length, width } = box;
  for (const [first, second] of splits(set)) {
    const a = front(first);
    const b = front(second);
    // One cut across the box: the two lie behind each other.
    const shortA = shortestWithin(a, width);
    const shortB = shortestWithin(b, width);
    if (shortA >= 0 && shortB >= 0) {
      const lengthA = a.along[shortA] as number;
      const lengthB = b.along[shortB] as number;
      if (lengthA + lengthB <= length) {
        return [
          ...cutFrom({ ...box, length: lengthA }, first, parting),
          ...cutFrom({ ...box, along: along + lengthA, length: lengthB }, second, parting),
        ];
      }
    }
    // One cut along the box: the two lie beside each other.
    const narrowA = narrowestWithin(a, length);
    const narrowB = narrowestWithin(b, length);
    if (narrowA >= 0 && narrowB >= 0) {
      const widthA = a.across[narrowA] as number;
      const widthB = b.across[narrowB] as number;
      if (widthA + widthB <= width) {
        return [
          ...cutFrom({ ...box, width: widthA }, first, parting),
          ...cutFrom({ ...box, across: across + widthA, width: widthB }, second, parting),
        ];
      }
    }
  }
  const single = front(set);
  const at = shortestWithin(single, width);
  return [{ piece: piece(set), along, across, length: single.along[at] as number, width: single.across[at] as number }];
}
