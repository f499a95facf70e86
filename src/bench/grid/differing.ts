import type { IUnitRange } from "@univerjs/core";
import type { Workbook } from "hucre";
import { sheetId } from "../reading/sheetId";
import { UNIT, type GridModel } from "./model";

/** Two engines may differ in the last digits. */
const WITHIN = 1e-9;

/** The formula cells whose results are not the ones that the file holds. */
export function differing(model: GridModel, { sheets }: Workbook): IUnitRange[] {
  const indexes = new Map(sheets.map(({ name }, index) => [name, index]));
  return model.results().flatMap(({ sheet, row, column, values }) => {
    const index = indexes.get(sheet);
    if (index === undefined) return [];
    const stored = sheets[index]?.cells?.get(`${row},${column}`)?.formulaResult ?? "";
    const now = values[0]?.[0] ?? "";
    const same =
      typeof stored === "number" && typeof now === "number"
        ? Math.abs(stored - now) <= WITHIN * Math.max(1, Math.abs(stored))
        : stored === now || stored instanceof Date;
    if (same) return [];
    const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
    return [{ unitId: UNIT, sheetId: sheetId(index), range }];
  });
}
