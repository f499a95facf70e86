import type { PaperCells } from "./cells";

/** Why this is a draft and no offer, in a sentence; "" where it may be signed. */
export function draftReason(cells: PaperCells): string {
  const said = cells.text("QuoteDraft");
  if (said !== "") return said;
  return cells.number("PriceTotal") === undefined ? "Draft, not to be signed: the price is not complete." : "";
}
