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
  readonly changed: readonly {
    readonly code: string;
    readonly changes: readonly FieldChange[];
    readonly item: PriceItem;
  }[];
  readonly same: readonly PriceItem[];
  /** Items of the present list that the file does not have; they stay. */
  readonly kept: readonly PriceItem[];
}

/** Compares a file with the present list, by code without regard to case. */
export function previewPrices(present: readonly PriceItem[], file: readonly PriceItem[]): PricePreview {
  const before = new Map(present.map((item) => [item.code.toLowerCase(), item]));
  const added: PriceItem[] = [];
  const changed: { code: string; changes: FieldChange[]; item: PriceItem }[] = [];
  const same: PriceItem[] = [];
  for (const item of file) {
    const old = before.get(item.code.toLowerCase());
    before.delete(item.code.toLowerCase());
    if (!old) {
      added.push(item);
      continue;
    }
    const changes = COLUMNS.filter(({ field }) => old[field] !== item[field]).map(({ field }): FieldChange => ({
      field,
      from: old[field],
      to: item[field],
    }));
    if (changes.length === 0) same.push(item);
    else changed.push({ code: item.code, changes, item });
  }
  return { added, changed, same, kept: [...before.values()] };
}
