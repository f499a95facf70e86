import type { FieldChange } from "../csv/comparePrices";
import { fieldName, type PriceItem } from "../csv/priceItem";
import type { PriceListFile } from "../csv/readPriceList";
import { counted } from "./counted";
import type { PriceChanges } from "./prices";

/** What a file would change, in sentences. */
export function previewWords(
  { preview, crowded }: PriceChanges,
  { ignored, unread }: Pick<PriceListFile, "ignored" | "unread">,
): string[] {
  const { changed, added, same, kept } = preview;
  return [
    `${counted(changed.length, "item changes", "items change")}, ${added.length} new, ${same.length} the same.`,
    kept.length > 0 ? `Not in the file, and left as they are: ${counted(kept.length, "item")}.` : "",
    crowded.length > 0 ? `New, but without a free row on Rates, and left out: ${counted(crowded.length, "item")}.` : "",
    ignored.length > 0 ? `Columns left out: ${ignored.join(", ")}.` : "",
    ...unread.map(
      ({ field, cells, row, example }) =>
        `Not read, and left as it is or as it usually is: ${fieldName(field)} of ${counted(cells, "item")}, ` +
        `such as "${example.slice(0, 40)}" in row ${row}.`,
    ),
  ].filter(Boolean);
}

/** "cost 10 → 12, supplier's code blank → 40-118". */
export function changeWords(changes: readonly FieldChange[]): string {
  // A cost of nothing is one that nobody has typed.
  const was = ({ field, from }: FieldChange): string => (field === "cost" && from === 0 ? "blank" : shown(from));
  return changes.map((change) => `${fieldName(change.field)} ${was(change)} → ${shown(change.to)}`).join(", ");
}

function shown(value: FieldChange["from"]): string {
  if (typeof value === "boolean") return value ? "yes" : "no";
  return value === "" ? "blank" : String(value);
}

/** What a new item is: its description, and its price. */
export function newWords({ description, cost, unit }: PriceItem): string {
  return [description, `${cost} per ${unit}`].filter(Boolean).join(", ");
}

/** What was written, and what was left because it is protected, in numbers of cells. */
export function takenWords(written: number, guarded: number): string {
  const changed = counted(written, "cell of the price list was changed", "cells of the price list were changed");
  return `${changed}.${guarded > 0 ? ` Protected, and left as they are: ${counted(guarded, "cell")}.` : ""}`;
}
