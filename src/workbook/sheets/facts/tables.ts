import type { FactKey } from "../../../job/facts";
import type { ColumnFact, TableFact } from "../../../job/facts/fact";
import { BETWEEN, HANDED_OVER, ruledRows, typedBlocks } from "../../../job/facts/rowsText";
import { SHIPPED_TABLES } from "../../../job/facts/usual";
import type { Job, SheetLayout } from "../../layout";
import { areaAddress, cellAddress, Ref } from "../../layout/address";
import { cellsIn, COLUMN, MARKED_TABLES } from "../../layout/factCells";
import { cellsOf, LONGEST_SEARCHED, tableOf, topOf, typedOver, workedWhole } from "./tableCells";
import type { Bodies } from "./tableColumns";
import { draftedHere, typedHere } from "./typedHere";

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
    const area = {
      top: top + ruledRows(table),
      left: left + from - 1,
      bottom: top + table.rows - 1,
      right: left + to - 1,
    };
    return `${sheet}!${areaAddress(area, true)}`;
  });
  const rows = `IFERROR(TEXTJOIN("${BETWEEN}",FALSE,${areas.join(",")}),"")`;
  // Whether rows that a rule fills were typed over waits for what they come to.
  return ruledRows(table) > 0 ? `=${rows}` : `=IF(${yours}="","",${rows})`;
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
    const numbers = `SUMIF(${body(COLUMN.label)},${cells.key},${body(COLUMN.assumed)})`;
    s.put(row, COLUMN.read, { formula: `=${[numbers, ...words.map(typedOver)].join("+")}` });
  }
  const marked = MARKED_TABLES[key];
  if (marked !== undefined && place) {
    // What its numbers come to tells whether anybody changed them since they were drafted.
    const numbers = { ...place, right: place.left + marked - 1 };
    s.put(row, COLUMN.read, { formula: `=IFERROR(ROUND(SUM(${place.sheet}!${areaAddress(numbers, true)}),6),"")` });
    draftedHere(s, row);
  }
  if (HANDED_OVER.has(key) && typedBlocks(table).length > 0)
    s.put(row, COLUMN.held, { formula: joined(job, table, cells.yours) });
  s.put(row, COLUMN.used, { style: "result" });
  s.put(row, COLUMN.state, { style: "resultText" });
  s.put(row, COLUMN.reason, { style: "remark" });
  const link = place ? `${place.sheet}!${cellAddress(place.top, place.left)}` : "";
  s.put(row, COLUMN.place, { ...(place ? { link } : {}), style: "link" });
  if (place) topOf(s, row, place);
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
