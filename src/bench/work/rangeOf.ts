import type { Area } from "../../xlsx/address";

/** An area as the embedded spreadsheet takes it. */
export function rangeOf({ top, left, bottom, right }: Area): {
  startRow: number;
  startColumn: number;
  endRow: number;
  endColumn: number;
} {
  return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
}
