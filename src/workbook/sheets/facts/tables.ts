import { kindOf } from "../../../calc/quantity/kinds";
import { defaultUnit, isMeasure } from "../../../calc/quantity/measures";
import { FACTS, type FactKey } from "../../../job/facts";
import type { ColumnFact, NumberFact, TableFact } from "../../../job/facts/fact";
import { BETWEEN, HANDED_OVER, typedBlocks } from "../../../job/facts/rowsText";
import { SHIPPED_TABLES } from "../../../job/facts/usual";
import { inSystem } from "../../../job/facts/units";
import type { Job, SheetLayout } from "../../layout";
import { areaAddress, cellAddress, Ref } from "../../layout/address";
import { COLUMN, MARKED_TABLES, takes } from "../../layout/factCells";
import { fillDown } from "../money/cells";
import { cellsIn, DATED, DAYS } from "./formulas";
import { draftedHere, typedHere } from "./typedHere";

/** Tables longer than this are looked through by their readers. */
const LONGEST_SEARCHED = 50;

/** Where the columns of tables stand that are looked through for what cannot be read, below the facts. */
export interface Bodies {
  readonly first: number;
  readonly last: number;
  readonly next: number;
}

function tableOf(key: FactKey): TableFact | undefined {
  const fact = FACTS[key] as TableFact | { readonly type: "number" | "text" | "choice" };
  return fact.type === "table" ? fact : undefined;
}

/** The cells of a table's column, by its name or its place in the table. */
function cellsOf(job: Job, table: TableFact, column: ColumnFact): Ref | undefined {
  const named = job.places.get(column.name ?? table.name);
  if (!named) return undefined;
  const cells = named.column(column.name === undefined ? column.at : 1);
  // A table may end in a row of the workbook's own.
  const bottom = Math.min(cells.bottom, cells.top + table.rows - 1);
  return new Ref(cells.sheet, cells.top, cells.left, bottom, cells.right);
}

/** One row for each column of numbers: how many of its cells hold no number, or one out of range, and what to type. */
export function columnsOfTables(s: SheetLayout, job: Job, first: number): Bodies {
  let row = first;
  s.put(row - 1, 1, { value: "Columns of tables", style: "headText" });
  s.put(row - 1, 2, { value: "Wrong cells", style: "head" });
  for (const key of Object.keys(FACTS) as FactKey[]) {
    const table = tableOf(key);
    if (!table || table.rows > LONGEST_SEARCHED) continue;
    for (const column of Object.values(table.columns)) {
      const cells = cellsOf(job, table, column);
      if (column.type !== "number" || !cells) continue;
      columnRow(s, job, row++, table, column, cells);
    }
  }
  const column = (at: number): Ref => new Ref(s.name, first, at, row - 1, at);
  const [tables, counts] = [COLUMN.label, COLUMN.yours].map((at) =>
    areaAddress({ top: first, left: at, bottom: row - 1, right: at }),
  );
  fillDown(s, column(COLUMN.company), `IF(${counts}>0,${tables},"")`);
  return { first, last: row - 1, next: row };
}

function columnRow(
  s: SheetLayout,
  job: Job,
  row: number,
  table: TableFact,
  column: ColumnFact<NumberFact>,
  cells: Ref,
): void {
  const at = (place: number): string => cellAddress(row, place);
  const area = `${cells.sheet}!${areaAddress(cells, true)}`;
  const [least, most] = inSystem(column.range, job.system);
  const [lowest, highest] = [at(COLUMN.least), at(COLUMN.most)];
  s.put(row, COLUMN.label, { value: table.name });
  s.put(row, COLUMN.yours, {
    // An error that reached a worked cell is told where it arose.
    formula:
      `=IFERROR(SUMPRODUCT(ISTEXT(${area})*(${area}<>"")),0)+IF(ISERROR(SUM(${area})),${column.worked ? 0 : 1},` +
      `IF(COUNT(${area})=0,0,(MIN(${area})<${lowest})+(MAX(${area})>${highest})))`,
  });
  s.put(row, COLUMN.company, {});
  if (workedWhole(table)) s.put(row, COLUMN.assumed, { formula: `=${typedOver(cells)}` });
  // A reader for each of its cells would make thousands: a text is said to be wrong, with the number or formula to type.
  const unit = isMeasure(column.kind) ? defaultUnit(column.kind, job.system) : undefined;
  const example = kindOf(unit ?? "")?.examples.split(/, | or /)[0];
  const read = unit && example ? `; for ${example} type =RILL.QTY("${example.replace(/"/g, '""')}","${unit}")` : "";
  const asked = `In its cells of "${column.question}" type ${takes(column, job.system).replace(/, like .*/, "")}${read}`;
  const day = `IFERROR(SUMPRODUCT(ISNUMBER(${area})*(${area}>=${DAYS.first})*(${area}<=${DAYS.last})),0)>0`;
  s.put(
    row,
    COLUMN.note,
    DATED.has(column.kind) && most < DAYS.first
      ? { formula: `=IF(${day},"Excel made a date of it. ","")&"${asked.replace(/"/g, '""')}"` }
      : { value: asked },
  );
  s.put(row, COLUMN.least, { value: least });
  s.put(row, COLUMN.most, { value: most });
}

/** Whether the workbook fills every column until somebody types over it. */
function workedWhole(table: TableFact): boolean {
  return Object.values(table.columns).every(({ worked }) => worked);
}

/** How many cells of a column that the workbook fills hold something else than a formula. */
function typedOver(cells: Ref): string {
  const formulas = Array.from(
    { length: cells.bottom - cells.top + 1 },
    (_, index) => `ISFORMULA(${cells.sheet}!${cellAddress(cells.top + index, cells.left)})`,
  );
  return `COUNTA(${cells.sheet}!${areaAddress(cells, true)})-(${formulas.join("+")})`;
}

/** Columns as areas, those that stand side by side as one. */
function sideBySide(columns: readonly Ref[]): Ref[] {
  const areas: Ref[] = [];
  for (const one of [...columns].sort((a, b) => a.left - b.left)) {
    const before = areas.at(-1);
    if (before && before.sheet === one.sheet && before.top === one.top && before.right === one.left - 1) {
      areas[areas.length - 1] = new Ref(one.sheet, one.top, before.left, one.bottom, one.right);
    } else areas.push(one);
  }
  return areas;
}

/** What is typed into a table as one text, for the functions that read the whole job. */
function joined(job: Job, table: TableFact, yours: string): string {
  const areas = typedBlocks(table).map(({ name, from, to }) => {
    const cells = job.places.get(name);
    if (!cells) throw new Error(`there is no ${name} to hand over`);
    const { top, left, sheet } = cells;
    const area = { top, left: left + from - 1, bottom: top + table.rows - 1, right: left + to - 1 };
    return `${sheet}!${areaAddress(area, true)}`;
  });
  return `=IF(${yours}="","",IFERROR(TEXTJOIN("${BETWEEN}",FALSE,${areas.join(",")}),""))`;
}

/** The row of a table: as a whole it is yours, shipped with the workbook, worked out by it, or blank. */
export function tableRow(s: SheetLayout, job: Job, key: FactKey, bodies: Bodies): void {
  const table = tableOf(key);
  if (!table) return;
  const { row } = s;
  const cells = cellsIn(row);
  const shipped = (SHIPPED_TABLES as Partial<Record<FactKey, { state: string; reason: string }>>)[key];
  const columns = Object.values(table.columns);
  const allWorked = workedWhole(table);
  const key1 = table.required ? columns.find(({ type }) => type === "number") : columns.find(({ worked }) => !worked);
  const first = key1 && cellsOf(job, table, key1);
  const place = cellsOf(job, table, columns[0] as ColumnFact);
  // Of a list without end its first column tells.
  const typed = columns.filter(({ worked }) => !worked).slice(0, table.rows > LONGEST_SEARCHED ? 1 : undefined);
  const byHand = sideBySide(typed.flatMap((column) => cellsOf(job, table, column) ?? [])).map(
    (area) => `${area.sheet}!${areaAddress(area, true)}`,
  );
  s.put(row, COLUMN.label, { value: table.question, style: "label" });
  s.fitHeight(row, table.question, s.charactersAcross(1, 1));
  if (first) {
    const area = `${first.sheet}!${areaAddress(first, true)}`;
    const top = `${first.sheet}!${cellAddress(first.top, first.left)}`;
    const blank = table.required ? `${top}=""` : `COUNTA(${byHand.join(",")})=0`;
    s.put(row, COLUMN.yours, { formula: `=IF(${blank},"",COUNTA(${area})&" rows")`, style: "result" });
  } else s.put(row, COLUMN.yours, { formula: `=IF(${cells.read}=0,"",${cells.read}&" cells")`, style: "result" });
  s.put(row, COLUMN.assumed, { ...(allWorked ? { value: "as worked out" } : {}), style: "result" });
  for (const column of [COLUMN.company, COLUMN.low, COLUMN.likely, COLUMN.high, COLUMN.unit])
    s.put(row, column, { style: "unit" });
  const body = (at: number): string =>
    areaAddress({ top: bodies.first, left: at, bottom: bodies.last, right: at }, true);
  if (allWorked) {
    const words = columns
      .filter(({ type }) => type !== "number")
      .flatMap((column) => cellsOf(job, table, column) ?? []);
    const numbers = `SUMIF(${body(COLUMN.label)},"${table.name}",${body(COLUMN.assumed)})`;
    s.put(row, COLUMN.read, { formula: `=${[numbers, ...words.map(typedOver)].join("+")}` });
  }
  const marked = MARKED_TABLES[key];
  if (marked !== undefined && place) {
    // What its numbers come to tells whether anybody changed them since they were drafted.
    const numbers = { ...place, right: place.left + marked - 1 };
    s.put(row, COLUMN.read, { formula: `=IFERROR(ROUND(SUM(${place.sheet}!${areaAddress(numbers, true)}),6),"")` });
    draftedHere(s, row);
  }
  if (HANDED_OVER.has(key)) s.put(row, COLUMN.rows, { formula: joined(job, table, cells.yours) });
  const wrong = `MATCH("${table.name}",${body(COLUMN.company)},0)`;
  s.put(row, COLUMN.fault, { formula: `=IFERROR(INDEX(${body(COLUMN.note)},${wrong}),"")` });
  s.put(row, COLUMN.used, {
    formula: `=IF(${cells.fault}<>"",NA(),IF(${cells.yours}="",${cells.assumed}&"",${cells.yours}))`,
    style: "result",
  });
  s.put(row, COLUMN.state, { style: "resultText" });
  s.put(row, COLUMN.reason, { style: "remark" });
  const link = place ? `${place.sheet}!${cellAddress(place.top, place.left)}` : "";
  s.put(row, COLUMN.place, place ? { value: link, style: "link", link } : { style: "link" });
  typedHere(s, row, COLUMN.confirmed, { format: "yyyy-mm-dd", align: "right" }, "The day your company confirmed it.");
  s.put(row, COLUMN.because, { value: shipped?.reason ?? (allWorked ? "worked out until you type over it" : "") });
  if (shipped ?? allWorked) s.put(row, COLUMN.shipped, { value: shipped?.state ?? "assumed" });
  s.put(row, COLUMN.sheet, { value: table.sheet });
  s.put(row, COLUMN.key, { value: table.name });
  s.put(row, COLUMN.needed, { value: table.required ? "yes" : "no" });
  s.put(row, COLUMN.own, { value: shipped ? "no" : "yes" });
  // Of a table whose columns alone have names, its place.
  const called = job.called.get(table.name) ?? "";
  s.put(row, COLUMN.called, {
    value: called.startsWith(`${table.sheet}: `) ? called : `${table.sheet}: the table at ${link}`,
  });
}
