import { type Front, narrowestWithin, shortestWithin } from "./front";
import type { Group } from "./group";

/** Where a piece's box lies; steps. */
export interface Spot {
  readonly piece: number;
  readonly along: number;
  readonly across: number;
  /** Along and across the roll. */
  readonly length: number;
  readonly width: number;
}

interface Size {
  readonly length: number;
  readonly width: number;
}

/** How one cut parts a box so that a box of each front fits its part, or undefined when none does. */
export function halve(a: Front, b: Front, { length, width }: Size): { across: boolean; a: Size; b: Size } | undefined {
  // One cut across the box: the two lie behind each other.
  const shortA = shortestWithin(a, width);
  const shortB = shortestWithin(b, width);
  if (shortA >= 0 && shortB >= 0) {
    const lengthA = a.along[shortA] as number;
    const lengthB = b.along[shortB] as number;
    if (lengthA + lengthB <= length) {
      return { across: true, a: { length: lengthA, width }, b: { length: lengthB, width } };
    }
  }
  // One cut along the box: the two lie beside each other.
  const narrowA = narrowestWithin(a, length);
  const narrowB = narrowestWithin(b, length);
  if (narrowA >= 0 && narrowB >= 0) {
    const widthA = a.across[narrowA] as number;
    const widthB = b.across[narrowB] as number;
    if (widthA + widthB <= width) {
      return { across: false, a: { length, width: widthA }, b: { length, width: widthB } };
    }
  }
  return undefined;
}

/** Cuts a group from a box that one of its boxes fits into; every cut runs from edge to edge. */
export function cutFrom(group: Group, size: Size, along = 0, across = 0): Spot[] {
  const { front, piece, parts } = group;
  const cut = parts && halve(parts[0].front, parts[1].front, size);
  if (parts && cut) {
    return [
      ...cutFrom(parts[0], cut.a, along, across),
      ...cutFrom(parts[1], cut.b, along + (cut.across ? cut.a.length : 0), across + (cut.across ? 0 : cut.a.width)),
    ];
  }
  const at = shortestWithin(front, size.width);
  return [
    {
      piece: piece ?? -1,
      along,
      across,
      length: front.along[at] as number,
      width: front.across[at] as number,
    },
  ];
}
