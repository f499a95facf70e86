import { invalid } from "../calc/problem";
import { ORDER_RANGE } from "../calc/money/orderQuantity";
import { customsOf, readDay, readFlag, readNumber, readShare, type Customs } from "./cells";
import { decodeText, type Encoding } from "./decode";
import { unguardText } from "./formulaGuard";
import { COLUMNS, fieldName, fieldOf, readKind, USUAL, type Field, type PriceItem } from "./priceItem";
import { readRecords, type RawRecord } from "./readRecords";
import { refuseFile } from "./refuseFile";

/** A row that was left out, and why, as the end of a sentence that begins with its number. */
export interface RefusedRow {
  readonly row: number;
  readonly problem: string;
}

/** A price list as it was read, with how it was read, for the user to confirm. */
export interface PriceListFile {
  readonly items: readonly PriceItem[];
  readonly refused: readonly RefusedRow[];
  /** What the file says of each item: the columns it has, where they are not blank. Of a known item, nothing else may change. */
  readonly said: ReadonlyMap<PriceItem, readonly Field[]>;
  /** Headings that name no column of the price list. */
  readonly ignored: readonly string[];
  readonly encoding: Encoding;
  readonly delimiter: string;
  readonly customs: Customs;
}

const DELIMITERS = [";", "\t", ",", "|"] as const;
/** The headings stand within this many rows from the top; title rows may stand above them. */
const HEADING_ROWS = 10;
const NEEDED: readonly Field[] = ["code", "cost"];
/** What a cell of a worksheet holds. */
const LONGEST_TEXT = 32_767;
const LONGEST_CODE = 100;
const DEAREST = 1e9;

/**
 * Reads a price list from a CSV file. A row that can't be read is named and left out; the rest comes in.
 *
 * @throws Problem when the file is no text, or has no row of headings with a code and a cost
 */
export function readPriceList(file: Uint8Array | string): PriceListFile {
  if (typeof file !== "string") refuseFile(file);
  const { text, encoding } =
    typeof file === "string" ? { text: file.replace(/^\uFEFF/, ""), encoding: "UTF-8" as const } : decodeText(file);
  const { delimiter, heading } = findHeadings(text);
  const columns = new Map<Field, number>();
  const ignored: string[] = [];
  heading.cells.forEach((cell, index) => {
    const field = fieldOf(cell);
    if (field !== undefined && !columns.has(field)) columns.set(field, index);
    else if (cell.trim() !== "") ignored.push(cell.trim());
  });
  const records = readRecords(text, delimiter)
    .slice(heading.row)
    .filter(({ cells, problem }) => problem !== undefined || cells.some((cell) => cell.trim() !== ""));
  const cellsOf = (...names: Field[]): string[] =>
    names.flatMap((name) => records.map(({ cells }) => cells[columns.get(name) ?? -1] ?? ""));
  const customs = customsOf(cellsOf("cost", "pack", "minimum", "waste"), cellsOf("day"), delimiter);

  const items: PriceItem[] = [];
  const refused: RefusedRow[] = [];
  const said = new Map<PriceItem, readonly Field[]>();
  const rows = new Map<string, number>();
  for (const record of records) {
    const item = record.problem ?? readItem(record, columns, customs);
    const problem = typeof item === "string" ? item : duplicateOf(item.code, rows, record.row);
    if (problem !== undefined) refused.push({ row: record.row, problem });
    else if (typeof item !== "string") {
      items.push(item);
      said.set(item, filledFields(record, columns));
    }
  }
  return { items, refused, said, ignored, encoding, delimiter, customs };
}

/** The row of headings and the delimiter that make the most of the price list's columns known. */
function findHeadings(text: string): { delimiter: string; heading: RawRecord } {
  let best: { delimiter: string; heading: RawRecord; known: number } | undefined;
  for (const delimiter of DELIMITERS) {
    for (const heading of readRecords(text, delimiter, HEADING_ROWS)) {
      const found = new Set(heading.cells.map(fieldOf));
      const known = COLUMNS.filter(({ field }) => found.has(field)).length;
      if (NEEDED.every((field) => found.has(field)) && known > (best?.known ?? 0)) best = { delimiter, heading, known };
    }
  }
  if (best) return best;
  throw invalid(
    `the file must have a row of headings with Code and Cost among its first ${HEADING_ROWS} rows; ` +
      `the price list knows ${COLUMNS.map(({ heading }) => heading).join(", ")}`,
  );
}

function duplicateOf(code: string, rows: Map<string, number>, row: number): string | undefined {
  const key = code.toLowerCase();
  const first = rows.get(key);
  if (first !== undefined) return `has the code ${code} a second time; it stands in row ${first} already`;
  rows.set(key, row);
  return undefined;
}

function filledFields({ cells }: RawRecord, columns: ReadonlyMap<Field, number>): Field[] {
  return [...columns].flatMap(([field, index]) => ((cells[index] ?? "").trim() === "" ? [] : [field]));
}

/** A record as an item, or what is wrong with it. */
function readItem({ cells }: RawRecord, columns: ReadonlyMap<Field, number>, customs: Customs): PriceItem | string {
  const text = (field: Field): string => unguardText(cells[columns.get(field) ?? -1] ?? "").trim();
  const problems: string[] = [];
  const read = <T>(field: Field, reader: (cell: string) => T | undefined, usual: T, rule: string): T => {
    const cell = text(field);
    if (cell === "") return usual;
    const value = reader(cell);
    if (value === undefined) problems.push(`${fieldName(field)} must be ${rule}; got "${cell.slice(0, 40)}"`);
    return value ?? usual;
  };
  const inside = (low: number, high: number, reader: (cell: string) => number | undefined) => (cell: string) => {
    const value = reader(cell);
    return value !== undefined && value >= low && value <= high ? value : undefined;
  };
  const number = (cell: string): number | undefined => readNumber(cell, customs);

  const code = text("code");
  if (code === "") return "has no code";
  if (code.length > LONGEST_CODE) return `has a code of ${code.length} characters; at most ${LONGEST_CODE} are taken`;
  if (text("cost") === "") return `(${code}) has no cost`;
  const item: PriceItem = {
    code,
    description: text("description"),
    kind: read("kind", readKind, USUAL.kind, "material, labour, machine, subcontract, haulage or other"),
    unit: text("unit") || USUAL.unit,
    cost: read("cost", inside(0, DEAREST, number), 0, "a price of 0 or more"),
    pack: read("pack", inside(1e-6, ORDER_RANGE.pack, number), USUAL.pack, "more than 0"),
    minimum: read("minimum", inside(0, ORDER_RANGE.need, number), USUAL.minimum, "0 or more"),
    waste: read(
      "waste",
      inside(0, ORDER_RANGE.waste, (cell) => readShare(cell, customs)),
      USUAL.waste,
      "a share of 0 to 2, such as 0.1 or 10%",
    ),
    supplier: text("supplier"),
    taxable: read("taxable", readFlag, USUAL.taxable, "yes or no"),
    day: read("day", (cell) => readDay(cell, customs), USUAL.day, "a date such as 2031-05-28"),
    theirs: text("theirs"),
  };
  const long = (["description", "unit", "supplier", "theirs"] as const).find(
    (field) => item[field].length > LONGEST_TEXT,
  );
  if (long) problems.push(`${long} has ${item[long].length} characters; a cell holds ${LONGEST_TEXT}`);
  return problems.length > 0 ? `(${code.slice(0, 40)}): ${problems.join("; ")}` : item;
}
