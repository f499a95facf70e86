import { invalid } from "../problem";
import { convert, findUnit, requireUnit, sameDimension } from "./units";

/** One number of a quantity with the unit that stood behind it, sign included. */
export interface Term {
  readonly value: number;
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
const NUMBER = /(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d,])|\d+(?:[.,]\d+)?|\.\d+)(?:e[+-]?\d{1,3})?/iy;
const PART_BEHIND_WHOLE = /(?:\s+|-)(\d{1,4})\/(\d{1,4})/y;
const PART_ALONE = /(\d{1,4})\/(\d{1,4})/y;
const POWER = String.raw`(?:\^?[23](?![\dA-Za-z])|[²³])?`;
const WORD = String.raw`[A-Za-z°]+${POWER}(?:/[A-Za-z]+${POWER})?`;
const WORDS = new RegExp(String.raw`${WORD}(?:\s+${WORD}){0,3}\.?`, "y");

/**
 * Splits a quantity into its terms: `2'-6 1/2" + 45 cm` has three. Throws a problem that names `name` and shows by
 * `examples` how one is written.
 */
export function readTerms(raw: string, name: string, examples: () => string): Term[] {
  if (raw.length > LONGEST) throw invalid(`${name} is too long: a quantity has at most ${LONGEST} characters`);
  const text = tidy(raw);
  const terms: Term[] = [];
  let at = 0;
  let sign = 1;

  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const match = pattern.exec(text);
    if (match) at = pattern.lastIndex;
    return match;
  };
  const confusing = (): never => {
    const rest = text.slice(at, at + 20);
    throw invalid(
      `${name} "${raw.trim().slice(0, 60)}" is not understood${rest ? ` at "${rest}"` : ""}; write it like ${examples()}`,
    );
  };

  while (at < text.length) {
    const spaceBefore = (take(SPACES)?.[0].length ?? 0) > 0;
    const operator = take(OPERATOR)?.[0];
    const spaceBehind = (take(SPACES)?.[0].length ?? 0) > 0;
    if (at >= text.length) confusing();
    const value = readNumber(take) ?? confusing();
    let unit = readUnit(take, () => text.slice(at), name);
    const previous = terms[terms.length - 1];
    // A bare number behind a feet mark is inches: 2' 6.
    if (unit === null && previous?.unit === "'") unit = '"';
    const joiner =
      operator === "-" &&
      previous !== undefined &&
      unit !== null &&
      (previous.unit === "'" || (!spaceBefore && !spaceBehind)) &&
      isSmaller(unit, previous.unit);
    if (operator !== undefined && !joiner) sign = operator === "-" ? -1 : 1;
    else if (previous !== undefined && !joiner && !isSmaller(unit, previous.unit)) {
      throw invalid(`${name} "${raw.trim().slice(0, 60)}" has two numbers side by side; write + between them to add`);
    }
    terms.push({ value: sign * value, unit });
    take(SPACES);
  }
  if (terms.length === 0) confusing();
  return terms;
}

type Take = (pattern: RegExp) => RegExpExecArray | null;

function readNumber(take: Take): number | null {
  const part = take(PART_ALONE);
  if (part) return Number(part[1]) / Number(part[2]);
  const match = take(NUMBER);
  if (!match) return null;
  const digits = /^\d{1,3}(,\d{3})+/.test(match[0]) ? match[0].replace(/,/g, "") : match[0].replace(",", ".");
  const whole = Number(digits);
  if (!Number.isInteger(whole)) return whole;
  const behind = take(PART_BEHIND_WHOLE);
  return behind ? whole + Number(behind[1]) / Number(behind[2]) : whole;
}

/** The longest run of words that names a unit: "sq ft", but only "ft" of "ft and". */
function readUnit(take: Take, rest: () => string, name: string): string | null {
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
  requireUnit(words[0] ?? found, name);
  return null;
}

function escape(word: string): string {
  return word.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
}

/** Whether a term in `unit` may follow one in `before` without a plus: 6 in behind 2 ft, never 6 ft behind 2 ft. */
function isSmaller(unit: string | null, before: string | null): boolean {
  return unit !== null && before !== null && sameDimension(unit, before) && convert(1, unit, before) < 1;
}

function tidy(raw: string): string {
  return raw
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (mark) => ` ${FRACTION_MARKS[mark] ?? ""}`)
    .replace(/\u00a0|\u202f/g, " ")
    .replace(/[−–]/g, "-")
    .replace(/[′’‘]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .trim();
}
