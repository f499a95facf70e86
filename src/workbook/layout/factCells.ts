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

/** Its columns; `yours` to `used` stand side by side as on each input's own sheet; `drafts` stands beside the printed sheet, and those from `least` on are for formulas to read. */
export const COLUMN = {
  label: 1,
  yours: 2,
  unit: 3,
  used: 4,
  assumed: 5,
  company: 6,
  state: 7,
  low: 8,
  likely: 9,
  high: 10,
  reason: 11,
  place: 12,
  confirmed: 13,
  drafts: 14,
  least: 15,
  most: 16,
  takes: 17,
  note: 18,
  because: 19,
  shipped: 20,
  read: 21,
  sheet: 22,
  needed: 23,
  missing: 24,
  says: 25,
  days: 26,
  own: 27,
  fault: 28,
  called: 29,
  wrongly: 30,
  key: 31,
  drafted: 32,
  standing: 33,
  said: 34,
  draft: 35,
  held: 41,
  letters: 42,
  top: 43,
} as const;

export type FactCells = Readonly<Record<keyof typeof COLUMN, string>>;

/** The cells of a row of the sheet, by their columns; from another sheet as "Facts!B17". */
export function cellsIn(row: number, from?: string): FactCells {
  const sheet = from === undefined || from === FACTS_SHEET ? "" : `${FACTS_SHEET}!`;
  const entries = Object.entries(COLUMN).map(([key, column]) => [key, `${sheet}${cellAddress(row, column)}`]);
  return Object.fromEntries(entries) as FactCells;
}

/** Tables that a draft may be written into, and the columns, from the first, whose numbers tell whether it still stands. */
export const MARKED_TABLES: { readonly [K in FactKey]?: number } = {
  lips: 2,
  pools: 2,
  beds: 3,
  route: 2,
  riser: 2,
  pumps: 14,
  basinParts: 5,
  rolls: 4,
};

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
