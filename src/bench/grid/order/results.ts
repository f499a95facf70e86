import type { ICellData, Nullable } from "@univerjs/core";
import type { IFormulaDependencyTree } from "@univerjs/engine-formula";
import type { Inside } from "./inside";

/** Whether a formula that has just run came to something else than its cells hold. */
export function cameToAnother(inside: Inside, { unitId, subUnitId, row, column }: IFormulaDependencyTree): boolean {
  const before = inside._currentConfigService;
  const after = inside._runtimeService;
  const area = after.getUnitArrayFormula()[unitId]?.[subUnitId]?.[row]?.[column];
  const areaBefore = before.getArrayFormulaRange()[unitId]?.[subUnitId]?.[row]?.[column];
  if (area?.endRow !== areaBefore?.endRow || area?.endColumn !== areaBefore?.endColumn) return true;
  const own = after.getUnitData()[unitId]?.[subUnitId]?.getValue(row, column);
  const ownBefore = before.getUnitData()[unitId]?.[subUnitId]?.cellData.getValue(row, column);
  if (!same(own, ownBefore)) return true;
  if (!area) return false;
  const cells = after.getRuntimeArrayFormulaCellData()[unitId]?.[subUnitId];
  const cellsBefore = before.getArrayFormulaCellData()[unitId]?.[subUnitId];
  for (let at = area.startRow; at <= area.endRow; at++) {
    for (let across = area.startColumn; across <= area.endColumn; across++) {
      if (!same(cells?.getValue(at, across), cellsBefore?.getValue(at, across))) return true;
    }
  }
  return false;
}

function same(one: Nullable<ICellData>, other: Nullable<ICellData>): boolean {
  return one?.v === other?.v && one?.t === other?.t;
}
