import { Ref, type SheetLayout } from "../../layout";
import { areaAddress } from "../../layout/address";

export const MOST_DROPS = 12;
export const LEVEL = "#,##0.000";
/** Columns that formulas and the chart read, right of what is printed. */
export const BESIDE = 15;
/** Points of the assumed ground and of the finished bed: right of what the run of levels says about itself. */
export const POINTS = 25;

/** The sheet columns of the designed surface and, right of what is printed, of its helpers. */
export const C = { place: 1, station: 2, dig: 3, width: 4, step: 5, bed: 6, deeper: 7 } as const;
export const H = { ends: BESIDE, fallen: BESIDE + 1, edge: BESIDE + 2, lip: BESIDE + 3, liner: BESIDE + 4 } as const;

/** Cells of a column, and how a formula of the sheet calls them. */
export interface Column {
  readonly cells: Ref;
  readonly text: string;
}

/** So many cells of a column from a row on, one for each drop if left out. */
export function down(s: SheetLayout, top: number, column: number, rows = MOST_DROPS): Column {
  const cells = new Ref(s.name, top, column, top + rows - 1, column);
  return { cells, text: areaAddress(cells) };
}
