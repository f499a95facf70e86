import { FACTS, type FactKey, type Job } from "../../job/facts";
import type { CellFact, TableFact } from "../../job/facts/fact";
import { fromSi } from "../../job/facts/units";
import type { CellValue } from "../model";
import { placeOf, tablePlaces, type Names } from "./places";

/** Some of a job's facts. */
export type SomeFacts = { readonly [K in Exclude<FactKey, "system">]?: Job[K] | undefined };

/**
 * What to type into which cells of a workbook so that it holds these facts: the cells of facts that are undefined, and the
 * rows of tables below the last one given, are emptied; a cell that a rule fills keeps its rule unless a value is given.
 *
 * @param digits significant digits that are typed, as a person would; all where left out
 * @throws MissingName where the workbook lacks a name
 */
export function cellsToType(
  facts: SomeFacts,
  { system, names, digits }: { system: Job["system"]; names: Names; digits?: number },
): Map<string, CellValue> {
  const typed = new Map<string, CellValue>();
  const written = (fact: CellFact, value: unknown): CellValue => {
    if (value === undefined || value === null) return "";
    if (fact.type !== "number") return value as string;
    const number = fromSi(fact.kind, value as number, system);
    return digits === undefined ? number : Number(number.toPrecision(digits));
  };
  const typeTable = (table: TableFact, rows: readonly Readonly<Record<string, unknown>>[]): void => {
    for (const { key, fact, cell } of tablePlaces(table, names)) {
      if (fact.told) continue;
      for (let row = 0; row < table.rows; row++) {
        const value = rows[row]?.[key];
        if (fact.worked && value === undefined) continue;
        typed.set(cell(row), written(fact, value));
      }
    }
  };
  for (const [key, value] of Object.entries(facts)) {
    const fact = FACTS[key as FactKey];
    if (fact.type === "table") typeTable(fact, value as readonly Readonly<Record<string, unknown>>[]);
    else typed.set(placeOf(fact, names).cell, written(fact, value));
  }
  return typed;
}
