import { invalid } from "../../calc/problem";
import { FACTS, type FactKey, type Job } from "../facts";
import type { Fact, TableFact } from "../facts/fact";
import { follows, HANDED_OVER, ruledRows } from "../facts/rowsText";
import { factCalled, valueSaid } from "../facts/saying";

/** A fact that an option changes: its name, or of a table the name, the row and the column, like "LipTable 1 width". */
export interface ChangedFact {
  readonly at: string;
  readonly name: string;
  readonly value: number | string;
}

/**
 * Sheets whose facts no cost of the work follows from: answers that facts of Site were taken from, and what makes a price of a
 * cost. A margin may be a formula over what an option costs.
 */
const NO_WORK: readonly string[] = ["Start", "Price"];

/** Lines whose price the workbook takes from its own pumps and rolls. */
export const WORKED_PRICES: ReadonlySet<string> = new Set(["PUMP", "LINER"]);

/**
 * A job without what the workbook works out in its tables until somebody types over it, so that it follows from what an
 * option changes; and without the lists that no cost of the work comes from.
 */
export function followingJob(job: Job): Job {
  const held = Object.entries(FACTS as Readonly<Record<string, Fact>>).map(([key, fact]) => {
    const value = job[key as FactKey];
    if (key === "prices")
      return [
        key,
        job.prices.map((line) =>
          WORKED_PRICES.has(String(line.code).toUpperCase()) ? { ...line, cost: undefined } : line,
        ),
      ];
    if (fact.type !== "table" || key === "pumps") return [key, value];
    return [
      key,
      HANDED_OVER.has(key as FactKey)
        ? (value as readonly object[]).map((row, index) => unworked(fact, row, index))
        : [],
    ];
  });
  return { ...(Object.fromEntries(held) as unknown as Omit<Job, "system">), system: job.system, chosenOption: "A" };
}

function unworked(table: TableFact, row: object, index: number): object {
  if (index < ruledRows(table)) return {};
  return Object.fromEntries(Object.entries(row).filter(([column, value]) => !follows(table, column) && value !== null));
}

/** Whether the work follows from a fact. */
export function isOfWork({ sheet }: Fact): boolean {
  return !NO_WORK.includes(sheet);
}

/** The first change that no cost of the work follows from. */
export function idleChange(changes: readonly ChangedFact[]): ChangedFact | undefined {
  return changes.find(({ name }) => {
    const [key] = placeCalled(name) ?? [];
    return key !== undefined && !isOfWork(FACTS[key]);
  });
}

/** The job with some facts changed. Throws a `Problem` that says what no fact is, or what its value must be. */
export function withChanges(job: Job, changes: readonly ChangedFact[]): Job {
  const changed: Record<string, unknown> = { ...job };
  for (const { at, name, value } of changes) {
    const where = `${at} (${name.slice(0, 40)})`;
    const [key, cell] = placeCalled(name) ?? [];
    if (key === undefined)
      throw invalid(`${at}: "${name.slice(0, 40)}" is no fact; write its name, like BedWidth or Bed width`);
    const fact: Fact = FACTS[key];
    if (fact.type !== "table") {
      changed[key] = valueSaid(fact, value, where, job.system);
      continue;
    }
    if (!cell) throw invalid(`${where}: of a table write row and column, like LipTable 1 width`);
    const column = fact.columns[cell.column];
    if (!column) throw invalid(`${where}: its columns are ${Object.keys(fact.columns).join(", ")}`);
    if (!(cell.row >= 1 && cell.row <= fact.rows)) throw invalid(`${where}: its rows are 1 to ${fact.rows}`);
    const rows = [...(changed[key] as readonly object[])];
    while (rows.length < cell.row) rows.push({});
    rows[cell.row - 1] = { ...rows[cell.row - 1], [cell.column]: valueSaid(column, value, where, job.system) };
    changed[key] = rows;
  }
  return changed as unknown as Job;
}

/** Tables that an option may change, cell by cell. */
export const OPTION_TABLES: ReadonlySet<FactKey> = new Set<FactKey>([...HANDED_OVER, "pumps"]);

/** What is changed: a fact, or a cell of one of the tables that an option may change. */
function placeCalled(name: string): [FactKey, { row: number; column: string }?] | undefined {
  const [, table = "", row = "", column = ""] = /^\s*(\S.*?)\s+(\d+)\s+(\S+)\s*$/.exec(name) ?? [];
  const of = factCalled(table) ?? factCalled(`${table}Table`);
  if (of !== undefined && OPTION_TABLES.has(of)) {
    const columns = Object.keys((FACTS[of] as TableFact).columns);
    const said = columns.find((one) => one.toLowerCase() === column.toLowerCase());
    return [of, { row: Number(row), column: said ?? column }];
  }
  const key = factCalled(name);
  if (key === "lips") return [key, { row: 1, column: "width" }];
  return key === undefined ? undefined : [key];
}
