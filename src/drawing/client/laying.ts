import { sum } from "../steps";
import type { Boulder, Deck } from "./stones";

/** A boulder where it lies: along the feature, up from the top lip, and across from the middle line. */
export interface Laid {
  readonly boulder: Boulder;
  /** Its upstream end, and its length there. */
  readonly from: number;
  readonly length: number;
  readonly bottom: number;
  readonly course: number;
}

/** A wall of boulders to lay: where, on what, how high, and how close. */
export interface Wall {
  readonly from: number;
  readonly to: number;
  /** What it stands on. */
  readonly base: (at: number) => number;
  /** How high it is to stand above its base. */
  readonly height: number;
  /** Gaps in the first course and in those above, as shares of the boulders' lengths: 0 is stone to stone. */
  readonly gap: number;
  readonly upperGap: number;
}

/** How far a boulder settles between those below it. */
const SETTLES = 0.16;
const MOST_COURSES = 6;

/** Lays the courses above the first, as masons do; boulders that would stand out above the top are not taken. */
export function layOn(deck: Deck, wall: Wall, first: readonly Laid[]): Laid[] {
  const laid = [...first];
  let below = first;
  for (let course = 2; course <= MOST_COURSES && below.length > 0; course++) {
    below = layCourse(deck, wall, below, course);
    laid.push(...below);
  }
  return laid;
}

/** The lowest course, along the whole wall. */
export function layFirst(deck: Deck, wall: Wall): Laid[] {
  return layCourse(deck, wall, [], 1);
}

function layCourse(deck: Deck, wall: Wall, below: readonly Laid[], course: number): Laid[] {
  const row: Laid[] = [];
  const top = (at: number): number => wall.base(at) + 1.12 * wall.height;
  let from = wall.from + (course % 2 === 0 ? 0.4 * (below[0]?.length ?? 0) : 0);
  while (deck.left > 0 && from < wall.to) {
    let bottom = 0;
    const boulder = deck.take(({ along, high }) => {
      if (from + 0.8 * along > wall.to) return false;
      const middle = from + along / 2;
      bottom = course === 1 ? wall.base(middle) : restsOn(below, from, from + along, wall.base(middle));
      return course === 1 || bottom + high <= top(middle);
    });
    if (boulder === undefined) {
      from += (0.12 * (wall.to - wall.from)) / 4 + 0.02;
      continue;
    }
    row.push({ boulder, from, length: boulder.along, bottom: bottom - SETTLES * boulder.high, course });
    from += boulder.along * (0.97 + (course === 1 ? wall.gap : wall.upperGap));
  }
  return row;
}

/** The mean top of the boulders under a stretch: a stone bridges two, and sinks a little between them. */
function restsOn(below: readonly Laid[], from: number, to: number, base: number): number {
  const under = below.filter((other) => other.from < to && other.from + other.length > from);
  if (under.length === 0) return base;
  return sum(under.map((other) => other.bottom + other.boulder.high)) / under.length;
}
