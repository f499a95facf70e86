import Big from "big.js";
import { invalid, plain, requireFinite } from "../problem";

/**
 * Money inside the calculations is whole cents in a plain number: sums of whole numbers are exact,
 * and every line is rounded once, where it comes into being, so that totals are the sum of what is printed.
 * A currency without cents, or with thousandths, has its own smallest unit in place of the cent.
 */

/** The largest amount a calculation takes, in whole money: far inside what a number holds to the cent. */
export const LARGEST_AMOUNT = 1e12;
/** Digits behind the point of an amount in cents; the yen has none, the dinar of Kuwait three. */
export const CENT_DIGITS = 2;
/** Digits a quantity keeps before it meets a price: enough for any invoice, too few for binary noise. */
const QUANTITY_DIGITS = 12;
/** Digits an amount keeps before it is rounded, as many as a cell: a price that was turned into another unit carries noise. */
const AMOUNT_DIGITS = 15;

/**
 * An amount in whole cents, rounded half away from zero in decimal: 1.005 is 101 cents.
 *
 * @param amount whole money, from -1e12 to 1e12
 * @param digits behind the point, where the smallest unit of the currency is no cent
 * @throws Problem when the amount is not finite or beyond the range
 * @example toCents(12.34) => 1234; 12.34 × 100
 *
 * Source: commercial rounding, common practice; decimal arithmetic by big.js
 */
export function toCents(amount: number, name = "amount", digits = CENT_DIGITS): number {
  return plainCents(amount * 10 ** digits) ?? centsOf(new Big(requireFinite(name, amount)), name, digits);
}

/**
 * Whole cents as money: 101 is 1.01.
 *
 * @example fromCents(1234) => 12.34; 1234 / 100
 */
export function fromCents(cents: number, digits = CENT_DIGITS): number {
  return cents / 10 ** digits;
}

/**
 * An amount rounded to the cent, half away from zero.
 *
 * @example roundCents(1.005) => 1.01; half a cent goes up, as written
 */
export function roundCents(amount: number, name = "amount"): number {
  return roundMoney(amount, CENT_DIGITS, name);
}

/**
 * An amount rounded to the smallest unit of its currency, half away from zero.
 *
 * @param digits behind the point: 0 for the yen, 3 for the dinar of Kuwait
 * @example roundMoney(780.5, 0) => 781; half a yen goes up
 */
export function roundMoney(amount: number, digits: number, name = "amount"): number {
  return fromCents(toCents(amount, name, digits), digits);
}

/**
 * The cents of one line: quantity × price, rounded half away from zero. 7 × 1.115 is 781 cents, never 780.
 *
 * @param quantity any finite number; noise beyond the twelfth digit is dropped
 * @param price whole money per unit, any finite number; noise beyond the fifteenth digit of the amount is dropped
 * @throws Problem when the amount is beyond 1e12
 * @example lineCents(7, 1.115) => 781; 7 × 1.115 = 7.805
 */
export function lineCents(
  quantity: number,
  price: number,
  name = "quantity times price",
  digits = CENT_DIGITS,
): number {
  const near = plainCents(quantity * price * 10 ** digits);
  if (near !== undefined) return near;
  const clean = new Big(requireFinite(name, quantity)).prec(QUANTITY_DIGITS, Big.roundHalfUp);
  return centsOf(clean.times(requireFinite(name, price)), name, digits);
}

/**
 * Whole cents added up.
 *
 * @example sumCents([105, 250]) => 355; 105 + 250
 */
export function sumCents(cents: readonly number[]): number {
  return cents.reduce((total, each) => total + each, 0);
}

/** Far from half a cent, and small enough for the noise not to matter, rounding needs no decimals: ten times faster. */
function plainCents(rough: number): number | undefined {
  return Math.abs(rough) < 1e7 && Math.abs(Math.abs(rough % 1) - 0.5) > 1e-4 ? Math.round(rough) + 0 : undefined;
}

function centsOf(amount: Big, name: string, digits: number): number {
  const times = 10 ** digits;
  const cents = Number(amount.prec(AMOUNT_DIGITS, Big.roundHalfUp).times(times).round(0, Big.roundHalfUp));
  if (Math.abs(cents) > LARGEST_AMOUNT * times) {
    throw invalid(`${name} must lie within ${plain(LARGEST_AMOUNT)} of zero; got ${plain(cents / times)}`);
  }
  return cents;
}
