import type { CellModel } from "../model";

/** Reasons below each other that one formula gives. */
export interface ReasonRun {
  /** The cell that holds the formula, and its row. */
  readonly head: CellModel;
  readonly top: number;
  readonly bottom: number;
  /** The row of its last fact on the sheet of facts. */
  readonly last: number;
}
