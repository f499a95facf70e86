import { ORDER_RANGE } from "../calc/money/orderQuantity";
import { readDay, readFlag, readNumber, readShare, type Customs } from "./cells";
import { unguardText } from "./formulaGuard";
import { fieldName, readKind, USUAL, type Field, type PriceItem } from "./priceItem";
import type { RawRecord } from "./readRecords";

/** What a cell of a worksheet holds. */
const LONGEST_TEXT = 32_767;
const LONGEST_CODE = 100;
const DEAREST = 1e9;

/** An item as a row says it, with the cells that could not be read and were left out; or why there is none. */
export type ItemRead =
  | { readonly item: PriceItem; readonly unread: readonly (readonly [field: Field, cell: string])[] }
  | { readonly refused: string };

/**
 * A record as an item. Only code and cost can refuse it: what else cannot be read keeps its usual value, and is told.
 */
export function readPriceItem({ cells }: RawRecord, columns: ReadonlyMap<Field, number>, customs: Customs): ItemRead {
  const text = (field: Field): string => unguardText(cells[columns.get(field) ?? -1] ?? "").trim();
  const code = text("code");
  if (code === "") return { refused: "has no code" };
  if (code.length > LONGEST_CODE) {
    return { refused: `has a code of ${code.length} characters; at most ${LONGEST_CODE} are taken` };
  }
  const named = `(${code.slice(0, 40)})`;
  const typed = text("cost");
  if (typed === "") return { refused: `${named} has no cost` };
  const number = (cell: string): number | undefined => readNumber(cell, customs);
  const cost = inside(0, DEAREST, number)(typed);
  if (cost === undefined) {
    return { refused: `${named}: cost must be a price of 0 or more; got "${typed.slice(0, 40)}"` };
  }
  const texts = {
    description: text("description"),
    unit: text("unit"),
    supplier: text("supplier"),
    theirs: text("theirs"),
  };
  const long = (["description", "unit", "supplier", "theirs"] as const).find((key) => texts[key].length > LONGEST_TEXT);
  if (long) {
    return {
      refused: `${named}: ${fieldName(long)} has ${texts[long].length} characters; a cell holds ${LONGEST_TEXT}`,
    };
  }
  const unread: [Field, string][] = [];
  const optional = <T>(field: Field, reader: (cell: string) => T | undefined, usual: T): T => {
    const cell = text(field);
    if (cell === "") return usual;
    const value = reader(cell);
    if (value === undefined) unread.push([field, cell]);
    return value ?? usual;
  };
  const share = (cell: string): number | undefined => readShare(cell, customs);
  const item: PriceItem = {
    code,
    ...texts,
    kind: optional("kind", readKind, USUAL.kind),
    unit: texts.unit || USUAL.unit,
    cost,
    pack: optional("pack", inside(1e-6, ORDER_RANGE.pack, number), USUAL.pack),
    minimum: optional("minimum", inside(0, ORDER_RANGE.need, number), USUAL.minimum),
    waste: optional("waste", inside(0, ORDER_RANGE.waste, share), USUAL.waste),
    taxable: optional("taxable", readFlag, USUAL.taxable),
    day: optional("day", (cell) => readDay(cell, customs), USUAL.day),
  };
  return { item, unread };
}

function inside(low: number, high: number, reader: (cell: string) => number | undefined) {
  return (cell: string): number | undefined => {
    const value = reader(cell);
    return value !== undefined && value >= low && value <= high ? value : undefined;
  };
}
