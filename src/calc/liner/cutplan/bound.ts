import type { Blank } from "./group";
import type { Offer } from "./purchase";
import { type Lane, type Lot, shareOut } from "./shares";
import { sharesByWidth } from "./widths";
import { Work } from "./work";

/** What may be spent on a bound; see Work. */
const EFFORT = 1_500_000;

/**
 * Money that no plan can undercut, whatever the cuts. Every piece is given a share of the cost so that wherever a roll
 * is cut across, the pieces abreast there count for no more than that place of the roll costs; then all shares together
 * are no more than any plan. The largest such shares are the dual values of a linear program over what may lie abreast.
 * Where all rolls are sold whole the same is done along the roll, and the sum rounded up to what whole rolls can cost.
 * Never less than the dearest piece bought alone.
 *
 * @returns money, under the offers' rates
 *
 * Source: column generation over the ways to lie abreast, P. C. Gilmore and R. E. Gomory, "A linear programming approach
 * to the cutting-stock problem", Operations Research 9 (1961) 849-859; shares that stand before it has ended,
 * A. A. Farley, "A note on bounding a class of linear programming problems, including cutting stock problems",
 * Operations Research 38 (1990) 922-923 (both from memory).
 */
export function lowerBound(pieces: readonly Blank[], offers: readonly Offer[], turn: boolean): number {
  const lots = lotsOf(pieces, turn);
  const lanes = lanesOf(offers);
  const bound = Math.max(sharesFor(lots, lanes), ...lots.map((lot) => alone(lot, offers)));
  if (!offers.every(({ whole }) => whole)) return bound;
  const turned = lots.map(({ count, ways }): Lot => ({ count, ways: ways.map(([along, across]) => [across, along]) }));
  const across = offers.map(({ width, longest, areaRate }): Lane => ({
    room: longest,
    longest: width,
    rate: areaRate * longest,
  }));
  return wholeRolls(Math.max(bound, sharesFor(turned, across)), offers);
}

/** Rolls as lanes. */
export function lanesOf(offers: readonly Offer[]): Lane[] {
  return offers.map(({ width, longest, areaRate }) => ({ room: width, longest, rate: areaRate * width }));
}

function sharesFor(lots: readonly Lot[], lanes: readonly Lane[]): number {
  return Math.max(sharesByWidth(lots, lanes), shareOut(lots, lanes, new Work(EFFORT)));
}

/** Equal pieces as one lot. */
export function lotsOf(pieces: readonly Blank[], turn: boolean): Lot[] {
  const lots: { count: number; ways: (readonly [number, number])[] }[] = [];
  for (const { length, width } of pieces) {
    const same = lots.find(({ ways: [first] }) => {
      if (!first) return false;
      const [along, across] = first;
      return (along === length && across === width) || (turn && along === width && across === length);
    });
    if (same) same.count++;
    else
      lots.push({
        count: 1,
        ways:
          turn && length !== width
            ? [
                [length, width],
                [width, length],
              ]
            : [[length, width]],
      });
  }
  return lots;
}

/** The least that one of a lot costs, bought alone. */
function alone({ ways }: Lot, offers: readonly Offer[]): number {
  let least = Infinity;
  for (const { width, longest, whole, rate } of offers) {
    for (const [along, across] of ways) {
      if (across <= width && along <= longest) least = Math.min(least, whole ? rate : rate * along);
    }
  }
  return least;
}

/** The bound rounded up to a multiple of what all prices of whole rolls are multiples of. */
function wholeRolls(bound: number, offers: readonly Offer[]): number {
  let step = 0;
  for (const { rate } of offers) {
    const cents = Math.round(rate * 100);
    // A price with parts of a cent has no such step.
    if (Math.abs(cents - rate * 100) > 1e-6) return bound;
    step = commonDivisor(step, cents);
  }
  return step > 0 ? (Math.ceil((bound * 100) / step - 1e-9) * step) / 100 : bound;
}

function commonDivisor(a: number, b: number): number {
  return a === 0 ? b : commonDivisor(b % a, a);
}
