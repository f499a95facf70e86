import { ObjectMatrix, type Nullable } from "@univerjs/core";
import type { IFormulaDataItem } from "@univerjs/engine-formula";
import type { Inside } from "./inside";
import { areasKnown } from "./spills";

/** All that the order of calculation hangs on; an order holds as long as each part of it is the same. */
export function signatureOf(inside: Inside): unknown[] {
  const config = inside._currentConfigService;
  const parts: unknown[] = [areasKnown()];
  for (const [unitId, sheets] of Object.entries(config.getFormulaData())) {
    for (const [sheetId, formulas] of Object.entries(sheets ?? {})) {
      const { rowCount, columnCount } = config.getSheetRowColumnCount(unitId, sheetId);
      parts.push(unitId, sheetId, rowCount, columnCount);
      new ObjectMatrix<Nullable<IFormulaDataItem>>(formulas ?? {}).forValue((row, column, formula) => {
        if (formula) parts.push(row, column, formula.f, formula.si, formula.x, formula.y);
      });
    }
  }
  for (const [unitId, sheets] of Object.entries(inside._otherFormulaManagerService.getOtherFormulaData())) {
    for (const [sheetId, formulas] of Object.entries(sheets ?? {})) {
      for (const [id, { f, ranges }] of Object.entries(formulas ?? {})) parts.push(unitId, sheetId, id, f, ranges);
    }
  }
  return parts;
}

export function sameSignature(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((part, index) => part === other[index]);
}
