import { kindOf } from "../../../calc/quantity/kinds";
import { defaultUnit, isMeasure } from "../../../calc/quantity/measures";
import { FACTS, type FactKey } from "../../../job/facts";
import type { ChoiceFact, ColumnFact, NumberFact, TableFact } from "../../../job/facts/fact";
import { inSystem } from "../../../job/facts/units";
import type { Job, SheetLayout } from "../../layout";
import { areaAddress, cellAddress, Ref } from "../../layout/address";
import { COLUMN, FIRST_FACT, LAST_FACT, takes } from "../../layout/factCells";
import { fillDown } from "../money/cells";
import { DATED, DAYS } from "./formulas";
import { cellsOf, LONGEST_SEARCHED, tableOf, topOf, typedOver, workedWhole } from "./tableCells";

/** Where the columns of tables stand that are looked through for what cannot be read, below the facts. */
export interface Bodies {
  readonly first: number;
  readonly last: number;
  readonly next: number;
}

/** A column of numbers of a table, as it is laid out. */
interface NumberColumn {
  readonly table: TableFact;
  readonly column: ColumnFact<NumberFact>;
  readonly cells: Ref;
  /** Whether a host may take its entries for days. */
  readonly dated: boolean;
}

/** The columns of numbers of the tables that are looked through. */
function numberColumns(job: Job): NumberColumn[] {
  return (Object.keys(FACTS) as FactKey[]).flatMap((key) => {
    const table = tableOf(key);
    if (!table || table.rows > LONGEST_SEARCHED) return [];
    return Object.values(table.columns).flatMap((column) => {
      const cells = cellsOf(job, table, column);
      if (column.type !== "number" || !cells) return [];
      const [, most] = inSystem(column.range, job.system);
      return [{ table, column, cells, dated: DATED.has(column.kind) && most < DAYS.first }];
    });
  });
}

/** Columns side by side, in runs that one formula looks through: the first of each, and how many. */
function runs(columns: readonly NumberColumn[]): { readonly from: number; readonly count: number }[] {
  const found: { from: number; count: number }[] = [];
  columns.forEach(({ table, column, cells }, index) => {
    const [before, run] = [columns[index - 1], found[found.length - 1]];
    const beside = before?.table === table && before.cells.left + 1 === cells.left && before.cells.top === cells.top;
    if (run && beside && Boolean(before.column.worked) === Boolean(column.worked)) run.count++;
    else found.push({ from: index, count: 1 });
  });
  return found;
}

/** The decimals of a column, and the first of them. */
export const BY_DEFINITION = {
  source: "by definition: a decimal for each row, the first that is not 0 for the first wrong cell",
};

/**
 * One row for each column: where the first of its cells stands that is wrong, and what to type there. Of columns of numbers side by
 * side one formula tells, with a decimal for each of their rows: 0.0102 says that the second cell is wrong, and the fourth perhaps
 * a day.
 */
export function columnsOfTables(s: SheetLayout, job: Job, first: number): Bodies {
  const columns = numberColumns(job);
  const apart = columnsApart(job);
  const last = first + columns.length + apart.length - 1;
  s.put(first - 1, COLUMN.label, { value: "Columns of tables", style: "headText" });
  s.put(first - 1, COLUMN.yours, { value: "Wrong, by row", style: "head" });
  s.put(first - 1, COLUMN.used, { value: "First wrong row", style: "head" });
  // The first day and the last that a host may make of 3/4, for the formulas below.
  const [from, to] = ([COLUMN.least, COLUMN.most] as const).map((at) => cellAddress(first - 1, at, true));
  for (const [at, value] of [
    [COLUMN.least, DAYS.first],
    [COLUMN.most, DAYS.last],
  ] as const)
    s.put(first - 1, at, { value, style: "head", look: { format: "yyyy-mm-dd" } });
  columns.forEach((column, index) => columnRow(s, job, first + index, column));
  apart.forEach((column, index) => apartRow(s, job, first + columns.length + index, column));
  const list = (at: number, from = 0, count = columns.length): Ref =>
    new Ref(s.name, first + from, at, first + from + count - 1, at);
  for (const run of runs(columns)) {
    const { cells, column } = columns[run.from] as NumberColumn;
    const area = `${cells.sheet}!${areaAddress({ ...cells, right: cells.left + run.count - 1 }, true)}`;
    const bound = (at: number): string => `TRANSPOSE(${areaAddress(list(at, run.from, run.count))})`;
    const outside = `((${area}<${bound(COLUMN.least)})+(${area}>${bound(COLUMN.most)}))`;
    const number = `${outside}*(1+(${area}>=${from})*(${area}<=${to}))`;
    // An error that reached a worked cell is told where it arose.
    const wrong = `IF(ISERROR(${area}),${column.worked ? 0 : 1},IF(ISNUMBER(${area}),${number},1*(${area}<>"")))`;
    const rows = cells.bottom - cells.top + 1;
    // One number is no matrix to every host.
    const decimals = rows === 1 ? `0.1*${wrong}` : `MMULT(10^SEQUENCE(1,${rows},-1,-1),${wrong})`;
    fillDown(s, list(COLUMN.yours, run.from, run.count), `TRANSPOSE(${decimals})`, BY_DEFINITION);
  }
  // Decimals that are 0, 1 or 2 come to less than 2.3 of the first that is not 0.
  const decimals = areaAddress(list(COLUMN.yours));
  fillDown(s, list(COLUMN.used), `IFERROR(ROUND(-LOG10(${decimals}),0),0)`, BY_DEFINITION);
  const all = (at: number): string => areaAddress(list(at, 0, columns.length + apart.length));
  const found = `${all(COLUMN.used)}>0`;
  for (const [at, then] of [
    [COLUMN.company, all(COLUMN.label)],
    [COLUMN.place, `${all(COLUMN.letters)}&(${all(COLUMN.top)}-1+${all(COLUMN.used)})`],
  ] as const)
    fillDown(s, list(at, 0, columns.length + apart.length), `IF(${found},${then},"")`);
  return { first, last, next: last + 1 };
}

/** What every row has: its table, room for what is found, and the top of its cells. */
function bodyRow(s: SheetLayout, row: number, table: TableFact, cells: Ref): void {
  s.put(row, COLUMN.label, { value: table.name });
  for (const at of [COLUMN.yours, COLUMN.company, COLUMN.used, COLUMN.place]) s.put(row, at, {});
  topOf(s, row, cells);
}

function columnRow(s: SheetLayout, job: Job, row: number, { table, column, cells, dated }: NumberColumn): void {
  bodyRow(s, row, table, cells);
  if (workedWhole(table)) s.put(row, COLUMN.assumed, { formula: `=${typedOver(cells)}` });
  // A reader for each of its cells would make thousands: a text is said to be wrong, with the number or formula to type.
  const unit = isMeasure(column.kind) ? defaultUnit(column.kind, job.system) : undefined;
  const example = kindOf(unit ?? "")?.examples.split(/, | or /)[0];
  const read = unit && example ? `; for ${example} type =RILL.QTY("${example.replace(/"/g, '""')}","${unit}")` : "";
  numberRange(s, job, row, column, read);
  if (dated) s.put(row, COLUMN.days, { value: "yes" });
}

/** From where to where the numbers of a column go, and what to type there. */
function numberRange(s: SheetLayout, job: Job, row: number, column: ColumnFact<NumberFact>, read = ""): void {
  const [least, most] = inSystem(column.range, job.system);
  s.put(row, COLUMN.least, { value: least });
  s.put(row, COLUMN.most, { value: most });
  const type = takes(column, job.system).replace(/, like .*/, "");
  s.put(row, COLUMN.note, { value: `In its cells of "${column.question}" type ${type}${read}` });
}

/**
 * Columns that are looked through by themselves: those of a list, and all of the price list, whose readers see only what they ask
 * for, so that a price below zero, pasted there, would make a job cheaper without a word.
 */
type Apart = { readonly table: TableFact; readonly column: ColumnFact<ChoiceFact | NumberFact>; readonly cells: Ref };

function columnsApart(job: Job): Apart[] {
  return (Object.keys(FACTS) as FactKey[]).flatMap((key) => {
    const table = tableOf(key);
    const prices = key === "prices";
    if (!table || (table.rows > LONGEST_SEARCHED && !prices)) return [];
    return Object.values(table.columns).flatMap((column): Apart[] => {
      const cells = cellsOf(job, table, column);
      const apart = column.type === "choice" || (prices && column.type === "number");
      return apart && cells ? [{ table, column: column as Apart["column"], cells }] : [];
    });
  });
}

/** The first cell of such a column that is wrong; text that a rule gives is not. */
function apartRow(s: SheetLayout, job: Job, row: number, { table, column, cells }: Apart): void {
  const area = `${cells.sheet}!${areaAddress(cells, true)}`;
  bodyRow(s, row, table, cells);
  if (column.type === "number") numberRange(s, job, row, column);
  else {
    const choices = inSystem<readonly string[]>(column.choices, job.system);
    s.put(row, COLUMN.takes, { value: `|${choices.join("|")}|` });
    s.put(row, COLUMN.note, { value: `In its cells of "${column.question}" take one of the list` });
  }
  s.put(row, COLUMN.used, { formula: `=IFERROR(MATCH(1,INDEX(${wrongCells(row, area, column.type)},0),0),0)` });
}

/** 1 for each cell of a column that is wrong. */
function wrongCells(row: number, area: string, type: "number" | "choice"): string {
  const at = (place: number): string => cellAddress(row, place);
  return type === "choice"
    ? `(${area}<>"")*(1-ISNUMBER(FIND("|"&${area}&"|",${at(COLUMN.takes)})))`
    : `ISTEXT(${area})*(${area}<>"")+ISNUMBER(${area})*((${area}<${at(COLUMN.least)})+(${area}>${at(COLUMN.most)}))`;
}

/** Where the tables stand that have a wrong cell, and where that cell. */
export function wrongIn({ first, last }: Bodies): { readonly tables: string; readonly places: string } {
  const list = (at: number): string => areaAddress({ top: first, left: at, bottom: last, right: at });
  return { tables: list(COLUMN.company), places: list(COLUMN.place) };
}

/** What is wrong in each table that is: of the first of its columns with a wrong cell. */
export function faultsOfTables({ first, last }: Bodies): string {
  const list = (at: number): string => areaAddress({ top: first, left: at, bottom: last, right: at });
  const keys = areaAddress({ top: FIRST_FACT, left: COLUMN.key, bottom: LAST_FACT, right: COLUMN.key });
  const [notes, days, tables] = [list(COLUMN.note), list(COLUMN.days), list(COLUMN.company)];
  const digit = `${list(COLUMN.yours)}*10^${list(COLUMN.used)}`;
  const day = `IF(${days}="yes",IF(${digit}>1.5,"Excel made a date of it. ",""),"")`;
  return `=IFERROR(INDEX(${day}&${notes},MATCH(${keys},${tables},0)),"")`;
}
