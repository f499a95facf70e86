import type { FactKey } from "../../job/facts";
import { FACTS } from "../../job/facts";
import type { TableFact } from "../../job/facts/fact";
import { toSi } from "../../job/facts/units";
import { dateOf } from "../../calc/quantity/dateSerial";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FileRefusal } from "../file/refusal";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";
import { tablePlaces } from "../jobCells/places";
import { unitsHeld } from "../unitsHeld";

/** A cell that would change. */
export interface CellChange {
  /** "Rates!D7" */
  readonly cell: string;
  readonly from: CellValue;
  readonly to: CellValue;
}

/** One difference between a job and the company's book, which a person takes or leaves as a whole. */
export interface Difference {
  readonly name: string;
  /** "price 4.15 → 4.40" */
  readonly words: string;
  readonly cells: readonly CellChange[];
}

/** What differs, and what cannot be compared, in sentences. */
export interface Compared {
  readonly differences: readonly Difference[];
  readonly left: readonly string[];
}

/** The unit system of a job; throws a sentence for a file that is none. */
export function jobSystem(fileName: string, { names, named }: Recalculated): UnitSystem {
  const said = named("Units")?.[0]?.[0];
  if ((said === "US" || said === "SI") && names.has(FACTS.prices.name)) return said;
  const what = names.has("BookUnits") ? "is a company book, not a job" : "is not a job of Rillwright";
  throw new FileRefusal(`${fileName} ${what}: it has no price list to compare.`);
}

/** The rows of a job's table, in SI; what is in error, or no number where one belongs, is left out. */
export function heldRows<K extends FactKey>(key: K, workbook: Recalculated): Readonly<Record<string, unknown>>[] {
  const table = FACTS[key] as TableFact;
  const system = unitsHeld(workbook.named("Units"));
  const places = tablePlaces(table, workbook.names);
  const ranges = new Set(places.map(({ fact }) => fact.name ?? table.name));
  const shownBy = new Map([...ranges].map((name) => [name, workbook.named(name) ?? []]));
  const columns = places.map((place) => ({ ...place, shown: shownBy.get(place.fact.name ?? table.name) ?? [] }));
  const rows = Math.min(table.rows, Math.max(...columns.map(({ shown }) => shown.length)));
  return Array.from({ length: rows }, (_, row) =>
    Object.fromEntries(
      columns.flatMap(({ key: name, fact, shown }): [string, unknown][] => {
        const value = shown[row]?.[fact.at - 1] ?? "";
        if (value === "" || /^#[A-Z]/.test(String(value))) return [];
        if (fact.type !== "number") return [[name, String(value)]];
        return typeof value === "number" ? [[name, toSi(fact.kind, value, system)]] : [];
      }),
    ),
  );
}

/** What a cell holds now. */
export function heldIn(workbook: Recalculated, cell: string): CellValue {
  return workbook.cells(cell)?.[0]?.[0] ?? "";
}

/** Whether two values say the same: blank is nothing, and numbers differ by more than binary noise. */
export function sameValue(a: CellValue | undefined, b: CellValue | undefined): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= 1e-7 * Math.max(1, Math.abs(a));
  return (a ?? "") === (b ?? "");
}

const TITLES: Readonly<Record<string, string>> = {
  cost: "price",
  theirs: "supplier's code",
  kind: "cost kind",
  costKind: "cost kind",
  day: "price of",
  watts: "power",
};

/** "price 4.15 → 4.40" */
export function changeInWords(field: string, from: unknown, to: unknown): string {
  return `${TITLES[field] ?? field} ${inWords(field, from)} → ${inWords(field, to)}`;
}

function inWords(field: string, value: unknown): string {
  if (value === undefined || value === null || value === "") return "nothing";
  if (typeof value !== "number") return String(value);
  if (field === "cost" || field === "price") return moneyInWords(value);
  if (field === "waste") return `${Number((100 * value).toPrecision(6))}%`;
  return field === "day" ? (dateOf(Math.floor(value)) ?? String(value)) : String(Number(value.toPrecision(9)));
}

/** Cents always, parts of a cent where there are any. */
export function moneyInWords(value: number): string {
  return value.toLocaleString("en", { minimumFractionDigits: 2, maximumFractionDigits: 4, useGrouping: false });
}
