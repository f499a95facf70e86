import type { SheetLayout } from "../../layout";

/** A heading over a part of the page's width. */
export function heading(s: SheetLayout, row: number, column: number, across: number, text: string): void {
  s.put(row, column, { value: text, style: "section", across });
  s.sheet.heights.set(row, 18);
}
