import type { Ref, SheetLayout } from "../../layout";
import { bare } from "../../layout/conditions";
import { STYLE } from "../../layout/style";
import type { CellModel, Origin } from "../../model";

/** Gives a cell that is laid out already its formula, where it differs from its neighbours'. */
export function fill(s: SheetLayout, at: Ref, formula: string, origin?: Origin): void {
  const cell = cellOf(s, at);
  delete cell.value;
  cell.formula = `=${bare(formula)}`;
  if (origin) cell.origin = { ...cell.origin, ...origin };
}

/** Gives a laid-out column, or several side by side, one formula that fills them from the first cell down. */
export function fillDown(s: SheetLayout, area: Ref, formula: string, origin?: Origin): void {
  fill(s, area.cell(1), formula, origin);
  cellOf(s, area.cell(1)).spill = { rows: area.bottom - area.top + 1, columns: area.right - area.left + 1 };
}

/** Makes one cell of an input column a fixed text. */
export function lock(s: SheetLayout, at: Ref): void {
  cellOf(s, at).style = STYLE.resultText;
}

/** A cell that is laid out already. */
export function cellOf(s: SheetLayout, at: Ref): CellModel {
  const cell = s.sheet.rows.get(at.top)?.get(at.left);
  if (!cell) throw new Error(`${s.name}: there is no cell at ${at.address}`);
  return cell;
}
