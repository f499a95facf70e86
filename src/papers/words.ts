import { minorDigits } from "../calc/money/currency";
import type { UnitSystem } from "../calc/quantity/unitSystem";

/** How papers write numbers, money and days: American in US units, international English in SI. */
export interface Words {
  readonly system: UnitSystem;
  readonly money: (value: number | undefined) => string;
  /** Money in whole units, for what is no price but a range of them. */
  readonly rounded: (value: number) => string;
  readonly share: (value: number | undefined) => string;
  readonly day: (serial: number | undefined) => string;
  readonly figure: (value: number | undefined, decimals?: number) => string;
}

/** What stands where a value is not known yet: a line to write on. */
export const TO_FILL = "______";

export function wordsFor(system: UnitSystem, currency: string): Words {
  const figure = (value: number | undefined, decimals = 2): string =>
    value === undefined
      ? TO_FILL
      : value.toLocaleString("en-US", { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  // A sign stands before the amount, a word apart from it.
  const mark = /\p{L}$/u.test(currency) ? `${currency} ` : currency;
  const digits = minorDigits(currency);
  return {
    system,
    figure,
    money: (value) =>
      value === undefined ? TO_FILL : `${value < 0 ? "−" : ""}${mark}${figure(Math.abs(value), digits)}`,
    rounded: (value) => `${mark}${figure(value, 0)}`,
    share: (value) => (value === undefined ? TO_FILL : `${Number((100 * value).toFixed(1))}%`),
    day: (serial) => (serial === undefined ? TO_FILL : dayText(serial, system)),
  };
}

/** Day of a workbook: days since 30 December 1899. */
function dayText(serial: number, system: UnitSystem): string {
  const day = new Date(Date.UTC(1899, 11, 30) + Math.round(serial) * 86_400_000);
  const options = { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" } as const;
  return new Intl.DateTimeFormat(system === "US" ? "en-US" : "en-GB", options).format(day);
}
