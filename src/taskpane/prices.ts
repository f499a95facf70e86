import { previewPrices, type PricePreview } from "../csv/comparePrices";
import { readKind, USUAL, type Field, type PriceItem } from "../csv/priceItem";
import type { Area } from "../host/address";
import { areaName } from "../host/address";
import { daySerial, isoDay } from "../host/dates";
import type { CellValue, Change, Grid } from "../host/port";
import { RATE_COLUMNS } from "../workbook/rateColumns";

/** A row of the price list on Rates: its item, or undefined where the row is free. */
export type PriceRow = PriceItem | undefined;

/** The rows of the price list, in the order of the sheet. */
export function readPriceRows(rows: Grid): PriceRow[] {
  return rows.map((row) => {
    const cell = (field: Field): CellValue => row[RATE_COLUMNS.findIndex((column) => column.field === field)] ?? "";
    const number = (field: "cost" | "pack" | "minimum" | "waste", usual: number): number => {
      const value = cell(field);
      return typeof value === "number" ? value : usual;
    };
    const code = String(cell("code"));
    if (code === "") return undefined;
    return {
      code,
      description: String(cell("description")),
      kind: readKind(String(cell("kind"))) ?? USUAL.kind,
      unit: String(cell("unit")) || USUAL.unit,
      cost: number("cost", 0),
      pack: number("pack", USUAL.pack),
      minimum: number("minimum", USUAL.minimum),
      waste: number("waste", USUAL.waste),
      supplier: String(cell("supplier")),
      taxable: String(cell("taxable")).toLowerCase() !== "no",
      day: isoDay(cell("day")),
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

export function comparePriceRows(rows: readonly PriceRow[], file: readonly PriceItem[]): PriceChanges {
  const preview = previewPrices(
    rows.filter((row): row is PriceItem => row !== undefined),
    file,
  );
  const free = rows.filter((row) => row === undefined).length;
  return { preview, fitting: preview.added.slice(0, free), crowded: preview.added.slice(free) };
}

/** The cells to write: only the fields that change, and whole rows for new items. `list` is where the price list stands. */
export function priceWrites(
  rows: readonly PriceRow[],
  { preview, fitting }: PriceChanges,
  list: Area,
  accepts: (code: string) => boolean,
): Change[] {
  const changed = new Map(
    preview.changed.filter(({ code }) => accepts(code)).map((entry) => [entry.code.toLowerCase(), entry]),
  );
  const added = fitting.filter(({ code }) => accepts(code));
  return rows.flatMap((row, index): Change[] => {
    const fields = row
      ? changed.get(row.code.toLowerCase())?.changes.map(({ field }) => field)
      : RATE_COLUMNS.map(({ field }) => field);
    const item = row ? changed.get(row.code.toLowerCase())?.item : added.shift();
    if (!item || !fields) return [];
    return fields.map((field) => {
      const column = list.left + RATE_COLUMNS.findIndex((entry) => entry.field === field);
      const at = { sheet: list.sheet, top: list.top + index, bottom: list.top + index, left: column, right: column };
      return { place: areaName(at), values: [[cellOf(item, field)]] };
    });
  });
}

function cellOf(item: PriceItem, field: Field): CellValue {
  if (field === "day") return daySerial(item.day);
  if (field === "taxable") return item.taxable ? "yes" : "no";
  return item[field];
}
