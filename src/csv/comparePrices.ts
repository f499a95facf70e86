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
 * Compares a file with the present list, by our code or else by the supplier's, without regard to case. Of a known item
 * only what the file says changes: by `said`, or else everything but blank texts. Of two present items with one code the
 * first counts, as for a lookup.
 */
export function previewPrices(
  present: readonly PriceItem[],
  file: readonly PriceItem[],
  said?: ReadonlyMap<PriceItem, readonly Field[]>,
): PricePreview {
  const known = knownItems(present, file);
  const kept = new Set(present);
  const added: PriceItem[] = [];
  const changed: { code: string; changes: FieldChange[]; item: PriceItem }[] = [];
  const same: PriceItem[] = [];
  for (const item of file) {
    const old = known.get(item);
    if (!old) {
      added.push(item);
      continue;
    }
    kept.delete(old);
    const changes = (said?.get(item) ?? ALL)
      .filter((field) => field !== "code" && old[field] !== item[field] && item[field] !== "")
      .map((field): FieldChange => ({ field, from: old[field], to: item[field] }));
    if (changes.length === 0) same.push(item);
    else changed.push({ code: old.code, changes, item });
  }
  return { added, changed, same, kept: [...kept] };
}

/**
 * The present item that each item of the file is. Codes come first: an item must not take the place of another whose
 * own code stands further down in the file.
 */
function knownItems(present: readonly PriceItem[], file: readonly PriceItem[]): Map<PriceItem, PriceItem> {
  const known = new Map<PriceItem, PriceItem>();
  const taken = new Set<PriceItem>();
  for (const field of ["code", "theirs"] as const) {
    const named = new Map(present.map((item) => [item[field].toLowerCase(), item] as const).reverse());
    for (const item of file) {
      const old = named.get(item.code.toLowerCase());
      if (!old || taken.has(old) || known.has(item)) continue;
      known.set(item, old);
      taken.add(old);
    }
  }
  return known;
}
