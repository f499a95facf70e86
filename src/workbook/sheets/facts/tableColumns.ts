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
import { cellsOf, LONGEST_SEARCHED, tableOf, typedOver, workedWhole } from "./tableCells";

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

/** Columns side by side, in runs that one formula counts: the first of each, and how many. */
function runs(
  columns: readonly NumberColumn[],
  alike: (a: NumberColumn, b: NumberColumn) => boolean,
): { readonly from: number; readonly count: number }[] {
  const found: { from: number; count: number }[] = [];
  columns.forEach((column, index) => {
    const [before, run] = [columns[index - 1], found[found.length - 1]];
    const beside =
      before?.table === column.table &&
      before.cells.left + 1 === column.cells.left &&
      before.cells.top === column.cells.top;
    if (run && before && beside && alike(before, column)) run.count++;
    else found.push({ from: index, count: 1 });
  });
  return found;
}

/** One row for each column of numbers: how many of its cells hold no number, or one out of range, and what to type. */
export function columnsOfTables(s: SheetLayout, job: Job, first: number): Bodies {
  const columns = numberColumns(job);
  const apart = columnsApart(job);
  const last = first + columns.length + apart.length - 1;
  s.put(first - 1, COLUMN.label, { value: "Columns of tables", style: "headText" });
  s.put(first - 1, COLUMN.yours, { value: "Wrong cells", style: "head" });
  s.put(first - 1, COLUMN.days, { value: "Days in it", style: "head" });
  // The first day and the last that a host may make of 3/4, for the formulas below.
  const [from, to] = ([COLUMN.least, COLUMN.most] as const).map((at) => cellAddress(first - 1, at, true));
  for (const [at, value] of [
    [COLUMN.least, DAYS.first],
    [COLUMN.most, DAYS.last],
  ] as const)
    s.put(first - 1, at, { value, style: "head", look: { format: "yyyy-mm-dd" } });
  columns.forEach((column, index) => columnRow(s, job, first + index, column));
  apart.forEach((column, index) => apartRow(s, job, first + columns.length + index, column));
  [...columns, ...apart].forEach(({ cells, column }, index) => firstWrong(s, first + index, cells, column.type));
  const list = (at: number, from = 0, count = columns.length): Ref =>
    new Ref(s.name, first + from, at, first + from + count - 1, at);
  /** What is found in each cell of a run, added up by columns. */
  const count = (
    at: number,
    { from, count: wide }: { from: number; count: number },
    each: (area: string) => string,
  ) => {
    const { cells } = columns[from] as NumberColumn;
    const area = `${cells.sheet}!${areaAddress({ ...cells, right: cells.left + wide - 1 }, true)}`;
    const ones = `SEQUENCE(1,${cells.bottom - cells.top + 1},1,0)`;
    fillDown(s, list(at, from, wide), `TRANSPOSE(MMULT(${ones},${each(area)}))`);
  };
  for (const run of runs(columns, (a, b) => Boolean(a.column.worked) === Boolean(b.column.worked))) {
    const bound = (at: number): string => `TRANSPOSE(${areaAddress(list(at, run.from, run.count))})`;
    // An error that reached a worked cell is told where it arose.
    const error = columns[run.from]?.column.worked ? 0 : 1;
    count(COLUMN.yours, run, (area) => {
      const outside = `(${area}<${bound(COLUMN.least)})+(${area}>${bound(COLUMN.most)})`;
      return `IF(ISERROR(${area}),${error},ISTEXT(${area})*(${area}<>"")+ISNUMBER(${area})*(${outside}))`;
    });
  }
  for (const run of runs(columns, (a, b) => a.dated && b.dated)) {
    if (!columns[run.from]?.dated) continue;
    const day = (area: string): string => `ISNUMBER(${area})*(${area}>=${from})*(${area}<=${to})`;
    count(COLUMN.days, run, (area) => `IF(ISERROR(${area}),0,${day(area)})`);
  }
  const all = (at: number): Ref => list(at, 0, columns.length + apart.length);
  const [tables, counts] = [COLUMN.label, COLUMN.yours].map((at) => areaAddress(all(at)));
  fillDown(s, all(COLUMN.company), `IF(${counts}>0,${tables},"")`);
  return { first, last, next: last + 1 };
}

function columnRow(s: SheetLayout, job: Job, row: number, { table, column, cells }: NumberColumn): void {
  const [least, most] = inSystem(column.range, job.system);
  s.put(row, COLUMN.label, { value: table.name });
  for (const at of [COLUMN.yours, COLUMN.company, COLUMN.days]) s.put(row, at, {});
  if (workedWhole(table)) s.put(row, COLUMN.assumed, { formula: `=${typedOver(cells)}` });
  // A reader for each of its cells would make thousands: a text is said to be wrong, with the number or formula to type.
  const unit = isMeasure(column.kind) ? defaultUnit(column.kind, job.system) : undefined;
  const example = kindOf(unit ?? "")?.examples.split(/, | or /)[0];
  const read = unit && example ? `; for ${example} type =RILL.QTY("${example.replace(/"/g, '""')}","${unit}")` : "";
  s.put(row, COLUMN.note, {
    value: `In its cells of "${column.question}" type ${takes(column, job.system).replace(/, like .*/, "")}${read}`,
  });
  s.put(row, COLUMN.least, { value: least });
  s.put(row, COLUMN.most, { value: most });
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

/** How many cells of such a column are wrong; text that a rule gives is none. */
function apartRow(s: SheetLayout, job: Job, row: number, { table, column, cells }: Apart): void {
  const area = `${cells.sheet}!${areaAddress(cells, true)}`;
  s.put(row, COLUMN.label, { value: table.name });
  s.put(row, COLUMN.company, {});
  if (column.type === "number") {
    const [least, most] = inSystem(column.range, job.system);
    s.put(row, COLUMN.least, { value: least });
    s.put(row, COLUMN.most, { value: most });
    const type = takes(column, job.system).replace(/, like .*/, "");
    s.put(row, COLUMN.note, { value: `In its cells of "${column.question}" type ${type}` });
  } else {
    const choices = inSystem<readonly string[]>(column.choices, job.system);
    s.put(row, COLUMN.takes, { value: `|${choices.join("|")}|` });
    s.put(row, COLUMN.note, { value: `In its cells of "${column.question}" take one of the list` });
  }
  s.put(row, COLUMN.yours, { formula: `=IFERROR(SUMPRODUCT(${wrongIn(row, area, column.type)}),0)` });
}

/** 1 for each cell of a column that is wrong. */
function wrongIn(row: number, area: string, type: "number" | "choice"): string {
  const at = (place: number): string => cellAddress(row, place);
  return type === "choice"
    ? `(${area}<>"")*(1-ISNUMBER(FIND("|"&${area}&"|",${at(COLUMN.takes)})))`
    : `ISTEXT(${area})*(${area}<>"")+ISNUMBER(${area})*((${area}<${at(COLUMN.least)})+(${area}>${at(COLUMN.most)}))`;
}

/** Where the first wrong cell of a column stands; where an error hides it, the top of the column. */
function firstWrong(s: SheetLayout, row: number, cells: Ref, type: "number" | "choice"): void {
  const area = `${cells.sheet}!${areaAddress(cells, true)}`;
  const letters = cellAddress(1, cells.left).replace(/\d/g, "");
  const found = `"${cells.sheet}!${letters}"&(${cells.top - 1}+MATCH(1,INDEX(${wrongIn(row, area, type)},0),0))`;
  const top = `"${cells.sheet}!${cellAddress(cells.top, cells.left)}"`;
  s.put(row, COLUMN.place, { formula: `=IF(${cellAddress(row, COLUMN.yours)}=0,"",IFERROR(${found},${top}))` });
}

/** What is wrong in each table that is: of the first of its columns with a wrong cell. */
export function faultsOfTables({ first, last }: Bodies): string {
  const list = (at: number): string => areaAddress({ top: first, left: at, bottom: last, right: at });
  const [keys, notes, days, tables] = [
    areaAddress({ top: FIRST_FACT, left: COLUMN.key, bottom: LAST_FACT, right: COLUMN.key }),
    list(COLUMN.note),
    list(COLUMN.days),
    list(COLUMN.company),
  ];
  return `=IFERROR(INDEX(IF(${days}>0,"Excel made a date of it. ","")&${notes},MATCH(${keys},${tables},0)),"")`;
}
