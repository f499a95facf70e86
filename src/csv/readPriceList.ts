import { customsOf, type Customs } from "./cells";
import type { Encoding } from "./decode";
import { listText, recordsUnder } from "./listFile";
import { findHeadings } from "./priceHeadings";
import type { Field, PriceItem } from "./priceItem";
import { readPriceItem } from "./readPriceItem";
import type { RawRecord } from "./readRecords";

/** A row that was left out, and why, as the end of a sentence that begins with its number. */
export interface RefusedRow {
  readonly row: number;
  readonly problem: string;
}

/** Cells of one column that could not be read: what they say stays as it is, or as it usually is. */
export interface UnreadCells {
  readonly field: Field;
  readonly cells: number;
  /** The first of them, and its row. */
  readonly row: number;
  readonly example: string;
}

/** A price list as it was read, with how it was read, for the user to confirm or to change. */
export interface PriceListFile {
  readonly items: readonly PriceItem[];
  readonly refused: readonly RefusedRow[];
  readonly unread: readonly UnreadCells[];
  /** What the file says of each item: the columns it has, where they are not blank. Of a known item, nothing else may change. */
  readonly said: ReadonlyMap<PriceItem, readonly Field[]>;
  readonly headings: readonly string[];
  /** The column of each field, from 0. */
  readonly columns: ReadonlyMap<Field, number>;
  /** Headings of columns that were left out. */
  readonly ignored: readonly string[];
  readonly encoding: Encoding;
  readonly delimiter: string;
  readonly customs: Customs;
}

/** What the user says of a file, where it was read otherwise than it was meant. */
export interface ReadAs {
  readonly columns?: ReadonlyMap<Field, number>;
  readonly decimal?: Customs["decimal"];
}

/** What a file looks like before it is read: its headings, and what each would be taken for. */
export type PriceListShape = Pick<PriceListFile, "headings" | "columns" | "customs">;

/**
 * The headings of a list and what their columns would be taken for, of lists that cannot be read yet too.
 *
 * @throws Problem when the file is no text, or no table
 */
export function priceListShape(file: Uint8Array | string, as: ReadAs = {}): PriceListShape {
  const { headings, columns, customs } = opened(file, as, true);
  return { headings, columns, customs };
}

function opened(file: Uint8Array | string, as: ReadAs, any = false) {
  const { text, encoding } = listText(file);
  const { delimiter, row, cells: headings, columns } = findHeadings(text, as.columns, any);
  const records = recordsUnder(text, { delimiter, row });
  const cellsOf = (...names: Field[]): string[] =>
    names.flatMap((name) => records.map(({ cells }) => cells[columns.get(name) ?? -1] ?? ""));
  const found = customsOf(cellsOf("cost", "pack", "minimum", "waste"), cellsOf("day"), delimiter);
  const customs = as.decimal === undefined ? found : { ...found, decimal: as.decimal };
  return { encoding, delimiter, headings, columns, records, customs };
}

/**
 * Reads a price list from a CSV file. A row without a code or a readable cost is named and left out; of the others a
 * cell that cannot be read is told and left out, and the rest comes in.
 *
 * @throws Problem when the file is no text, or has no row of headings with a code and a cost
 */
export function readPriceList(file: Uint8Array | string, as: ReadAs = {}): PriceListFile {
  const { encoding, delimiter, headings, columns, records, customs } = opened(file, as);
  const taken = new Set(columns.values());
  const ignored = headings.flatMap((cell, index) => (taken.has(index) || cell.trim() === "" ? [] : [cell.trim()]));

  const items: PriceItem[] = [];
  const refused: RefusedRow[] = [];
  const unread = new Map<Field, UnreadCells>();
  const said = new Map<PriceItem, readonly Field[]>();
  const rows = new Map<string, number>();
  for (const record of records) {
    const read = record.problem === undefined ? readPriceItem(record, columns, customs) : { refused: record.problem };
    const problem = "refused" in read ? read.refused : duplicateOf(read.item.code, rows, record.row);
    if (problem !== undefined) refused.push({ row: record.row, problem });
    else if ("item" in read) {
      items.push(read.item);
      said.set(read.item, filledFields(record, columns, read.unread));
      for (const [field, example] of read.unread) {
        const before = unread.get(field) ?? { field, cells: 0, row: record.row, example };
        unread.set(field, { ...before, cells: before.cells + 1 });
      }
    }
  }
  return {
    ...{ items, refused, unread: [...unread.values()], said, headings, columns },
    ...{ ignored, encoding, delimiter, customs },
  };
}

function duplicateOf(code: string, rows: Map<string, number>, row: number): string | undefined {
  const key = code.toLowerCase();
  const first = rows.get(key);
  if (first !== undefined) return `has the code ${code} a second time; it stands in row ${first} already`;
  rows.set(key, row);
  return undefined;
}

function filledFields(
  { cells }: RawRecord,
  columns: ReadonlyMap<Field, number>,
  unread: readonly (readonly [Field, string])[],
): Field[] {
  const left = new Set(unread.map(([field]) => field));
  return [...columns].flatMap(([field, index]) =>
    left.has(field) || (cells[index] ?? "").trim() === "" ? [] : [field],
  );
}
