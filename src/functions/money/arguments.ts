import { invalid } from "../../calc/problem";
import type { Argument } from "../contract/argument";
import type { Range } from "../contract/range";
import { isBlank } from "../contract/raw";
import { minorDigits } from "../../calc/money/currency";
import { optional } from "../contract/optional";
import { number, text } from "../contract/scalars";

/** Quantities and prices on papers; a percent or a date in the wrong column falls outside. */
export const PAPER_RANGE: Range = { min: -1e9, max: 1e9 };

/** A number or code on a paper (order, item, ticket); some hosts pass a blank cell of a range as 0. */
export function code(about: string): Argument<string> {
  const any = text(about, { longest: 100 });
  return {
    ...any,
    blank: (raw) => isBlank(raw) || raw === 0,
    read: (raw, label, system) => any.read(raw === 0 ? "" : raw, label, system),
  };
}

/** A text and no number of digits: a blank cell would come as 0, which is what the yen has. */
export const currency = optional(code("Currency: ISO 4217 code or sign, such as JPY"), "one with cents");

/** Digits behind the point of amounts in a currency that was given, or was not. */
export function digitsOf(said: string | undefined): number {
  return minorDigits(said ?? "");
}

/** 1 January 1900 and 31 December 2199 as the spreadsheet counts days. */
const DAYS = { first: 1, last: 109_574 } as const;
const UNIX_EPOCH_DAY = 25_569;
const MILLISECONDS = 86_400_000;

/** A day: a date cell, or text such as 2031-05-28. Arrives as the day number of the spreadsheet. */
export function day(about: string): Argument<number> {
  const serial = number(about, { above: 0, max: DAYS.last });
  return {
    ...serial,
    rule: () => "date cell or yyyy-mm-dd",
    read(raw, label, system) {
      if (typeof raw !== "string") return serial.read(raw, label, system);
      const written = raw.trim();
      const time = /^\d{4}-\d{2}-\d{2}$/.test(written) ? Date.parse(written) : NaN;
      // 31 February must not pass for 3 March.
      const exists = !Number.isNaN(time) && new Date(time).toISOString().startsWith(written);
      const serialDay = time / MILLISECONDS + UNIX_EPOCH_DAY;
      if (exists && serialDay >= DAYS.first && serialDay <= DAYS.last) return serialDay;
      throw invalid(`${label} must be a date cell or text like 2031-05-28; got "${written.slice(0, 40)}"`);
    },
  };
}
