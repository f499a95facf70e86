import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS, type Job } from "../../job/facts";
import type { CellFact, TableFact } from "../../job/facts/fact";
import { inSystem, toSi } from "../../job/facts/units";
import { assemble } from "../assemble";
import { cellAddress } from "../layout/address";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";
import { sheets } from "../sheets";
import { placeOf, tablePlaces } from "./places";

/** A cell that holds something else than its fact. */
export interface WrongCell {
  /** "Site!B5" */
  readonly cell: string;
  readonly question: string;
  /** What it holds. */
  readonly shown: string;
}

/** What a workbook's input cells say, and which of them say nothing that can be read. */
export interface JobRead {
  readonly job: Job;
  readonly wrong: readonly WrongCell[];
}

/**
 * Reads the input cells of a calculated workbook, by their names, into a job. A cell that still holds the rule the workbook
 * came with is not typed.
 *
 * @throws MissingName where the workbook lacks a name
 */
export function readJob(workbook: Recalculated): JobRead {
  const system: UnitSystem = workbook.named("Units")?.[0]?.[0] === "SI" ? "SI" : "US";
  const rules = rulesOf(system);
  const wrong: WrongCell[] = [];
  const { formulas, names } = workbook;
  const shownBy = new Map<string, CellValue[][]>();
  const named = (name: string): CellValue[][] => {
    const shown = shownBy.get(name) ?? workbook.named(name) ?? [];
    shownBy.set(name, shown);
    return shown;
  };
  const read = (cell: string, fact: CellFact, shown: CellValue): unknown => {
    const value = valueOf(fact, shown, system);
    if (value === UNREADABLE) wrong.push({ cell, question: fact.question, shown: String(shown) });
    return value === UNREADABLE ? undefined : value;
  };
  const readTable = (table: TableFact): unknown[] => {
    const columns = tablePlaces(table, names).map(({ key, fact, cell }) => {
      const shown = named(fact.name ?? table.name);
      return { key, fact, cell, at: (row: number): CellValue => shown[row]?.[fact.at - 1] ?? "" };
    });
    const rows = Array.from({ length: Math.min(table.rows, rowsOf(table, named)) }, (_, row) => {
      const entries = columns.flatMap(({ key, fact, cell, at }): [string, unknown][] => {
        const where = cell(row);
        const formula = formulas.get(where);
        if (fact.worked && formula !== undefined && sameFormula(formula, rules.get(where))) return [];
        const value = read(where, fact, at(row));
        if (value !== undefined) return [[key, value]];
        return fact.worked && formula === undefined && rules.has(where) ? [[key, null]] : [];
      });
      return Object.fromEntries(entries);
    });
    while (rows.length > 0 && Object.keys(rows[rows.length - 1] ?? {}).length === 0) rows.pop();
    return rows;
  };
  const held = Object.entries(FACTS).map(([key, fact]) => {
    if (fact.type === "table") return [key, readTable(fact)] as const;
    const { cell } = placeOf(fact, names);
    return [key, read(cell, fact, named(fact.name)[0]?.[0] ?? "")] as const;
  });
  return { job: { ...(Object.fromEntries(held) as unknown as Omit<Job, "system">), system }, wrong };
}

const UNREADABLE = Symbol("unreadable");

function valueOf(fact: CellFact, shown: CellValue, system: UnitSystem): unknown {
  if (shown === "") return undefined;
  if (fact.type === "number") return typeof shown === "number" ? toSi(fact.kind, shown, system) : UNREADABLE;
  const text = String(shown);
  if (/^#[A-Z]/.test(text)) return UNREADABLE;
  if (fact.type === "text") return text;
  return inSystem(fact.choices, system).includes(text) ? text : UNREADABLE;
}

function rowsOf(table: TableFact, named: (name: string) => readonly unknown[]): number {
  return Math.max(...Object.values(table.columns).map(({ name }) => named(name ?? table.name).length));
}

const known = new Map<UnitSystem, ReadonlyMap<string, string>>();

/** The rules that fill the cells of a blank workbook, by their cells. */
function rulesOf(system: UnitSystem): ReadonlyMap<string, string> {
  const found = known.get(system);
  if (found) return found;
  const rules = new Map<string, string>();
  for (const { name, rows } of assemble(sheets, system, "blank").sheets) {
    for (const [row, cells] of rows) {
      for (const [column, { formula }] of cells) {
        if (formula !== undefined) rules.set(`${name}!${cellAddress(row, column)}`, formula);
      }
    }
  }
  known.set(system, rules);
  return rules;
}

function sameFormula(a: string, b: string | undefined): boolean {
  const plain = (formula: string): string => formula.replace(/^=/, "").replace(/[\s$]/g, "").toUpperCase();
  return b !== undefined && plain(a) === plain(b);
}
