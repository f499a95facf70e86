import { cutFrom } from "./cutting";
import type { Blank, Section } from "./exact";
import { emptyFront, type Front, join, pieceFront } from "./front";
import { Grouping } from "./grouping";
import { makePricing } from "./pricing";
import { cheapestPurchase, isCheaper, type Offer, type Purchase } from "./purchase";
import { repeatableRandom } from "./random";

/** How long and how boldly the search runs; found by trial on jobs of 10 to 200 pieces. */
export interface Effort {
  /** Boxes to look at before it ends: in all, and per piece where that is more. */
  readonly work: number;
  readonly workPerPiece: number;
  /** How much dearer a plan may be taken on the way, in shares of one piece's part of the cost: at the start and at the end. */
  readonly boldness: { readonly start: number; readonly end: number };
  /** Share of the changes that swap two groups; the others move one. */
  readonly swaps: number;
  readonly start: number;
}

export const USUAL_EFFORT: Effort = {
  work: 8_000_000,
  workPerPiece: 100_000,
  boldness: { start: 0.3, end: 0.02 },
  swaps: 0.8,
  start: 1,
};

/** Boxes kept per group once the grouping is settled. */
const MOST_BOXES_AT_THE_END = 4096;

/**
 * A good plan with edge-to-edge cuts for more pieces than can be looked at one by one: simulated annealing over the
 * grouping of the pieces (see Grouping), where a plan's cost is worked out exactly for every grouping.
 * The same pieces and rolls give the same plan on every machine: effort is counted in work, not in time.
 *
 * @param goal stops early when a plan costs no more than this
 *
 * Source: slicing trees with shape functions, L. Stockmeyer, "Optimal orientations of cells in slicing floorplan
 * designs", Information and Control 57 (1983) 91-101; annealing over them, D. F. Wong and C. L. Liu, "A new algorithm
 * for floorplan design", Design Automation Conference (1986) 101-107 (the first from memory).
 */
export function searchPlan(
  pieces: readonly Blank[],
  offers: readonly Offer[],
  turn: boolean,
  goal: number,
  effort: Effort = USUAL_EFFORT,
): Section[] {
  const grouping = new Grouping(pieces, turn, makePricing(offers));
  const { tree } = grouping;
  const random = repeatableRandom(effort.start);
  const anyNode = (): number => Math.floor(random() * tree.nodes);
  const { start, end } = effort.boldness;
  const work = Math.max(effort.work, effort.workPerPiece * pieces.length);
  let best = grouping.real;
  let bestLeft = tree.left.slice();
  let bestRight = tree.right.slice();
  // Small trees may have no change to make; the count of tries ends the loop then.
  for (let tries = 0; grouping.work < work && tries < work; tries++) {
    const boldness = (best / pieces.length) * steady(start * (end / start) ** (grouping.work / work));
    const most = grouping.leaning - boldness * steady(Math.log(1 - random()));
    const change = random() < effort.swaps ? tree.swap(anyNode(), anyNode()) : tree.move(anyNode(), anyNode());
    if (!change || !grouping.attempt(change, most)) continue;
    if (grouping.real >= best) continue;
    best = grouping.real;
    bestLeft = tree.left.slice();
    bestRight = tree.right.slice();
    if (best <= goal) break;
  }
  return settle(pieces, offers, turn, bestLeft, bestRight);
}

/** Engines differ in the last digits of powers and logarithms; the plan must not. */
function steady(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/** The plan of a grouping: every group bought as one length or as its two parts, whichever is cheaper. */
function settle(
  pieces: readonly Blank[],
  offers: readonly Offer[],
  turn: boolean,
  left: Int32Array,
  right: Int32Array,
): Section[] {
  const limit = {
    across: Math.max(...offers.map((o) => o.width)),
    along: Math.max(...offers.map((o) => o.longest)),
    area: Infinity,
  };
  const fronts: Front[] = [];
  const whole: (Purchase | undefined)[] = [];
  const cost: { cost: number; bought: number }[] = [];
  const reckon = (node: number): void => {
    const piece = pieces[node];
    const front = piece ? pieceFront(piece.length, piece.width, turn) : emptyFront();
    let apart = { cost: Infinity, bought: Infinity };
    if (!piece) {
      const [a, b] = [left[node] as number, right[node] as number];
      reckon(a);
      reckon(b);
      join(front, fronts[a] as Front, fronts[b] as Front, limit, MOST_BOXES_AT_THE_END);
      const [costA, costB] = [cost[a], cost[b]];
      if (costA && costB) apart = { cost: costA.cost + costB.cost, bought: costA.bought + costB.bought };
    }
    const one = cheapestPurchase(front, offers);
    const takeOne = one !== undefined && !isCheaper(apart, one);
    fronts[node] = front;
    whole[node] = takeOne ? one : undefined;
    cost[node] = takeOne ? one : apart;
  };
  const root = left.length - 1;
  reckon(root);

  const parting = {
    front: (node: number) => fronts[node] as Front,
    splits: (node: number) => (node < pieces.length ? [] : [[left[node] as number, right[node] as number] as const]),
    piece: (node: number) => node,
  };
  const collect = (node: number): Section[] => {
    const purchase = whole[node];
    if (!purchase) return [...collect(left[node] as number), ...collect(right[node] as number)];
    const box = { along: 0, across: 0, length: purchase.used, width: purchase.offer.width };
    return [{ purchase, spots: cutFrom(box, node, parting) }];
  };
  return collect(root);
}
