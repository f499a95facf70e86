import { type Front, shortestWithin } from "./front";
import type { Roll } from "./request";
import { toMetres, toRoom } from "./steps";

/** A roll as the search sees it; lengths in steps (steps.ts), money never 0. */
export interface Offer {
  readonly roll: number;
  readonly width: number;
  readonly longest: number;
  /** Whether the price is for a whole roll, however little is used. */
  readonly whole: boolean;
  /** Money per step of length, or for the roll. */
  readonly rate: number;
  /** The least money that a square step of this roll can cost. */
  readonly areaRate: number;
}

/** One length bought to cut a box from. */
export interface Purchase {
  readonly offer: Offer;
  /** Steps of length that the box takes. */
  readonly used: number;
  /** Steps of length that are paid. */
  readonly bought: number;
  readonly cost: number;
}

/** Rolls as offers. Where no roll has a price, area stands in for money: the least area is then the least cost. */
export function makeOffers(rolls: readonly Roll[]): Offer[] {
  const unpriced = rolls.every((roll) => roll.price === 0);
  return rolls.map((roll, index): Offer => {
    const width = toRoom(roll.width);
    const longest = toRoom(roll.longest);
    const whole = roll.per === "roll" && !unpriced;
    const perLength = unpriced ? roll.width : roll.per === "area" ? roll.price * roll.width : roll.price;
    const rate = whole ? roll.price : toMetres(perLength);
    return { roll: index, width, longest, whole, rate, areaRate: whole ? rate / (width * longest) : rate / width };
  });
}

/**
 * What a length of a roll costs.
 *
 * @example purchase(makeOffers([{ width: 2, price: 5, per: "length", longest: Infinity }])[0], toSteps(10)).cost =>
 *   50; 10 m at 5
 */
export function purchase(offer: Offer, used: number): Purchase {
  const { whole, rate, longest } = offer;
  return { offer, used, bought: whole ? longest : used, cost: whole ? rate : rate * used };
}

/** The cheapest way to buy one box of a front, or undefined when no roll holds any. */
export function cheapestPurchase(front: Front, offers: readonly Offer[]): Purchase | undefined {
  let best: Purchase | undefined;
  for (const offer of offers) {
    const index = shortestWithin(front, offer.width);
    const used = index < 0 ? Infinity : (front.along[index] as number);
    if (used > offer.longest || used === Infinity) continue;
    const candidate = purchase(offer, used);
    if (!best || isCheaper(candidate, best)) best = candidate;
  }
  return best;
}

/** Sums of money in binary differ in the last digits; a billionth is no saving. */
export const SAME = 1e-9;

/** Whether `a` costs less than `b`, or as much with less length to buy. */
export function isCheaper(a: { cost: number; bought: number }, b: { cost: number; bought: number }): boolean {
  if (a.cost < b.cost * (1 - SAME)) return true;
  return a.cost <= b.cost * (1 + SAME) && a.bought < b.bought;
}
