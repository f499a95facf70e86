import type { PlanRequest } from "../../../../src/calc/liner/cutplan/request";

/*
 * The least cost by trying everything, for few pieces in whole units: a box can yield a set of pieces if some cut at
 * some whole position parts it into two boxes that yield the two halves of some way to part the set. Works from the
 * box down by the position of the cut, where the code under test works from the pieces up and never looks at positions.
 * Whole positions suffice: pieces of whole size can be pushed together until every cut runs along one.
 */
type Sizes = readonly (readonly [number, number])[];

function makeYields(pieces: Sizes, turn: boolean): (along: number, across: number, set: number) => boolean {
  const memo = new Map<string, boolean>();
  const yields = (along: number, across: number, set: number): boolean => {
    if (set === 0) return true;
    const key = `${along} ${across} ${set}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    const answer = find(along, across, set);
    memo.set(key, answer);
    return answer;
  };
  const find = (along: number, across: number, set: number): boolean => {
    if ((set & (set - 1)) === 0) {
      const [length, width] = pieces[Math.log2(set)] as readonly [number, number];
      return (length <= along && width <= across) || (turn && width <= along && length <= across);
    }
    for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      for (let cut = 1; cut < along; cut++) {
        if (yields(cut, across, part) && yields(along - cut, across, set ^ part)) return true;
      }
      for (let cut = 1; cut < across; cut++) {
        if (yields(along, cut, part) && yields(along, across - cut, set ^ part)) return true;
      }
    }
    return false;
  };
  return yields;
}

/** The least cost of a request in whole metres; Infinity when some piece fits nowhere. */
export function leastCost({ pieces, rolls, turn }: PlanRequest): number {
  const yields = makeYields(
    pieces.map(({ length, width }) => [length, width]),
    turn,
  );
  const all = (1 << pieces.length) - 1;
  const longestPossible = pieces.reduce((sum, { length, width }) => sum + Math.max(length, width), 0);

  /** One length of one roll that yields the set. */
  const oneLength = (set: number): number => {
    let least = Infinity;
    for (const { width, longest, price, per } of rolls) {
      for (let along = 1; along <= Math.min(longest, longestPossible); along++) {
        if (!yields(along, width, set)) continue;
        least = Math.min(least, per === "roll" ? price : per === "area" ? price * width * along : price * along);
        break;
      }
    }
    return least;
  };

  const best: number[] = [0];
  for (let set = 1; set <= all; set++) {
    let least = oneLength(set);
    for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      least = Math.min(least, (best[part] ?? Infinity) + (best[set ^ part] ?? Infinity));
    }
    best.push(least);
  }
  return best[all] ?? Infinity;
}
