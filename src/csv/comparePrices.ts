import { COLUMNS, type Field, type PriceItem } from "./priceItem";

/** One field that would change. */
export interface FieldChange {
  readonly field: Field;
  readonly from: PriceItem[Field];
  readonly to: PriceItem[Field];
}

/** What taking a price list over would do; nothing is overwritten before the user has seen it. */
export interface PricePreview {
  readonly added: readonly PriceItem[];
  /** Items of the present list that would change, under the present code. */
  readonly changed: readonly {
    readonly code: string;
    readonly changes: readonly FieldChange[];
    readonly item: PriceItem;
  }[];
  readonly same: readonly PriceItem[];
  /** Items of the present list that the file does not have; they stay. */
  readonly kept: readonly PriceItem[];
}

const ALL: readonly Field[] = COLUMNS.map(({ field }) => field);

/**
 * Compares a file with the present list, by our code or else by the supplier's, without regard to case. Only what the file
 * has a column for changes, and a blank text of the file says nothing.
 */
export function previewPrices(
  present: readonly PriceItem[],
  file: readonly PriceItem[],
  fields: readonly Field[] = ALL,
): PricePreview {
  const byCode = new Map(present.map((item) => [item.code.toLowerCase(), item]));
  const byTheirs = new Map(present.filter(({ theirs }) => theirs).map((item) => [item.theirs.toLowerCase(), item]));
  const kept = new Set(present);
  const added: PriceItem[] = [];
  const changed: { code: string; changes: FieldChange[]; item: PriceItem }[] = [];
  const same: PriceItem[] = [];
  for (const item of file) {
    const key = item.code.toLowerCase();
    const old = byCode.get(key) ?? byTheirs.get(key);
    if (!old || !kept.delete(old)) {
      added.push(item);
      continue;
    }
    const changes = fields
      .filter((field) => field !== "code" && old[field] !== item[field] && item[field] !== "")
      .map((field): FieldChange => ({ field, from: old[field], to: item[field] }));
    if (changes.length === 0) same.push(item);
    else changed.push({ code: old.code, changes, item });
  }
  return { added, changed, same, kept: [...kept] };
}
