import { halve } from "./cutting";
import { emptyFront, type Front, join } from "./front";
import { type Group, largestBox, leastWaste, pairOf } from "./group";
import { cheapestPurchase, isCheaper, type Offer, SAME } from "./purchase";
import type { Work } from "./work";

/** Groups that are alike, so that it makes no difference which of them is cut where. */
export interface Kind {
  readonly members: readonly Group[];
}

/** Number of ways to part every set of these in two; what the program looks at. */
export function splitsOf(kinds: readonly Kind[]): number {
  return kinds.reduce((product, { members: { length: n } }) => (product * (n + 1) * (n + 2)) / 2, 1);
}

/**
 * The cheapest way to cut groups from rolls, of all ways with edge-to-edge cuts. For every set of groups, from the
 * small to the large, it keeps every smallest box the set can be cut from (joining those of every two parts of the set,
 * stacked and beside each other) and the cheapest way to buy it (as one length, or as the cheapest of every two parts).
 * Left out are only boxes whose waste alone makes a plan dearer than `most`; so the last set's cost is the least there
 * is, if that is no more than `most`.
 *
 * @param most money that a plan may cost to be worth anything
 * @param mostBoxes boxes kept of each set; with fewer than all the least cost may be missed
 * @returns one group for each length to buy, or undefined when no plan is that cheap or the work is spent
 *
 * Source: the dynamic program over all guillotine cuts of P. C. Gilmore and R. E. Gomory, "Multistage cutting stock
 * problems of two and more dimensions", Operations Research 13 (1965) 94-120, here over sets of given groups.
 */
export function cheapestOf(
  kinds: readonly Kind[],
  offers: readonly Offer[],
  most: number,
  work: Work,
  mostBoxes = Infinity,
): Group[] | undefined {
  const sets = new Sets(kinds);
  const limit = largestBox(offers);
  const rate = Math.min(...offers.map((offer) => offer.areaRate));
  const all = sets.count - 1;
  const areas = sets.sums(({ area }) => area);
  const spare = Math.max(0, most / rate - (areas[all] as number)) + 1e-9 * (areas[all] as number);
  const wastes = new Float64Array(sets.count);
  const cost = new Float64Array(sets.count);
  const bought = new Float64Array(sets.count);
  /** One part of the cheapest two; 0: bought as one length. */
  const apart = new Int32Array(sets.count);
  const fronts: Front[] = [emptyFront(0)];

  for (let set = 1; set <= all; set++) {
    if (work.isSpent) return undefined;
    const area = areas[set] as number;
    const within = { ...limit, area: area + spare };
    const single = sets.single(set);
    const front = single ? { ...single.front } : emptyFront();
    let least = Infinity;
    let length = Infinity;
    let parted = 0;
    sets.eachSplit(set, (a, b) => {
      const costOfTwo = (cost[a] as number) + (cost[b] as number);
      if (costOfTwo <= least * (1 + SAME)) {
        const lengthOfTwo = (bought[a] as number) + (bought[b] as number);
        if (costOfTwo < least * (1 - SAME) || lengthOfTwo < length) {
          least = costOfTwo;
          length = lengthOfTwo;
          parted = a;
        }
      }
      work.done++;
      if ((wastes[a] as number) + (wastes[b] as number) > spare) return;
      const frontA = fronts[a] as Front;
      const frontB = fronts[b] as Front;
      work.done += frontA.count + frontB.count + front.count;
      join(front, frontA, frontB, within, mostBoxes);
    });
    const purchase = cheapestPurchase(front, offers);
    if (purchase && isCheaper(purchase, { cost: least, bought: length })) {
      least = purchase.cost;
      length = purchase.bought;
      parted = 0;
    }
    cost[set] = least;
    bought[set] = length;
    apart[set] = parted;
    wastes[set] = leastWaste(front, area);
    fronts.push(front);
  }
  if (!((cost[all] as number) <= most * (1 + 1e-9))) return undefined;

  const taken = kinds.map(() => 0);
  const cut = (set: number, width: number, length: number): Group => {
    let found: (() => Group) | undefined;
    sets.eachSplit(set, (setA, setB) => {
      const two = found ? undefined : halve(fronts[setA] as Front, fronts[setB] as Front, { length, width });
      if (!two) return;
      const { a, b } = two;
      found = () => pairOf(cut(setA, a.width, a.length), cut(setB, b.width, b.length), limit);
    });
    return found?.() ?? sets.take(set, taken);
  };
  const collect = (set: number): Group[] => {
    const part = apart[set] as number;
    if (part > 0) return [...collect(part), ...collect(set - part)];
    const purchase = cheapestPurchase(fronts[set] as Front, offers);
    return purchase ? [cut(set, purchase.offer.width, purchase.used)] : [];
  };
  return collect(all);
}

/** Sets of groups as numbers whose digits count the groups of each kind. */
class Sets {
  readonly count: number;
  private readonly places: number[] = [];
  private readonly own: Int32Array;
  private readonly part: Int32Array;

  constructor(private readonly kinds: readonly Kind[]) {
    let count = 1;
    for (const { members } of kinds) {
      this.places.push(count);
      count *= members.length + 1;
    }
    this.count = count;
    this.own = new Int32Array(kinds.length);
    this.part = new Int32Array(kinds.length);
  }

  /** The sum of something over every set. */
  sums(of: (group: Group) => number): Float64Array {
    const sums = new Float64Array(this.count);
    this.kinds.forEach(({ members }, index) => {
      const [first] = members;
      const each = first ? of(first) : 0;
      const place = this.places[index] as number;
      for (let set = 0; set < this.count; set++)
        sums[set] = (sums[set] as number) + each * this.digit(set, index, place);
    });
    return sums;
  }

  private digit(set: number, index: number, place = this.places[index] as number): number {
    return Math.floor(set / place) % ((this.kinds[index] as Kind).members.length + 1);
  }

  /** The group of a set of one. */
  single(set: number): Group | undefined {
    return this.kinds[this.places.indexOf(set)]?.members[0];
  }

  /** The next group of a set of one, and counts it as taken. */
  take(set: number, taken: number[]): Group {
    const index = this.places.indexOf(set);
    const next = taken[index] ?? 0;
    taken[index] = next + 1;
    return (this.kinds[index] as Kind).members[next] as Group;
  }

  /** Calls with the two parts of every way to part a set in two, each once. */
  eachSplit(set: number, call: (a: number, b: number) => void): void {
    const { own, part, places } = this;
    for (let i = 0; i < own.length; i++) own[i] = part[i] = this.digit(set, i);
    let a = set;
    for (;;) {
      // Counts the digits down: the first that can, those before it start over.
      let i = 0;
      while (i < own.length && part[i] === 0) {
        part[i] = own[i] as number;
        a += (own[i] as number) * (places[i] as number);
        i++;
      }
      if (i === own.length) return;
      part[i] = (part[i] as number) - 1;
      a -= places[i] as number;
      if (2 * a < set) return;
      if (a < set) call(a, set - a);
    }
  }
}
