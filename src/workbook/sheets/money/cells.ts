import type { Ref, SheetLayout } from "../../layout";
import { bare } from "../../layout/conditions";
import { STYLE } from "../../layout/style";
import type { CellModel } from "../../model";

/** Gives a cell that is laid out already its formula, where it differs from its neighbours'. */
export function fill(s: SheetLayout, at: Ref, formula: string): void {
  const cell = cellOf(s, at);
  delete cell.value;
  cell.formula = `=${bare(formula)}`;
}

/** Gives a laid-out column one formula that fills it from its first cell down. */
export function fillDown(s: SheetLayout, column: Ref, formula: string): void {
  fill(s, column.cell(1), formula);
  cellOf(s, column.cell(1)).spill = { rows: column.bottom - column.top + 1, columns: 1 };
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
