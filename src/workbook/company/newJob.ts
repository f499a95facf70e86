import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { shippedBook } from "../../book/shipped";
import { aboutUnit } from "../../book/units";
import type { Book, BookPump } from "../../book/types";
import { newPrices } from "../../job/company/newPrices";
import { tasksOf } from "../../job/draft/companyTasks";
import { companyOf } from "../../job/draft/company";
import { FACTS, type FactKey, type JobRow } from "../../job/facts";
import type { TableFact } from "../../job/facts/fact";
import { fromSi } from "../../job/facts/units";
import type { CellValue } from "../model";
import { factCell } from "../layout/factCells";
import { tablePlaces } from "../jobCells/places";
import { sameValue } from "./difference";
import { cellsToType, type SomeFacts } from "../jobCells/typeJob";
import type { Recalculated } from "../recalculate";

/** What to type into a blank job so that it is made from a book, and what to tell whoever made it. */
export interface NewJob {
  readonly cells: ReadonlyMap<string, CellValue>;
  readonly notes: readonly string[];
}

/** Rows of the job's tables of pumps, rolls and machines, and points of its curves besides the shut-off head. */
const ROOM = { pumps: 6, rolls: 4, machines: FACTS.machines.rows, points: 5 } as const;

/**
 * A new job from a company's book: its own copy of the prices with their days and marks, pumps, rolls, wages, machines,
 * production rates and pricing. What is invented in the book stays invented in the job.
 *
 * @param blank a blank job of the book's unit system, calculated
 */
export function newJobFrom(book: Book, blank: Recalculated): NewJob {
  const { system, pricing } = book;
  const { names } = blank;
  const said = companyOf(book);
  const cells = new Map<string, CellValue>();
  const notes: string[] = [];
  for (const [key, value] of ownFacts(book)) cells.set(companyCell(key), companyValue(key, value, system));
  const machines = [...book.machines].sort((a, b) => b.share - a.share);
  if (machines.length > ROOM.machines) {
    notes.push(
      `${machines.length - ROOM.machines} machines of the book find no row on Rates; those with the most hours came along.`,
    );
  }
  const pumps = spread(book.pumps.filter(({ price, curve }) => price !== undefined && curve.length > 1));
  const usable = book.pumps.length - pumps.length;
  if (usable > 0)
    notes.push(`${usable} pumps of the book find no row on Pump; those that came along run from small to large.`);
  const tables: SomeFacts = {
    burden: said.burden,
    wages: said.wages,
    machines: machines.slice(0, ROOM.machines).map(({ name, own, fuel, upkeep, share, width, lift, reach }) => ({
      ...{ name, own, fuel, upkeep, share, width, lift, reach },
    })),
    tasks: said.tasks,
    sizeHours: said.sizeHours,
    ...(pricing.markups.some((markup) => markup !== undefined) ? { markups: said.markups } : {}),
    ...(pricing.stages.length > 0 ? { stages: said.stages } : {}),
    ...sentencesOf(book, said, notes),
    pumps: pumps.map(pumpRow),
    rolls: rollsOf(book),
  };
  const filled = Object.fromEntries(
    Object.entries(tables).filter(([, rows]) => Array.isArray(rows) && rows.length > 0),
  ) as SomeFacts;
  // Without the noise of turning units, so that a size of the book is the same size in the job.
  for (const [cell, value] of cellsToType(filled, { system, names, digits: 9 })) cells.set(cell, value);
  const { left } = tasksOf(book);
  if (left.length > 0)
    notes.push(`${left.length} production rates of the book find no row on Hours: ${left.join(", ")}.`);
  const prices = newPrices(book);
  notes.push(...prices.left.map((reason) => `${reason}: left out.`));
  typePrices(prices.lines, blank, cells);
  return { cells, notes };
}

/**
 * What the book says in single cells and is the company's own: an invented word or rate is no more the company's than the
 * one the job comes with, until a person has put another in its place.
 */
export function ownFacts(book: Book): (readonly [key: FactKey, value: unknown])[] {
  const { company, pricing, labor, system } = book;
  const shipped: Readonly<Record<string, unknown>> = companyOf(shippedBook(system));
  const invented: Readonly<Record<string, boolean>> = {
    Site: company.invented,
    Price: pricing.invented,
    Pump: pricing.invented,
  };
  const inventedLabor = labor.wages.every((wage) => wage.invented);
  return Object.entries(companyOf(book)).flatMap(([key, value]) => {
    const { type, sheet } = FACTS[key as FactKey];
    const own = !(invented[sheet] ?? inventedLabor) || !sameValue(value as CellValue, shipped[key] as CellValue);
    return type === "table" || value === undefined || !own ? [] : [[key as FactKey, value] as const];
  });
}

/** The cell of a job that says what the company's book has for a fact. */
export function companyCell(key: FactKey): string {
  return factCell(FACTS[key].name, "company");
}

/** What stands there for a value in SI. */
export function companyValue(key: FactKey, value: unknown, system: UnitSystem): CellValue {
  const fact = FACTS[key];
  if (fact.type !== "number") return value as CellValue;
  return Number(fromSi(fact.kind, value as number, system).toPrecision(9));
}

const SENTENCES = ["scope", "exclusions", "terms"] as const;

/** Scope, exclusions and terms; a company that does not exist has none but those a person wrote. */
function sentencesOf({ company, system }: Book, said: ReturnType<typeof companyOf>, notes: string[]): SomeFacts {
  const { company: shipped } = shippedBook(system);
  return Object.fromEntries(
    SENTENCES.flatMap((key) => {
      const rows = said[key] ?? [];
      const untouched = company.invented && company[key].join("\n") === shipped[key].join("\n");
      if (rows.length === 0 || untouched) return [];
      const room = FACTS[key].rows;
      if (rows.length > room) notes.push(`${rows.length - room} sentences of ${key} find no row on Price.`);
      return [[key, rows.slice(0, room)]];
    }),
  );
}

/** Puts each line into the row that has its code already, or into the first row that is free. */
function typePrices(
  lines: readonly JobRow<"prices">[],
  { names, named }: Recalculated,
  cells: Map<string, CellValue>,
): void {
  const table: TableFact = FACTS.prices;
  const columns = tablePlaces(table, names);
  const codes = (named("RateCodes") ?? []).map(([code]) => String(code ?? "").toLowerCase());
  const rows = new Map(codes.flatMap((code, row) => (code === "" ? [] : [[code, row] as const])));
  let free = codes.reduce((last, code, row) => (code === "" ? last : row + 1), 0);
  const fixed = new Set(["code", "unit", "description"]);
  for (const line of lines) {
    const known = rows.get(line.code?.toLowerCase() ?? "");
    const row = known ?? free++;
    for (const { key, cell } of columns) {
      const value = typedInto(line, key);
      if (known !== undefined && fixed.has(key)) continue;
      if (value !== undefined && value !== null && value !== "") cells.set(cell(row), value);
    }
  }
}

/** What a person would type: a mark says how the price came, and the column of marks follows by itself. */
function typedInto({ mark, ...line }: JobRow<"prices">, column: string): CellValue | null | undefined {
  return column === "came" ? mark : line[column as keyof typeof line];
}

/** As many as there is room for, from the smallest to the largest. */
function spread(pumps: readonly BookPump[]): BookPump[] {
  const most = ({ curve }: BookPump): number => curve.at(-1)?.flow ?? 0;
  const sorted = [...pumps].sort((a, b) => most(a) - most(b));
  if (sorted.length <= ROOM.pumps) return sorted;
  return Array.from({ length: ROOM.pumps }, (_, index) => {
    const at = Math.round((index * (sorted.length - 1)) / (ROOM.pumps - 1));
    return sorted[at] as BookPump;
  });
}

/** A curve of more points than the job has room for keeps its first, its last and those between at even steps. */
function pumpRow({ name, price, watts, curve }: BookPump): JobRow<"pumps"> {
  const [first, ...rest] = curve;
  const kept =
    rest.length <= ROOM.points
      ? rest
      : Array.from(
          { length: ROOM.points },
          (_, index) => rest[Math.round((index * (rest.length - 1)) / (ROOM.points - 1))],
        );
  const points = kept.flatMap((point, index) => [
    [`flow${index + 1}`, point?.flow] as const,
    [`head${index + 1}`, point?.head] as const,
  ]);
  return { name, price, watts, shutOffHead: first?.head, ...Object.fromEntries(points) } as JobRow<"pumps">;
}

function rollsOf({ products }: Book): JobRow<"rolls">[] {
  const rolls = products.flatMap(({ kind, size, length, unit, price }): JobRow<"rolls">[] => {
    if (kind !== "liner" || size === undefined || price === undefined) return [];
    const { counts } = aboutUnit(unit);
    const per = counts === "area" ? "area" : counts === "length" ? "length" : "roll";
    return [{ width: size, price, per, ...(length === undefined ? {} : { longest: length }) }];
  });
  return rolls.slice(0, ROOM.rolls);
}
