import { toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { BookPump } from "../types";
import { INVENTED_DAY } from "./products";

/** Name, price, watts, then head and flow of each point from the shut-off head on: ft and gph, m and L/h. */
type PumpRow = readonly [name: string, price: number, watts: number, shutOff: number, ...points: readonly number[]];

/**
 * Pumps of our own invention: no maker's curve, name or price. Of the first three, which the demo shows, one serves, one is
 * too weak and one is dear to run.
 */
export const SHIPPED_PUMP_ROWS: Readonly<Record<UnitSystem, readonly PumpRow[]>> = {
  US: [
    ["Demo A, middle (invented)", 418, 265, 11.4, 1200, 10.5, 2400, 8.4, 3300, 5.5, 4000, 2.6, 4500, 0.6],
    ["Demo B, small (invented)", 240, 165, 7.6, 600, 7, 1200, 5.8, 1800, 4.1, 2300, 2.1, 2650, 0.5],
    ["Demo C, large (invented)", 395, 640, 22, 1500, 21, 3000, 18.2, 4500, 13.2, 5700, 7.8, 6600, 2.2],
    ["Demo D, least (invented)", 118, 55, 6, 300, 5.2, 600, 3.6, 800, 1.8, 900, 0.4],
    ["Demo E, wide (invented)", 690, 620, 16, 2000, 15.4, 4000, 13.9, 6000, 10.8, 8000, 5.3, 9000, 0.9],
    ["Demo F, strong (invented)", 1085, 1350, 27, 2500, 26.1, 5000, 23.8, 7500, 19.6, 10000, 12.9, 12000, 4.2],
    ["Demo G, steep (invented)", 812, 980, 34, 1000, 32.5, 2000, 29.4, 3000, 24.3, 4000, 16.2, 5000, 3.6],
    ["Demo H, widest (invented)", 1490, 1820, 24, 4000, 23.3, 8000, 21.2, 12000, 17.1, 16000, 8.8, 18000, 2.1],
  ],
  SI: [
    ["Demo A, middle (invented)", 389, 215, 3.3, 4000, 3.05, 8000, 2.5, 11500, 1.8, 14000, 1, 15800, 0.25],
    ["Demo B, small (invented)", 205, 140, 2.15, 2000, 2, 4000, 1.65, 6000, 1.15, 7500, 0.6, 8600, 0.15],
    ["Demo C, large (invented)", 362, 560, 6.6, 5000, 6.3, 10000, 5.4, 15000, 3.9, 19000, 2.2, 22000, 0.6],
    ["Demo D, least (invented)", 104, 50, 1.8, 1100, 1.55, 2200, 1.1, 3000, 0.5, 3400, 0.1],
    ["Demo E, wide (invented)", 625, 600, 4.9, 7500, 4.7, 15000, 4.2, 22500, 3.3, 30000, 1.6, 34000, 0.3],
    ["Demo F, strong (invented)", 990, 1300, 8.2, 9500, 7.9, 19000, 7.2, 28500, 5.9, 38000, 3.9, 45500, 1.3],
    ["Demo G, steep (invented)", 745, 940, 10.4, 3800, 9.9, 7600, 9, 11400, 7.4, 15200, 4.9, 19000, 1.1],
    ["Demo H, widest (invented)", 1360, 1760, 7.3, 15000, 7.1, 30000, 6.5, 45000, 5.2, 60000, 2.7, 68000, 0.6],
  ],
};

export function shippedPumps(system: UnitSystem): BookPump[] {
  return SHIPPED_PUMP_ROWS[system].map(([name, price, watts, shutOff, ...points]): BookPump => {
    const flow = (typed = 0): number => toInside("flow", typed, system);
    const head = (typed = 0): number => toInside("head", typed, system);
    const curve = [{ flow: 0, head: head(shutOff) }];
    for (let at = 0; at < points.length; at += 2) curve.push({ flow: flow(points[at]), head: head(points[at + 1]) });
    return {
      name,
      price,
      watts,
      curve,
      supplier: "Pump counter (demo)",
      theirs: "",
      day: INVENTED_DAY,
      invented: true,
    };
  });
}
