import { SHIPPED_PUMP_ROWS } from "../../../book/shipped/pumps";
import type { CellValue } from "../../model";

/** Pumps the sheet has room for, and points of each curve besides the shut-off head. */
export const PUMP_ROWS = 6;
export const CURVE_PAIRS = 5;

/** The first pumps of the book that ships, as its rows are typed. */
export const DEMO_PUMPS = { US: SHIPPED_PUMP_ROWS.US.slice(0, 3), SI: SHIPPED_PUMP_ROWS.SI.slice(0, 3) } as const;

export const DEMO_CHOICE = "Demo A, middle (invented)";

/** Size, length and pipe type of the demo's pipes: a riser out of the pump well, then the line in the trench. */
export const DEMO_ROUTE: Readonly<Record<"US" | "SI", readonly (readonly CellValue[])[]>> = {
  US: [
    [2.5, 4, "Sch 40 PVC"],
    [3, 31, "Sch 40 PVC"],
  ],
  SI: [
    [63, 1.6, "PVC-U PN10"],
    [75, 9.5, "PVC-U PN10"],
  ],
};

/** Fittings on each of them, in the order of FITTING_COLUMNS, then any other K. */
export const DEMO_FITTINGS: readonly (readonly CellValue[])[] = [
  [1, "", "", "", "", 1, 1, 1, 1, 0.2],
  ["", 2, 2, "", "", "", "", "", "", ""],
];
