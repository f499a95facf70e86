import { kindOf } from "../../calc/quantity/kinds";
import { defaultUnit, isMeasure } from "../../calc/quantity/measures";
import { plain } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS, type FactKey } from "../../job/facts";
import type { CellFact, NumberFact, SingleFact } from "../../job/facts/fact";
import { inSystem, unitOf } from "../../job/facts/units";
import { cellAddress } from "./address";

/** The sheet that holds every fact, one in a row. */
export const FACTS_SHEET = "Facts";
/** The row of its first fact. */
export const FIRST_FACT = 17;

/** Its columns; those from `least` on are for formulas to read. */
export const COLUMN = {
  label: 1,
  yours: 2,
  company: 3,
  assumed: 4,
  used: 5,
  unit: 6,
  state: 7,
  low: 8,
  high: 9,
  reason: 10,
  place: 11,
  confirmed: 12,
  least: 13,
  most: 14,
  takes: 15,
  note: 16,
  because: 17,
  shipped: 18,
  read: 19,
  sheet: 20,
  needed: 21,
  missing: 22,
  says: 23,
  days: 24,
  own: 25,
  fault: 26,
  called: 27,
  wrongly: 28,
  key: 29,
} as const;

const KEYS = Object.keys(FACTS) as FactKey[];
/** The row of its last fact. */
export const LAST_FACT = FIRST_FACT + KEYS.length - 1;
const ROWS: ReadonlyMap<string, number> = new Map(KEYS.map((key, index) => [FACTS[key].name, FIRST_FACT + index]));

/** The row of a fact on the sheet of facts, by its defined name. */
export function factRow(name: string): number {
  const row = ROWS.get(name);
  if (row === undefined) throw new Error(`there is no fact ${name}`);
  return row;
}

/** A cell of a fact on that sheet, as a formula reads it: "Facts!E17". */
export function factCell(name: string, column: keyof typeof COLUMN): string {
  return `${FACTS_SHEET}!${cellAddress(factRow(name), COLUMN[column])}`;
}

/** The fact that has a cell of this name to itself. */
export function singleFact(name: string | undefined): { readonly key: FactKey; readonly fact: SingleFact } | undefined {
  const key = KEYS.find((one) => FACTS[one].name === name);
  if (key === undefined || FACTS[key].type === "table") return undefined;
  return { key, fact: FACTS[key] as SingleFact };
}

/** Whether a text in its cell is read as a tape says it. */
export function readsTape(fact: CellFact): fact is NumberFact {
  return fact.type === "number" && isMeasure(fact.kind);
}

/** What a cell takes, in a few words: "0.5 to 1000 ft, like 3'-2"". */
export function takes(fact: CellFact, system: UnitSystem): string {
  if (fact.type === "text") return "a text";
  if (fact.type === "choice") return "one of its list";
  const { kind } = fact;
  if (kind === "day") return "a day";
  const share = kind === "share";
  const [least, most] = inSystem(fact.range, system);
  const bound = (value: number): string => (share ? `${plain(Number((value * 100).toPrecision(12)))}%` : plain(value));
  const unit = unitOf(kind, system);
  const range = `${bound(least)} to ${bound(most)}${unit === "%" ? "%" : unit && ` ${unit}`}`;
  const [example] = (isMeasure(kind) ? kindOf(defaultUnit(kind, system))?.examples : undefined)?.split(/, | or /) ?? [];
  return `${fact.whole ? "a whole number, " : ""}${range}${share ? ", like 8%" : example ? `, like ${example}` : ""}`;
}
