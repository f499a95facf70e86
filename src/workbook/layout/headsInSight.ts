import { cellAddress } from "./address";
import type { Page } from "./page";
import { DEFAULT_HEIGHT } from "./style";

/** The gap between a sheet's heading and what follows. */
const GAP_ROW = 3;

/**
 * Keeps the heads of a list in sight that begins far down its sheet: the gap under the sheet's heading says them once more
 * and stays where it is. `list` is what the list is called.
 */
export function headsInSight(page: Page, head: number, list: string): void {
  for (const [column, { value, formula }] of page.sheet.rows.get(head) ?? []) {
    if (formula === undefined && (value === undefined || value === "")) continue;
    const said = formula === undefined ? { value } : { formula: `=${cellAddress(head, column)}` };
    page.put(GAP_ROW, column, {
      ...(column === 1 ? { value: `${list}: ${String(value)}` } : (said as { value: string } | { formula: string })),
      style: "unit",
      look: { wrap: true, vertical: "bottom", indent: 0, align: column === 1 ? "left" : "center" },
    });
  }
  page.sheet.heights.set(GAP_ROW, page.sheet.heights.get(head) ?? DEFAULT_HEIGHT);
  page.sheet.freeze.rows = GAP_ROW;
}
