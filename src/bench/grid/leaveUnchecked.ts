import type { Univer } from "@univerjs/core";
import { DataValidationCacheService } from "@univerjs/preset-sheets-data-validation";

/**
 * Writes a list whose rows were checked as it was read, and shown before it was taken: the library would check each of its
 * cells anew by the rules of typing, which takes seconds for a price list. What it said of the cells before is forgotten.
 */
export function leaveUnchecked(univer: Univer, write: () => void): void {
  const said = univer.__getInjector().get(DataValidationCacheService);
  const markRangeDirty = said.markRangeDirty.bind(said);
  said.markRangeDirty = (unit, sheet, ranges) => {
    const cells = said.ensureCache(unit, sheet);
    for (const { startRow, endRow, startColumn, endColumn } of ranges) {
      for (let row = startRow; row <= endRow; row++) {
        for (let column = startColumn; column <= endColumn; column++) {
          if (cells.getValue(row, column) !== undefined) cells.realDeleteValue(row, column);
        }
      }
    }
  };
  try {
    write();
  } finally {
    said.markRangeDirty = markRangeDirty;
  }
}
