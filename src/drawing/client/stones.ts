import type { ClientFacts } from "./facts";

/** A boulder: the mean of its three sides is the size it is ordered by. */
export interface Boulder {
  readonly size: number;
  readonly along: number;
  readonly across: number;
  readonly high: number;
  /** Begins the random corners of its outline. */
  readonly seed: number;
}

type Random = () => number;

/** More than this is neither seen nor quickly drawn; above it the sizes keep their shares. */
const MOST_DRAWN = 1500;

/** The boulders that were counted, shuffled; each can be laid once. */
export class Deck {
  private readonly rest: Boulder[];

  constructor(boulders: ClientFacts["boulders"], random: Random) {
    const all = boulders.reduce((sum, { count }) => sum + Math.round(count), 0);
    const share = Math.min(1, MOST_DRAWN / Math.max(1, all));
    this.rest = boulders.flatMap(({ size, count }) =>
      Array.from({ length: Math.floor(Math.round(count) * share) }, () => boulderOf(size, random)),
    );
    for (let last = this.rest.length - 1; last > 0; last--) {
      const other = Math.floor(random() * (last + 1));
      const [a, b] = [this.rest[last], this.rest[other]];
      if (a && b) [this.rest[last], this.rest[other]] = [b, a];
    }
  }

  get left(): number {
    return this.rest.length;
  }

  /** The next boulder that fits, looked for among the next few: a mason does not turn the whole pile over. */
  take(fits: (boulder: Boulder) => boolean = () => true): Boulder | undefined {
    const from = Math.max(0, this.rest.length - 8);
    for (let index = this.rest.length - 1; index >= from; index--) {
      const boulder = this.rest[index];
      if (boulder && fits(boulder)) {
        this.rest.splice(index, 1);
        return boulder;
      }
    }
    return undefined;
  }
}

/** Longer than wide, wider than high, as boulders are laid; the three sides keep their mean. */
function boulderOf(size: number, random: Random): Boulder {
  const along = size * (1.08 + 0.27 * random());
  const across = size * (0.92 + 0.16 * random());
  return { size, along, across, high: 3 * size - along - across, seed: Math.floor(random() * 2 ** 31) };
}
