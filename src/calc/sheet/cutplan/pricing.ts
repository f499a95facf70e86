import { type Front, shortestWithin } from "./front";
import type { Offer } from "./purchase";

/** How much wider than a roll a box may be while the search is still on its way to one that fits. */
const TOO_WIDE = 1.06;
/** Share of a whole roll's price that counts by how much of it is used, so that the search sees it fill up. */
const BY_USE = 0.05;

/** What the search looks at when it compares boxes. */
export interface Pricing {
  /** The widest and longest box worth looking at; steps. */
  readonly widest: number;
  readonly longest: number;
  /** Money per square step that no plan can undercut under `leaning`. */
  readonly areaRate: number;
  /** Whether two lengths bought apart can cost less than both cut from one. */
  readonly mayPart: boolean;
  /** Least money for a box of the front, boxes a little too wide at a surcharge; Infinity when there is none. */
  leaning(front: Front): number;
  /** Least money for a box of the front that a roll really holds. */
  real(front: Front): number;
}

/** What the search asks of the rolls on offer, worked out once. */
export function makePricing(offers: readonly Offer[]): Pricing {
  return {
    widest: TOO_WIDE * Math.max(...offers.map((o) => o.width)),
    longest: Math.max(...offers.map((o) => o.longest)),
    areaRate: Math.min(...offers.map((o) => o.areaRate * (o.whole ? 1 - BY_USE : 1))),
    mayPart: offers.length > 1 || offers.some((o) => o.longest !== Infinity),
    leaning(front) {
      let least = Infinity;
      for (const { width, longest, whole, rate } of offers) {
        for (let index = front.count - 1; index >= 0; index--) {
          const length = front.along[index] as number;
          if (length > longest) break;
          const over = (front.across[index] as number) / width;
          if (over > TOO_WIDE) continue;
          const money = whole ? rate * (1 - BY_USE + (BY_USE * length) / longest) : rate * length;
          least = Math.min(least, over > 1 ? money * over : money);
          // Narrower boxes are longer: below the roll's width none is cheaper.
          if (over <= 1) break;
        }
      }
      return least;
    },
    real(front) {
      let least = Infinity;
      for (const { width, longest, whole, rate } of offers) {
        const index = shortestWithin(front, width);
        const length = index < 0 ? Infinity : (front.along[index] as number);
        if (length <= longest && length !== Infinity) least = Math.min(least, whole ? rate : rate * length);
      }
      return least;
    },
  };
}
