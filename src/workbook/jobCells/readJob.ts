import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { Problem } from "../../calc/problem";
import { defaultUnit, isMeasure } from "../../calc/quantity/measures";
import { readQuantity } from "../../calc/quantity/readQuantity";
import { FACTS, type FactKey, type Job } from "../../job/facts";
import type { CellFact, Fact, NumberFact, TableFact } from "../../job/facts/fact";
import { usedJob, type SomeOf } from "../../job/facts/standing";
import { inSystem, toSi } from "../../job/facts/units";
import { assemble } from "../assemble";
import { cellAddress } from "../layout/address";
import { yoursName } from "../yoursName";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";
import { sheets } from "../sheets";
import { placeOf, tablePlaces } from "./places";
import { sumMarked } from "./typeDraft";
import { unitsHeld } from "../unitsHeld";

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
  /** What was typed. */
  readonly job: Job;
  /** What the company's column of the facts says. */
  readonly company: SomeOf;
  /** Facts whose value the company stands behind; "all" for everything that was invented. */
  readonly confirmed: ReadonlySet<FactKey> | "all";
  /** Facts that still hold what a draft wrote into their cells. */
  readonly drafted: ReadonlySet<FactKey>;
  /** What the job is calculated from: what was typed, and what is taken for the rest. */
  readonly used: Job;
  readonly wrong: readonly WrongCell[];
}

/**
 * Reads the input cells of a calculated workbook, by their names, into a job. A cell that still holds the rule the workbook
 * came with is not typed.
 *
 * @throws MissingName where the workbook lacks a name
 */
export function readJob(workbook: Recalculated): JobRead {
  const system = unitsHeld(workbook.named("Units"));
  const rules = rulesOf(system);
  const wrong: WrongCell[] = [];
  const { formulas, names } = workbook;
  const shownBy = new Map<string, CellValue[][]>();
  const named = (name: string): CellValue[][] => {
    const shown = shownBy.get(name) ?? workbook.named(name) ?? [];
    shownBy.set(name, shown);
    return shown;
  };
  const read = (cell: string, fact: CellFact, shown: CellValue, tape = true): unknown => {
    const value = valueOf(fact, shown, system, tape);
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
        const value = read(where, fact, at(row), false);
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
    return [key, read(cell, fact, named(yoursName(fact.name))[0]?.[0] ?? "")] as const;
  });
  const job = { ...(Object.fromEntries(held) as unknown as Omit<Job, "system">), system };
  const keys = Object.keys(FACTS) as FactKey[];
  const said = (name: string): (readonly [FactKey, CellValue])[] =>
    keys.map((key, row) => [key, named(name)[row]?.[0] ?? ""]);
  const company = Object.fromEntries(
    said("FactsCompanyValues").flatMap(([key, shown]) => {
      const fact = FACTS[key] as Fact;
      return fact.type === "table" || shown === "" ? [] : [[key, read(`Facts: ${fact.name}`, fact, shown)]];
    }),
  ) as SomeOf;
  const days = said("FactsConfirmedDays").filter(([, day]) => day !== "");
  const confirmed = named("FactsConfirmed")[0]?.[0] ? "all" : new Set(days.map(([key]) => key));
  const drafted = said("FactsDrafted").flatMap(([key, mark]) => {
    const fact: Fact = FACTS[key];
    if (mark === "") return [];
    const now =
      fact.type === "table"
        ? sumMarked(key, names, (cell) => workbook.cells(cell)?.[0]?.[0])
        : named(yoursName(fact.name))[0]?.[0];
    return now === mark ? [key] : [];
  });
  return { job, company, confirmed, drafted: new Set(drafted), used: usedJob(job, company), wrong };
}

const UNREADABLE: unique symbol = Symbol("unreadable");

/** The value of a cell in SI; a text is read as a tape says it where the cell's own formulas do so too. */
function valueOf(fact: CellFact, shown: CellValue, system: UnitSystem, tape: boolean): unknown {
  if (shown === "") return undefined;
  const text = String(shown);
  if (/^#[A-Z]/.test(text)) return UNREADABLE;
  if (fact.type === "number") {
    const number = typeof shown === "number" ? shown : tape ? readTape(text, fact, system) : UNREADABLE;
    return typeof number === "number" && takesNumber(fact, number, system)
      ? toSi(fact.kind, number, system)
      : UNREADABLE;
  }
  if (fact.type === "text") return text;
  return inSystem(fact.choices, system).includes(text) ? text : UNREADABLE;
}

/** Whether a cell takes a number, in the unit it is typed in. */
function takesNumber({ range, whole }: NumberFact, typed: number, system: UnitSystem): boolean {
  const [least, most] = inSystem(range, system);
  return typed >= least && typed <= most && (!whole || Number.isInteger(typed));
}

/** A text in a measured cell, as a tape says it. */
function readTape(text: string, { kind }: NumberFact, system: UnitSystem): number | typeof UNREADABLE {
  if (!isMeasure(kind)) return UNREADABLE;
  try {
    return readQuantity(text, defaultUnit(kind, system));
  } catch (error) {
    if (error instanceof Problem) return UNREADABLE;
    throw error;
  }
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
