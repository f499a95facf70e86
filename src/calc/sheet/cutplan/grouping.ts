import type { Blank } from "./exact";
import { emptyFront, type Front, join, pieceFront } from "./front";
import type { Pricing } from "./pricing";
import { type Change, Tree } from "./tree";

/** Boxes kept per group; more add little and cost time. */
const MOST_BOXES = 64;

/** What is known of a group of pieces. */
interface Known {
  readonly front: Front;
  /** Square steps of its pieces. */
  area: number;
  /** See Pricing; the group bought as one length or as its two parts. */
  leaning: number;
  real: number;
}

/**
 * A grouping of pieces and what it costs. A group's boxes are those its two parts can be joined to in either way, so
 * only the grouping is searched; which way a cut runs and how a piece lies follow from it.
 */
export class Grouping {
  readonly tree: Tree;
  /** Boxes looked at so far: a measure of work that is the same on every machine. */
  work = 0;
  private readonly known: Known[];
  private readonly spare: Known[];
  private changed: number[] = [];

  constructor(
    pieces: readonly Blank[],
    turn: boolean,
    private readonly pricing: Pricing,
  ) {
    const areas = pieces.map(({ length, width }) => length * width);
    const order = pieces.map((_, index) => index);
    // Pieces of like size meet first, large before small.
    order.sort((a, b) => (areas[b] ?? 0) - (areas[a] ?? 0) || a - b);
    this.tree = new Tree(order);
    const blank = (): Known => ({ front: emptyFront(MOST_BOXES), area: 0, leaning: Infinity, real: Infinity });
    this.known = Array.from({ length: this.tree.nodes }, blank);
    this.spare = Array.from({ length: this.tree.nodes }, blank);
    pieces.forEach(({ length, width }, leaf) => {
      const front = pieceFront(length, width, turn);
      this.known[leaf] = {
        front,
        area: length * width,
        leaning: pricing.leaning(front),
        real: pricing.real(front),
      };
    });
    for (let node = pieces.length; node < this.tree.nodes; node++) this.refresh(node, Infinity);
  }

  private at(node: number): Known {
    return this.known[node] as Known;
  }

  get leaning(): number {
    return this.at(this.tree.root).leaning;
  }

  get real(): number {
    return this.at(this.tree.root).real;
  }

  /**
   * Makes a change if the whole then costs no more than `most`; otherwise leaves everything as it was.
   * A group whose boxes hold more empty area than a plan of that cost can pay for ends the attempt at once.
   */
  attempt(change: Change, most: number): boolean {
    const { areaRate } = this.pricing;
    const whole = this.at(this.tree.root).area * areaRate;
    const spareMoney = Math.max(0, most - whole) + 1e-9 * whole;
    for (const node of this.tree.upward(change.from)) {
      const before = this.at(node);
      this.known[node] = this.spare[node] as Known;
      this.spare[node] = before;
      this.changed.push(node);
      const { front, leaning, area } = this.refresh(node, spareMoney / areaRate);
      if (front.count === 0 && leaning - area * areaRate > spareMoney) return this.giveUp(change);
    }
    if (this.leaning > most) return this.giveUp(change);
    this.changed = [];
    return true;
  }

  private giveUp(change: Change): false {
    change.undo();
    for (const node of this.changed) {
      const tried = this.at(node);
      this.known[node] = this.spare[node] as Known;
      this.spare[node] = tried;
    }
    this.changed = [];
    return false;
  }

  /** Works a group out from its two parts; no box may hold more than `waste` square steps without a piece. */
  private refresh(node: number, waste: number): Known {
    const { widest, longest, mayPart } = this.pricing;
    const a = this.at(this.tree.leftOf(node));
    const b = this.at(this.tree.rightOf(node));
    const group = this.at(node);
    group.area = a.area + b.area;
    group.front.count = 0;
    this.work += a.front.count + b.front.count;
    join(group.front, a.front, b.front, { across: widest, along: longest, area: group.area + waste }, MOST_BOXES);
    const isWhole = node === this.tree.root;
    group.leaning = mayPart || isWhole ? this.pricing.leaning(group.front) : Infinity;
    group.real = mayPart || isWhole ? this.pricing.real(group.front) : Infinity;
    if (mayPart) {
      group.leaning = Math.min(group.leaning, a.leaning + b.leaning);
      group.real = Math.min(group.real, a.real + b.real);
    }
    return group;
  }
}
