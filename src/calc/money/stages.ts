import Big from "big.js";
import { invalid, plain, requireRange } from "../problem";
import { LARGEST_AMOUNT, sumCents } from "./cents";

/** How far the shares may be off 1 in all: the noise of adding them, not a rounded third. */
const SUM_TOLERANCE = 1e-6;

/**
 * Splits a total into payment stages whose cents add up exactly to the total.
 *
 * Each stage gets the whole cents of total × share; the cents left over go, one each, to the stages with the
 * largest remainders, earlier stages first when remainders are equal.
 *
 * @param totalCents total in whole cents, 0 to 1e14
 * @param shares share of each stage, 0 to 1; they add up to 1
 * @returns cents of each stage, in order
 * @throws Problem when a share is outside 0 to 1 or the shares do not add up to 1
 * @example splitIntoStages(10_000, [0.3, 0.3, 0.4]) => [3000, 3000, 4000]; shares of 10,000
 *
 * Source: largest-remainder method (Hamilton), any text on apportionment
 */
export function splitIntoStages(totalCents: number, shares: readonly number[]): number[] {
  requireRange("total", totalCents, 0, LARGEST_AMOUNT * 100, "cents");
  shares.forEach((share, index) => requireRange(`share ${index + 1}`, share, 0, 1));
  const whole = shares.reduce((sum, share) => sum.plus(share), new Big(0));
  const missing = new Big(1).minus(whole).toNumber();
  if (Math.abs(missing) > SUM_TOLERANCE) {
    throw invalid(
      `shares must add up to 1 (100%); they add up to ${plain(whole.toNumber())}. ` +
        `${missing > 0 ? "Raise" : "Lower"} one of them by ${plain(Math.abs(missing))}`,
    );
  }
  const exact = shares.map((share) => new Big(totalCents).times(share).div(whole));
  const cents = exact.map((amount) => Number(amount.round(0, Big.roundDown)));
  const left = totalCents - sumCents(cents);
  exact
    .map((amount, index) => ({ index, remainder: amount.minus(cents[index] ?? 0) }))
    .sort((a, b) => b.remainder.cmp(a.remainder) || a.index - b.index)
    .slice(0, left)
    .forEach(({ index }) => (cents[index] = (cents[index] ?? 0) + 1));
  return cents;
}
