import { invalid } from "../calc/problem";
import { CURVE_RANGE, type CurvePoint } from "../calc/pump/curve";
import { customsOf, readNumber, type Customs } from "./cells";
import { unguardText } from "./formulaGuard";
import { filledCells, findHeadingRow, listText, recordsUnder, type HeadingRow } from "./listFile";
import { flowUnit, headUnit, pumpColumnOf, type PumpColumn } from "./pumpHeadings";
import type { RefusedRow } from "./readPriceList";
import type { RawRecord } from "./readRecords";

/** Points of a curve that are taken, the shut-off head among them. */
export const MOST_POINTS = 12;

/** A pump of a maker's list, its curve in SI with flow rising. */
export interface ListedPump {
  readonly name: string;
  /** Money and W; undefined where the list does not say. */
  readonly price: number | undefined;
  readonly watts: number | undefined;
  readonly curve: readonly CurvePoint[];
  readonly supplier: string;
  readonly theirs: string;
  /** Its first row in the file. */
  readonly row: number;
}

export interface PumpListFile {
  readonly pumps: readonly ListedPump[];
  readonly refused: readonly RefusedRow[];
  readonly headings: readonly string[];
  /** What each column was taken for; undefined where it was left out. */
  readonly columns: readonly (PumpColumn | undefined)[];
  readonly delimiter: string;
  readonly customs: Customs;
}

/** What a file looks like before it is read: its headings, and what each column would be taken for. */
export interface PumpListShape {
  readonly headings: readonly string[];
  readonly columns: readonly (PumpColumn | undefined)[];
  /** The first row under the headings. */
  readonly example: readonly string[];
  readonly customs: Customs;
}

/** What the user says of a file where its headings do not: columns, decimal mark, and units that no heading names. */
export interface ReadPumpsAs {
  readonly columns?: readonly (PumpColumn | undefined)[];
  readonly decimal?: Customs["decimal"];
  /** "gpm", "L/min", "m³/h"; "ft", "psi", "kPa", "m". */
  readonly flow?: string;
  readonly head?: string;
}

/**
 * Reads pumps from a CSV file: a row for a pump with the points of its curve side by side, or a row for a point. Flows
 * and heads are converted by the units of their headings.
 *
 * @throws Problem where the file is no text, names no pump and points, or does not say in which units they are
 */
export function readPumpList(file: Uint8Array | string, as: ReadPumpsAs = {}): PumpListFile {
  const { heading, columns, records, customs } = opened(file, as);
  const { delimiter } = heading;
  if (!hasCurves(columns)) throw invalid(NO_HEADINGS);
  const scales = columns.map((column, index) => scaleOf(column, heading.cells[index] ?? "", as));

  const pumps = new Map<string, Gathered>();
  const refused: RefusedRow[] = [];
  for (const record of records) {
    const problem = record.problem ?? gather(record, { columns, scales, customs }, pumps);
    if (problem !== undefined) refused.push({ row: record.row, problem });
  }
  const done = [...pumps.values()].map(finish);
  refused.push(...done.filter((one): one is RefusedRow => "problem" in one));
  const kept = done.filter((one): one is ListedPump => "curve" in one);
  refused.sort((a, b) => a.row - b.row);
  return { pumps: kept, refused, headings: heading.cells, columns, delimiter, customs };
}

/**
 * The headings of a list and what their columns would be taken for, of lists that cannot be read yet too.
 *
 * @throws Problem where the file is no text, or has no row of headings
 */
export function pumpListShape(file: Uint8Array | string, as: ReadPumpsAs = {}): PumpListShape {
  const { heading, columns, records, customs } = opened(file, as, true);
  return { headings: heading.cells, columns, example: records[0]?.cells ?? [], customs };
}

interface Opened extends Pick<PumpListShape, "columns" | "customs"> {
  readonly heading: HeadingRow;
  readonly records: readonly RawRecord[];
}

/** Where the user maps the columns, or is to do so, any first row will do for headings. */
function opened(file: Uint8Array | string, as: ReadPumpsAs, any = as.columns !== undefined): Opened {
  const { text } = listText(file);
  const heading = findHeadingRow(text, knownColumns) ?? (any ? findHeadingRow(text, filledCells) : undefined);
  if (!heading) throw invalid(NO_HEADINGS);
  const columns = as.columns ?? heading.cells.map(pumpColumnOf);
  const records = recordsUnder(text, heading);
  const numbers = records.flatMap(({ cells }) =>
    cells.filter((_, index) => columns[index] !== undefined && !WORDS.has(columns[index].is)),
  );
  const found = customsOf(numbers, [], heading.delimiter);
  return { heading, columns, records, customs: as.decimal === undefined ? found : { ...found, decimal: as.decimal } };
}

/** Columns whose commas are no decimal marks. */
const WORDS: ReadonlySet<PumpColumn["is"]> = new Set<PumpColumn["is"]>(["name", "supplier", "theirs"]);

interface Gathered {
  readonly name: string;
  readonly row: number;
  price: number | undefined;
  watts: number | undefined;
  supplier: string;
  theirs: string;
  readonly points: CurvePoint[];
}

interface Reading {
  readonly columns: readonly (PumpColumn | undefined)[];
  readonly scales: readonly number[];
  readonly customs: Customs;
}

/** Puts what a row says to its pump; gives what is wrong with the row. */
function gather({ cells, row }: RawRecord, reading: Reading, pumps: Map<string, Gathered>): string | undefined {
  const { columns, scales, customs } = reading;
  const name = unguardText(cells[columns.findIndex((column) => column?.is === "name")] ?? "").trim();
  if (name === "") return "names no pump";
  const known = pumps.get(name.toLowerCase());
  const pump: Gathered = known ?? {
    ...{ name, row, price: undefined, watts: undefined, supplier: "", theirs: "", points: [] },
  };
  const points = new Map<number, { flow?: number; head?: number }>();
  for (const [index, column] of columns.entries()) {
    const cell = (cells[index] ?? "").trim();
    if (column === undefined || column.is === "name" || cell === "") continue;
    if (column.is === "supplier" || column.is === "theirs") {
      pump[column.is] = unguardText(cell);
      continue;
    }
    const value = readNumber(cell, customs);
    if (value === undefined || value < 0) return `(${name}): "${cell.slice(0, 40)}" must be a number of 0 or more`;
    const inside = value * (scales[index] ?? 1);
    if (column.is === "price" || column.is === "watts") pump[column.is] = value;
    else if (column.is === "shutOff") points.set(-1, { flow: 0, head: inside });
    else if (column.is === "flowAt") points.set(1000 + index, { flow: inside, head: column.head });
    else points.set(column.point, { ...points.get(column.point), [column.is]: inside });
  }
  const halves = [...points.values()].filter(({ flow, head }) => flow === undefined || head === undefined);
  if (halves.length > 0) return `(${name}): a point needs its flow and its head`;
  for (const { flow = 0, head = 0 } of points.values()) pump.points.push({ flow, head });
  pumps.set(name.toLowerCase(), pump);
  return undefined;
}

/** A gathered pump with its curve in order, or why it has none. */
function finish({ points, ...pump }: Gathered): ListedPump | RefusedRow {
  const { name, row } = pump;
  const sorted = [...points].sort((a, b) => a.flow - b.flow || b.head - a.head);
  // At several heads above its shut-off a pump gives no flow: the least of them is what is known of its shut-off.
  const still = sorted.filter(({ flow }) => flow === 0);
  const curve = [...still.slice(-1), ...sorted.filter(({ flow }) => flow > 0)];
  const wrong = curve.find(({ flow, head }, index) => {
    const before = curve[index - 1];
    return before !== undefined && (head > before.head || flow <= before.flow);
  });
  const because = (problem: string): RefusedRow => ({ row, problem: `(${name}): ${problem}` });
  if (still.length === 0) return because("needs its shut-off head, a point with flow 0");
  if (curve.length < 2) return because("needs at least one point with a flow");
  if (curve.length > MOST_POINTS) return because(`has ${curve.length} points; at most ${MOST_POINTS} are taken`);
  if (wrong) return because("head must fall as the flow grows");
  if ((curve[0]?.head ?? 0) > CURVE_RANGE.head.max)
    return because(`heads above ${CURVE_RANGE.head.max} m are not taken`);
  return { ...pump, curve };
}

const NO_HEADINGS =
  "the file must have a row of headings with Pump and the points of its curve, such as Shut-off head (ft), " +
  "Flow 1 (gpm), Head 1 (ft), or gpm @ 5 ft";

/** Whether the columns name a pump and points of its curve. */
function hasCurves(columns: readonly (PumpColumn | undefined)[]): boolean {
  const has = (kind: PumpColumn["is"]): boolean => columns.some((column) => column?.is === kind);
  return has("name") && (has("flowAt") || (has("flow") && has("head")));
}

/** How many columns of a list a row of headings names; 0 where it lacks the pump or its points. */
function knownColumns(cells: readonly string[]): number {
  const columns = cells.map(pumpColumnOf).filter((column) => column !== undefined);
  return hasCurves(columns) ? columns.length : 0;
}

/** What one of a column's unit is in SI; money and power have none. */
function scaleOf(column: PumpColumn | undefined, heading: string, as: ReadPumpsAs): number {
  if (column === undefined) return 1;
  const flow = column.is === "flow" || column.is === "flowAt";
  if (!flow && column.is !== "head" && column.is !== "shutOff") return 1;
  const word = column.unit ?? (flow ? as.flow : as.head);
  const scale = word === undefined ? undefined : flow ? flowUnit(word) : headUnit(word);
  if (scale !== undefined) return scale;
  const units = flow ? "gph, gpm, L/h, L/min, L/s or m³/h" : "ft, m, psi, kPa or bar";
  const said = word === undefined ? "no unit" : `"${word}"`;
  throw invalid(`the heading "${heading.trim()}" names ${said}; write ${units} in brackets behind it`);
}
