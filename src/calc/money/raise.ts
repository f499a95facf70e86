import { CENT_DIGITS, roundMoney } from "./cents";

/** Digits that a count of steps or cents keeps before it is raised, so that the noise of a division adds none. */
const COUNT_DIGITS = 12;

/**
 * A price raised to a whole multiple of a step.
 *
 * @param price whole money
 * @param step whole money; at 0 or below the price is only rounded to the cent
 * @param digits behind the point, where the smallest unit of the currency is no cent
 * @example raisedToStep(12304.72, 10) => 12310; 1230.472 tens are 1231
 *
 * Source: by definition
 */
export function raisedToStep(price: number, step: number, digits = CENT_DIGITS): number {
  return roundMoney(step > 0 ? wholeUp(price / step) * step : price, digits);
}

/**
 * An amount raised to the cent.
 *
 * @param amount whole money
 * @param digits behind the point, where the smallest unit of the currency is no cent
 * @example raisedToCent(250.001) => 250.01; the next cent
 *
 * Source: by definition
 */
export function raisedToCent(amount: number, digits = CENT_DIGITS): number {
  return wholeUp(amount * 10 ** digits) / 10 ** digits;
}

function wholeUp(count: number): number {
  return Math.ceil(Number(count.toPrecision(COUNT_DIGITS)));
}
