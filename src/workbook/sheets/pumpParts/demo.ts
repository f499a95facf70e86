import type { CellValue } from "../../model";

/*
 * The demo's pumps are our own invention: no maker's curve, name or price. Of the three one serves, one is too weak
 * and one is dear to run.
 */

/** Pumps the sheet has room for, and points of each curve besides the shut-off head. */
export const PUMP_ROWS = 6;
export const CURVE_PAIRS = 5;

/** Name, price, watts, shut-off head, then flow and head five times: gph and ft, L/h and m. */
export const DEMO_PUMPS: Readonly<Record<"US" | "SI", readonly (readonly CellValue[])[]>> = {
  US: [
    ["Demo A, middle (invented)", 418, 265, 11.4, 1200, 10.5, 2400, 8.4, 3300, 5.5, 4000, 2.6, 4500, 0.6],
    ["Demo B, small (invented)", 240, 165, 7.6, 600, 7, 1200, 5.8, 1800, 4.1, 2300, 2.1, 2650, 0.5],
    ["Demo C, large (invented)", 395, 640, 22, 1500, 21, 3000, 18.2, 4500, 13.2, 5700, 7.8, 6600, 2.2],
  ],
  SI: [
    ["Demo A, middle (invented)", 389, 215, 3.3, 4000, 3.05, 8000, 2.5, 11500, 1.8, 14000, 1, 15800, 0.25],
    ["Demo B, small (invented)", 205, 140, 2.15, 2000, 2, 4000, 1.65, 6000, 1.15, 7500, 0.6, 8600, 0.15],
    ["Demo C, large (invented)", 362, 560, 6.6, 5000, 6.3, 10000, 5.4, 15000, 3.9, 19000, 2.2, 22000, 0.6],
  ],
};

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
