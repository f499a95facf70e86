import { invalid } from "../problem";
import { findUnit } from "./units";

/** One number of a quantity as it was written, with what stands before and behind it. */
export interface WrittenTerm {
  readonly operator: "+" | "-" | undefined;
  /** Whether spaces stand on either side of the operator: `12 ft - 6 in`, not `2'-6"`. */
  readonly apart: boolean;
  readonly value: number;
  /** The number's own letters: "2 1/2". */
  readonly number: string;
  readonly unit: string | null;
}

const LONGEST = 200;
const FRACTION_MARKS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

// Sticky and without nested repetition over the same characters: reading stays linear in the length of the text.
const SPACES = /\s*/y;
const OPERATOR = /[+-]|and\b|&/iy;
/** 1,250.5 and 1.250,5 (never 0,750, whose comma is a decimal one), 2.5 and 2,5, .5; each may end in an exponent. */
const NUMBER =
  /(?:(?!0)\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d,])|(?!0)\d{1,3}(?:\.\d{3})+,\d+|\d+(?:[.,]\d+)?|\.\d+)(?:e[+-]?\d{1,3})?/iy;
const PART_BEHIND_WHOLE = /(?:\s+|-)(\d{1,4})\s?\/\s?(\d{1,4})/y;
const PART_ALONE = /(\d{1,4})\s?\/\s?(\d{1,4})/y;
const COMMA_BEHIND_UNIT = /\s*,(?=\s*\d)/y;
const POWER = String.raw`(?:\^?[23](?![\dA-Za-z])|[²³])?`;
const WORD = String.raw`[A-Za-z°]+${POWER}(?:/[A-Za-z]+${POWER})?`;
const WORDS = new RegExp(String.raw`${WORD}(?:\s+${WORD}){0,3}\.?`, "y");

/**
 * Splits a quantity into its terms: `2'-6 1/2" + 45 cm` has three. Throws a problem that names `name` and shows by
 * `examples` how one is written.
 *
 * @example readTerms("2 ft 6 in", "length", () => "").map(({ value }) => value) => [2, 6]; as written
 */
export function readTerms(raw: string, name: string, examples: () => string): WrittenTerm[] {
  if (raw.length > LONGEST) throw invalid(`${name} is too long: a quantity has at most ${LONGEST} characters`);
  const text = tidy(raw);
  const terms: WrittenTerm[] = [];
  let at = 0;

  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const match = pattern.exec(text);
    if (match) at = pattern.lastIndex;
    return match;
  };
  const confusing = (): never => {
    const rest = text.slice(at, at + 20);
    throw invalid(
      `${name} "${typed(raw)}" is not understood${rest ? ` at "${rest}"` : ""}; write it like ${examples()}`,
    );
  };

  while (at < text.length) {
    const spaceBefore = (take(SPACES)?.[0].length ?? 0) > 0;
    const operator = take(OPERATOR)?.[0];
    const spaceBehind = (take(SPACES)?.[0].length ?? 0) > 0;
    if (at >= text.length) confusing();
    const start = at;
    const value = readNumber(take) ?? confusing();
    const number = text.slice(start, at);
    const unit = readUnit(take, () => text.slice(at));
    if (unit !== null && findUnit(unit) === null) {
      throw invalid(`${name} "${typed(raw)}": unit "${unit.slice(0, 40)}" is not known; write it like ${examples()}`);
    }
    terms.push({
      operator: operator === undefined ? undefined : operator === "-" ? "-" : "+",
      apart: spaceBefore || spaceBehind,
      value,
      number,
      unit,
    });
    if (unit !== null) take(COMMA_BEHIND_UNIT);
    take(SPACES);
  }
  if (terms.length === 0) confusing();
  return terms;
}

/** What was typed, as far as a sentence has room for it. */
export function typed(raw: string): string {
  return raw.trim().slice(0, 60);
}

type Take = (pattern: RegExp) => RegExpExecArray | null;

function readNumber(take: Take): number | null {
  const part = take(PART_ALONE);
  if (part) return Number(part[1]) / Number(part[2]);
  const match = take(NUMBER);
  if (!match) return null;
  const whole = Number(digits(match[0]));
  if (!Number.isInteger(whole)) return whole;
  const behind = take(PART_BEHIND_WHOLE);
  return behind ? whole + Number(behind[1]) / Number(behind[2]) : whole;
}

/** A number as JavaScript writes it: a comma groups thousands, or is the decimal comma. */
function digits(written: string): string {
  if (isGrouped(written)) return written.replace(/,/g, "");
  return /\..*,/.test(written) ? written.replace(/\./g, "").replace(",", ".") : written.replace(",", ".");
}

/** Whether commas of a number group thousands. */
export function isGrouped(written: string): boolean {
  return /^(?!0)\d{1,3}(,\d{3})+(?![\d,])/.test(written);
}

/** The longest run of words that names a unit: "sq ft", but only "ft" of "ft and"; else the first word, known or not. */
function readUnit(take: Take, rest: () => string): string | null {
  take(SPACES);
  const mark = take(/['"]/y);
  if (mark) return mark[0];
  const upcoming = rest();
  WORDS.lastIndex = 0;
  const found = WORDS.exec(upcoming)?.[0].replace(/\.$/, "");
  if (!found || /^and\b/i.test(found)) return null;
  const words = found.split(/\s+/);
  for (let count = words.length; count > 0; count--) {
    const candidate = words.slice(0, count).join(" ");
    if (!findUnit(candidate)) continue;
    const written = new RegExp(words.slice(0, count).map(escape).join("\\s+") + "\\.?", "y");
    take(written);
    return candidate;
  }
  return words[0] ?? found;
}

function escape(word: string): string {
  return word.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
}

function tidy(raw: string): string {
  return raw
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (mark) => ` ${FRACTION_MARKS[mark] ?? ""}`)
    .replace(/\u00a0|\u202f/g, " ")
    .replace(/[−–]/g, "-")
    .replace(/[′’‘´`]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .trim();
}
