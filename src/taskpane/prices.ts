import { previewPrices, type PricePreview } from "../csv/comparePrices";
import { unguardText } from "../csv/formulaGuard";
import { readKind, USUAL, type Field, type PriceItem } from "../csv/priceItem";
import type { Area } from "../xlsx/address";
import { areaName } from "../xlsx/address";
import { daySerial, isoDay } from "../host/dates";
import type { CellValue, Change, Grid } from "../host/port";
import { RATE_COLUMNS } from "../workbook/rateColumns";

/** A row of the price list on Rates: its item, or undefined where the row is free. */
export type PriceRow = PriceItem | undefined;

/** The rows of the price list, in the order of the sheet. */
export function readPriceRows(rows: Grid): PriceRow[] {
  return rows.map((row) => {
    const cell = (field: Field): CellValue => row[RATE_COLUMNS.findIndex((column) => column.field === field)] ?? "";
    const text = (field: Field): string => unguardText(String(cell(field)));
    const number = (field: "cost" | "pack" | "minimum" | "waste", usual: number): number => {
      const value = cell(field);
      return typeof value === "number" ? value : usual;
    };
    const code = text("code");
    if (code === "") return undefined;
    return {
      code,
      description: text("description"),
      kind: readKind(String(cell("kind"))) ?? USUAL.kind,
      unit: text("unit") || USUAL.unit,
      cost: number("cost", 0),
      pack: number("pack", USUAL.pack),
      minimum: number("minimum", USUAL.minimum),
      waste: number("waste", USUAL.waste),
      supplier: text("supplier"),
      taxable: String(cell("taxable")).toLowerCase() !== "no",
      day: isoDay(cell("day")),
      theirs: text("theirs"),
    };
  });
}

/** What a file would change, and which of its new items find no free row. */
export interface PriceChanges {
  readonly preview: PricePreview;
  /** New items that fit into the free rows, and those that do not. */
  readonly fitting: readonly PriceItem[];
  readonly crowded: readonly PriceItem[];
}

export function comparePriceRows(
  rows: readonly PriceRow[],
  file: readonly PriceItem[],
  said?: ReadonlyMap<PriceItem, readonly Field[]>,
): PriceChanges {
  const preview = previewPrices(
    rows.filter((row): row is PriceItem => row !== undefined),
    file,
    said,
  );
  const free = rows.filter((row) => row === undefined).length;
  return { preview, fitting: preview.added.slice(0, free), crowded: preview.added.slice(free) };
}

/** Cells that one change may hold; a host takes a whole price list in parts. */
const MOST_CELLS = 24_000;

/**
 * What to write: of known items only the fields that change, and new items as whole rows, neighbours together.
 * `list` is where the price list stands, `held` what its cells hold: a column in which new items say only what a blank cell
 * says stays blank, for a host takes a second for every 20,000 cells or so.
 */
export function priceWrites(
  rows: readonly PriceRow[],
  { preview, fitting }: PriceChanges,
  list: Area,
  accepts: (code: string) => boolean,
  held?: Grid,
): Change[] {
  const changed = new Map(preview.changed.map((entry) => [entry.code.toLowerCase(), entry]));
  const added = fitting.filter(({ code }) => accepts(code));
  const writes: Change[] = [];
  const write = (index: number, column: number, values: CellValue[][]): void => {
    const [top, left] = [list.top + index, list.left + column];
    const right = left + (values[0]?.length ?? 1) - 1;
    writes.push({ place: areaName({ sheet: list.sheet, top, left, bottom: top + values.length - 1, right }), values });
  };
  let taken = 0;
  let block: CellValue[][] = [];
  const flush = (before: number): void => {
    const first = before - block.length;
    const written = RATE_COLUMNS.map(
      ({ field }, column) =>
        !held ||
        block.some((row, down) => !saidByBlank(field, row[column]) || (held[first + down]?.[column] ?? "") !== ""),
    );
    for (let left = written.indexOf(true); block.length > 0 && left >= 0;) {
      const end = written.indexOf(false, left);
      const right = end < 0 ? written.length : end;
      write(
        first,
        left,
        block.map((row) => row.slice(left, right)),
      );
      left = written.indexOf(true, right);
    }
    block = [];
  };
  rows.forEach((row, index) => {
    const next = row ? undefined : added[taken++];
    if (!next || block.length * RATE_COLUMNS.length >= MOST_CELLS) flush(index);
    if (next) block.push(RATE_COLUMNS.map(({ field }) => cellOf(next, field)));
    const entry = row && changed.get(row.code.toLowerCase());
    if (!entry || !accepts(entry.code)) return;
    // A second row with the same code was not compared, so it stays.
    changed.delete(row.code.toLowerCase());
    for (const { field } of entry.changes) {
      write(
        index,
        RATE_COLUMNS.findIndex((column) => column.field === field),
        [[cellOf(entry.item, field)]],
      );
    }
  });
  flush(rows.length);
  return writes;
}

/** What the workbook takes a blank cell for; the unit it shows as it stands, and by the pack it rounds what is bought. */
function saidByBlank(field: Field, value: CellValue | undefined): boolean {
  if (value === "" || value === undefined) return true;
  if (field === "taxable") return value === "yes";
  return (field === "minimum" || field === "waste" || field === "kind") && value === USUAL[field];
}

function cellOf(item: PriceItem, field: Field): CellValue {
  if (field === "day") return daySerial(item.day);
  if (field === "taxable") return item.taxable ? "yes" : "no";
  const value = item[field];
  // A file from elsewhere must not bring a formula into the workbook; the apostrophe keeps the text a text.
  return typeof value === "string" && value.startsWith("=") ? `'${value}` : value;
}
