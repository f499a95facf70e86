import Big from "big.js";
import { requireRange } from "../problem";

/** What can be ordered in one line. */
export const ORDER_RANGE = { need: 1e9, waste: 2, pack: 1e6 } as const;

/** The part of a pack that is taken for binary noise: 2.0000000001 packs are 2, not 3. */
const IGNORED_PART = 1e-6;

/**
 * The quantity to order: the need with its waste, rounded up to whole packs, at least the supplier's minimum.
 *
 * packs = ⌈max(need × (1 + waste), minimum) / pack⌉; a millionth of a pack is ignored
 *
 * @param need quantity needed in place, 0 to 1e9, in the unit of sale
 * @param waste share added to the need, 0 to 2 (an add-on, not a yield)
 * @param pack quantity in one pack, more than 0, at most 1e6
 * @param minimum least quantity the supplier sells, 0 to 1e9; nothing is ordered when nothing is needed
 * @returns a multiple of the pack, in the unit of sale
 * @throws Problem outside the ranges
 * @example orderQuantity(23.2, 0, 5) => 25; five packs of 5
 *
 * Source: arithmetic; waste as an add-on is common practice
 */
export function orderQuantity(need: number, waste = 0, pack = 1, minimum = 0): number {
  const packs = wholePacks(need, waste, pack, minimum);
  // Whole numbers are multiplied exactly; of a pack of 0.1 the decimal product is meant.
  return Number.isInteger(pack) ? packs * pack : new Big(packs).times(pack).toNumber();
}

/**
 * How many packs orderQuantity comes to.
 *
 * @returns whole packs; 0 when nothing is needed
 * @throws Problem outside the ranges
 * @example wholePacks(23.2, 0, 5) => 5; five packs of 5
 *
 * Source: as orderQuantity
 */
export function wholePacks(need: number, waste = 0, pack = 1, minimum = 0): number {
  requireRange("need", need, 0, ORDER_RANGE.need);
  requireRange("waste", waste, 0, ORDER_RANGE.waste);
  requireRange("pack", pack, Number.MIN_VALUE, ORDER_RANGE.pack);
  requireRange("minimum", minimum, 0, ORDER_RANGE.need);
  if (need === 0) return 0;
  const wanted = Math.max(need * (1 + waste), minimum);
  return Math.max(1, Math.ceil(wanted / pack - IGNORED_PART));
}
