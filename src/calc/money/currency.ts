import { CURRENCY_CODES, MINOR_UNITS } from "../tables/currencies";
import { CENT_DIGITS } from "./cents";

/**
 * Whether a text is the code of a currency, as ISO 4217 has them.
 *
 * @param code as typed
 *
 * @example isCurrency("NZD") => true; ISO 4217 list one
 */
export function isCurrency(code: string): boolean {
  return CURRENCY_CODES.includes(code);
}

/**
 * Whether a text looks like the code of a currency and is none: three capital letters that ISO 4217 does not know. What
 * else a company writes beside its amounts is a sign of its own.
 *
 * @param said what stands beside amounts
 *
 * @example isWrongCode("UDS") => true; ISO 4217 list one has USD, and no UDS
 */
export function isWrongCode(said: string): boolean {
  return /^[A-Z]{3}$/.test(said) && !isCurrency(said);
}

/**
 * How a currency is written beside an amount so that it is taken for no other: by its sign, or by its code where it has
 * none of its own (Unicode CLDR, English).
 *
 * @param code ISO 4217: CAD
 * @returns its sign in English
 *
 * @example currencySign("CAD") => "CA$"; Unicode CLDR
 */
export function currencySign(code: string): string {
  const parts = formatOf(code).formatToParts(0);
  return parts.find(({ type }) => type === "currency")?.value ?? code;
}

/**
 * Digits behind the point of a currency's amounts (ISO 4217): 2 for most, none for the yen, 3 for the dinar of Kuwait.
 *
 * @param said its code, or the sign that a job has for it
 *
 * @example minorDigits("KWD") => 3; ISO 4217 list one
 */
export function minorDigits(said: string): number {
  return DIGITS.get(said.toUpperCase()) ?? CENT_DIGITS;
}

/** By code and by sign. The platform's own digits are those that people use: it shows no cents of the forint, which has them. */
const DIGITS: ReadonlyMap<string, number> = new Map(
  MINOR_UNITS.flatMap(({ digits, codes, signs }) => [...codes, ...signs].map((said) => [said, digits] as const)),
);

function formatOf(code: string): Intl.NumberFormat {
  return new Intl.NumberFormat("en-US", { style: "currency", currency: code });
}
