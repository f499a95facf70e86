import type { Offer } from "./purchase";

/** Two boxes that may be put together, the box that holds both, and what it leaves empty. */
export interface Pair {
  readonly first: number;
  readonly second: number;
  readonly across: number;
  readonly along: number;
  readonly waste: number;
  /** The waste, less what the edge where they meet counts for: pairs with less come first. */
  readonly standing: number;
}

/** Pairs remembered of a state, the best first. */
const PAIRS_KEPT = 24;

/** Boxes of pieces gathered so far, by number. Where turning is allowed a box is kept narrow side across. */
export class Boxes {
  readonly across: number[] = [];
  readonly along: number[] = [];
  /** A number that differs for boxes of different size. */
  readonly marks: number[] = [];
  /** The two boxes that were put together; nothing for a box that was there from the start. */
  readonly parts: (readonly [number, number] | undefined)[] = [];

  /**
   * @param edge what a step of edge where two boxes meet counts for, in square steps of waste
   * @param shake square steps by which the standing of a pair is left to chance
   */
  constructor(
    private readonly offers: readonly Offer[],
    private readonly turn: boolean,
    private readonly edge: number,
    private readonly shake: number,
    private readonly random: () => number,
  ) {}

  add(across: number, along: number, from?: readonly [number, number]): number {
    const flip = this.turn && across > along;
    const x = flip ? along : across;
    const y = flip ? across : along;
    this.across.push(x);
    this.along.push(y);
    this.parts.push(from);
    this.marks.push(markOf(x, y));
    return this.across.length - 1;
  }

  /** Adds every way to put two boxes together that a roll holds to the pairs, as far as they are among the best. */
  pairUp(pairs: Pair[], first: number, second: number): void {
    const acrossA = this.across[first] as number;
    const alongA = this.along[first] as number;
    const acrossB = this.across[second] as number;
    const alongB = this.along[second] as number;
    this.meet(pairs, first, second, acrossA, alongA, acrossB, alongB, false);
    this.meet(pairs, first, second, alongA, acrossA, alongB, acrossB, true);
    if (!this.turn) return;
    if (acrossA !== alongA) this.meet(pairs, first, second, alongA, acrossA, acrossB, alongB, false);
    if (acrossB !== alongB) this.meet(pairs, first, second, acrossA, alongA, alongB, acrossB, false);
  }

  private meet(
    pairs: Pair[],
    first: number,
    second: number,
    edgeA: number,
    deepA: number,
    edgeB: number,
    deepB: number,
    beside: boolean,
  ): void {
    const wide = edgeA > edgeB ? edgeA : edgeB;
    const deep = deepA + deepB;
    const waste = edgeA > edgeB ? (edgeA - edgeB) * deepB : (edgeB - edgeA) * deepA;
    let standing = waste - this.edge * (edgeA + edgeB - wide);
    if (this.shake > 0) standing += this.shake * this.random();
    let at = pairs.length;
    if (at === PAIRS_KEPT && standing >= (pairs[at - 1] as Pair).standing) return;
    const across = beside ? deep : wide;
    const along = beside ? wide : deep;
    if (!this.fits(across, along)) return;
    while (at > 0 && standing < (pairs[at - 1] as Pair).standing) at--;
    pairs.splice(at, 0, { first, second, across, along, waste, standing });
    if (pairs.length > PAIRS_KEPT) pairs.pop();
  }

  private fits(across: number, along: number): boolean {
    for (const { width, longest } of this.offers) {
      if ((across <= width && along <= longest) || (this.turn && along <= width && across <= longest)) return true;
    }
    return false;
  }
}

function markOf(across: number, along: number): number {
  let mixed = Math.imul((across % 4294967296) | 0, 0x9e3779b1) ^ Math.imul((along % 4294967296) | 0, 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
  return mixed ^ (mixed >>> 13);
}
