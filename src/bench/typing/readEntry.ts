import { plain, Problem } from "../../calc/problem";
import { kindOf } from "../../calc/quantity/kinds";
import { defaultUnit, isMeasure } from "../../calc/quantity/measures";
import { readNumber, readQuantity } from "../../calc/quantity/readQuantity";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { NumberFact } from "../../job/facts/fact";
import { inSystem, unitOf } from "../../job/facts/units";

/** What a person's text means in a cell: a number or a text for it, or a sentence that refuses it. */
export type Entry = { readonly value: number | string } | { readonly refused: string };

/** The cell that a text is typed into. */
export interface EntryCell {
  /** What it measures, where it is one of the job's. */
  readonly fact: NumberFact | undefined;
  readonly system: UnitSystem | undefined;
  /** Its form of numbers: "0.0%". */
  readonly form: string | undefined;
}

/** The marks that tapes write behind feet and inches, behind a number. */
const TAPE_MARKS = /\d\s*['’′"”″]/;
const PERCENTAGE = /^([+-]?[\d.,\s]*\d[\d.,\s]*)(%?)$/;

/**
 * Reads what a person types into a cell: the language of tapes where the cell measures something, shares as spreadsheet
 * programs take them. Undefined where the grid's own reading is right.
 */
export function readEntry(text: string, { fact, system, form }: EntryCell): Entry | undefined {
  const typed = text.trim();
  if (typed === "" || typed.startsWith("=")) return undefined;
  if (fact && system) {
    const measured = readMeasured(typed, fact, system);
    if (measured) return measured;
  }
  if (form?.includes("%")) return readShare(typed);
  // The grid would take 9'4 for 94.
  return TAPE_MARKS.test(typed) ? { value: typed } : undefined;
}

function readMeasured(typed: string, fact: NumberFact, system: UnitSystem): Entry | undefined {
  const { kind } = fact;
  if (kind === "percent") {
    const share = PERCENTAGE.exec(typed);
    return share ? attempt(() => readNumber(share[1] ?? "", "the entry")) : undefined;
  }
  return isMeasure(kind) ? attempt(() => readQuantity(typed, defaultUnit(kind, system), "The entry")) : undefined;
}

function attempt(read: () => number): Entry {
  try {
    return { value: read() };
  } catch (error) {
    if (error instanceof Problem) return { refused: `${error.message}.` };
    throw error;
  }
}

/** A share as spreadsheet programs take it: 8 and 8% are 8 %, and so is 0.08. */
function readShare(typed: string): Entry | undefined {
  const [, digits, sign] = PERCENTAGE.exec(typed) ?? [];
  if (digits === undefined) return undefined;
  try {
    const number = readNumber(digits, "The entry");
    return { value: sign === "%" || Math.abs(number) >= 1 ? Number((number / 100).toPrecision(15)) : number };
  } catch {
    return undefined;
  }
}

/** Why a number is refused that a cell's rule does not take: what was typed, what would be right, and an example. */
export function outOfRange(typed: string, fact: NumberFact, system: UnitSystem): string {
  const [least, most] = inSystem(fact.range, system);
  const share = fact.kind === "share";
  const bound = (value: number): string => (share ? `${plain(Number((value * 100).toPrecision(12)))}%` : plain(value));
  const unit = unitOf(fact.kind, system);
  const range = `${bound(least)} to ${bound(most)}${unit ? ` ${unit}` : ""}`;
  const examples = isMeasure(fact.kind) ? kindOf(defaultUnit(fact.kind, system))?.examples : undefined;
  const like = share ? "8, 8% or 0.08" : examples;
  const whole = fact.whole ? "a whole number, " : "";
  return `"${typed}" is not taken here; this cell takes ${whole}${range}${like ? `, written like ${like}` : ""}.`;
}
