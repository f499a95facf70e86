import { invalid } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { blankJob, FACTS, type Job } from "../../job/facts";
import type { Fact, TableFact } from "../../job/facts/fact";
import { BETWEEN, HANDED_OVER, rowsOfText } from "../../job/facts/rowsText";
import { factCalled, valueSaid } from "../../job/facts/saying";
import { toSi } from "../../job/facts/units";
import { isBlank } from "../contract/raw";
import type { FactRow } from "./arguments";

const NOT_KNOWN = /^(?:don'?t know|do not know|unknown|not known|\?+)$/i;

/** A job of which only what the rows say is typed. */
export function jobOf(rows: readonly FactRow[], system: UnitSystem): Job {
  const typed: Record<string, unknown> = { ...blankJob(system) };
  for (const { at: row, name, value } of rows) {
    const at = `${row} (${name.slice(0, 40)})`;
    const key = factCalled(name);
    if (key === undefined)
      throw invalid(`${row}: "${name.slice(0, 40)}" is no fact; fall, run, lip, water, soil and way in are`);
    if (isBlank(value)) continue;
    if (typeof value !== "number" && typeof value !== "string")
      throw invalid(`${at}: the value must be a number or text`);
    if (typeof value === "string" && NOT_KNOWN.test(value.trim().replace(/[’]/g, "'"))) continue;
    const fact: Fact = FACTS[key];
    if (key === "lips" && name.trim() !== FACTS.lips.name)
      typed.lips = [{ width: valueSaid(FACTS.lips.columns.width, value, at, system) }];
    else if (fact.type !== "table") typed[key] = valueSaid(fact, value, at, system);
    // Of the other tables the sheet of facts says only how many rows they have.
    else if (HANDED_OVER.has(key) && String(value).includes(BETWEEN))
      typed[key] = rowsOfText(key, String(value), system);
  }
  return typed as unknown as Job;
}

/** Rows of one of the workbook's tables; a cell that does not hold what belongs there counts as blank. */
export function tableOf(
  table: TableFact,
  rows: readonly (readonly unknown[])[],
  system: UnitSystem,
): Record<string, unknown>[] {
  const columns = Object.entries(table.columns);
  return rows.flatMap((cells) => {
    const row = columns.flatMap(([key, { at, ...fact }]): [string, unknown][] => {
      const cell = cells[at - 1];
      if (fact.type !== "number") return typeof cell === "string" && cell.trim() !== "" ? [[key, cell]] : [];
      return typeof cell === "number" && Number.isFinite(cell) ? [[key, toSi(fact.kind, cell, system)]] : [];
    });
    return row.length > 0 ? [Object.fromEntries(row)] : [];
  });
}
