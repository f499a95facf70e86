import { isGrouped, type WrittenTerm } from "./readTerms";
import { convert, isMetric, sameDimension } from "./units";

/** A number of a quantity with its sign and the unit it has, written or understood. */
export interface Term {
  readonly value: number;
  readonly unit: string | null;
}

/** How a text is refused. */
export interface Refuse {
  /** `piece` of the text can mean any of `readings`, each of them a way to write it. */
  unclear(piece: string, readings: readonly string[]): never;
  /** `piece` looks like a range; `difference` is how to subtract. */
  range(piece: string, difference: string): never;
  sideBySide(): never;
}

/**
 * Gives terms their signs and units, as a tape says them: a hyphen without spaces joins feet and inches, a minus has
 * spaces around it, and a bare number behind feet is inches. What can be read in two ways is refused with both.
 * `unit` is what a number without one is taken in.
 */
export function joinTerms(written: readonly WrittenTerm[], unit: string | undefined, refuse: Refuse): Term[] {
  const terms: Term[] = [];
  let sign = 1;
  let before: WrittenTerm | undefined;
  for (const term of written) {
    refuseUnclearComma(term, unit, refuse);
    const joined = before && continued(before, term, unit, refuse);
    if (joined === undefined && term.operator !== undefined) sign = term.operator === "-" ? -1 : 1;
    before = { ...term, unit: joined ?? term.unit };
    terms.push({ value: sign * term.value, unit: before.unit });
  }
  return terms;
}

/** The unit of a term that continues the one before it, as 6 in continue 2 ft; undefined for one that starts anew. */
function continued(before: WrittenTerm, term: WrittenTerm, unit: string | undefined, refuse: Refuse) {
  if (term.unit === null && isFeet(before.unit)) return bareBehindFeet(before, term, refuse);
  if (term.operator === "+") return undefined;
  // 2' - 6" is how drawings write it; 12 ft - 6 in takes six inches off.
  const joins = !term.apart || term.operator === undefined || before.unit === "'";
  if (joins && isSmaller(term.unit, before.unit)) return term.unit ?? undefined;
  if (term.operator === "-" && term.apart) return undefined;
  return refuseUnjoined(before, term, unit, refuse);
}

/** A bare number behind feet is inches, unless it may be something else. */
function bareBehindFeet(before: WrittenTerm, term: WrittenTerm, refuse: Refuse): string {
  const piece = asWritten(before, term);
  const inches = { ...term, unit: '"' };
  const added = [inches, { ...term, unit: "'" }].map((other) => sum(before, other));
  if (term.operator === "+") refuse.unclear(piece, added);
  if (term.operator === "-" && term.apart && before.unit !== "'") {
    refuse.unclear(piece, [tape(before, term), asWritten({ ...before, unit: "ft" }, { ...term, unit: "in" })]);
  }
  if (term.value < 12) return '"';
  // 9'14 is a slip for 9.14 ft as likely as it is 9 ft and 14 in.
  const decimal = [before, term].every(({ number }) => /^\d+$/.test(number))
    ? `${before.number}.${term.number} ft`
    : "";
  return refuse.unclear(piece, [sum(before, inches), decimal || sum(before, { ...term, unit: "'" })]);
}

/** Two numbers with nothing or a hyphen between them that feet and inches do not explain. */
function refuseUnjoined(before: WrittenTerm, term: WrittenTerm, unit: string | undefined, refuse: Refuse): never {
  const piece = asWritten(before, term);
  const bothIn = before.unit ?? term.unit;
  const first = { ...before, unit: bothIn };
  const apart = { ...term, unit: term.unit ?? bothIn, apart: true };
  const isLength = unit !== undefined && sameDimension(unit, "ft");
  const bare = before.unit === null && (term.unit === null || isInches(term.unit));
  if (isLength && (bare || (isFeet(before.unit) && isFeet(term.unit))) && tapeCanSay(before, term)) {
    refuse.unclear(piece, [tape(before, term), term.operator === "-" ? asWritten(first, apart) : sum(first, apart)]);
  }
  if (term.operator === "-") refuse.range(piece, asWritten(first, apart));
  // 2 m 80 is two meters eighty to a mason, and nothing to anybody else.
  if (before.unit !== null && sameUnit(before.unit, "m") && /^\d\d$/.test(term.number)) {
    refuse.unclear(piece, [`${before.number}.${term.number} m`, sum(first, apart)]);
  }
  return refuse.sideBySide();
}

function tapeCanSay(feet: WrittenTerm, inches: WrittenTerm): boolean {
  return Number.isInteger(feet.value) && inches.value < 12;
}

/** Beside metric units both customs of the comma are at home: 1,250 m may be more than a thousand meters, or one. */
function refuseUnclearComma({ number, unit }: WrittenTerm, cellUnit: string | undefined, refuse: Refuse): void {
  const meant = unit ?? cellUnit;
  if (meant === undefined || !/^\d+,\d+$/.test(number) || !isGrouped(number) || !isMetric(meant)) return;
  const readings = [number.replace(",", ""), number.replace(",", ".")];
  refuse.unclear(
    number + unitBehind(unit),
    readings.map((reading) => reading + unitBehind(unit)),
  );
}

/** `9'-4"`, which leaves nothing open. */
function tape(feet: WrittenTerm, inches: WrittenTerm): string {
  return `${feet.number}'-${inches.number}"`;
}

function sum(first: WrittenTerm, second: WrittenTerm): string {
  return asWritten(first, { ...second, operator: "+", apart: true });
}

function asWritten(first: WrittenTerm, { number, unit, operator, apart }: WrittenTerm): string {
  const gap = apart ? " " : "";
  return first.number + unitBehind(first.unit) + gap + (operator ? operator + gap : "") + number + unitBehind(unit);
}

function unitBehind(unit: string | null): string {
  return unit === null || /^['"]$/.test(unit) ? (unit ?? "") : ` ${unit}`;
}

function isFeet(unit: string | null): boolean {
  return unit !== null && sameUnit(unit, "ft");
}

function isInches(unit: string | null): boolean {
  return unit !== null && sameUnit(unit, "in");
}

function sameUnit(a: string, b: string): boolean {
  return sameDimension(a, b) && convert(1, a, b) === 1;
}

/** Whether a term in `unit` may follow one in `before` without a plus: 6 in behind 2 ft, never 6 ft behind 2 ft. */
function isSmaller(unit: string | null, before: string | null): boolean {
  return unit !== null && before !== null && sameDimension(unit, before) && convert(1, unit, before) < 1;
}
