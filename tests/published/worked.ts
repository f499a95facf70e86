import { hazenWilliamsResistance, HAZEN_WILLIAMS_EXPONENT } from "../../src/calc/pipe/friction";
import { makeCurve, pumpHead } from "../../src/calc/pump/curve";
import { PIPE_TYPES } from "../../src/calc/tables/pipes";
import type { PipeSizeRow } from "../../src/calc/tables/pipeSizes";
import type { Bed } from "../../src/calc/water/bed";
import { given, type Case } from "../cases";
import { inSI } from "./si";

// What published cases and those of arithmetic are both tried with.

/** W; NIST SP 811, appendix B.8 */
export const HORSEPOWER = 745.699872;

/** Head lost to friction, m. */
export function hazenWilliams(flow: number, bore: number, length: number, c: number): number {
  return hazenWilliamsResistance(length, bore, c) * flow ** HAZEN_WILLIAMS_EXPONENT;
}

/** A pump whose curve has its second point at (flow, head), so that its scaled place can be looked up. */
export function scaled(flow: number, head: number, ratio: number): number {
  const curve = makeCurve([
    { flow: 0, head: head * 1.5 },
    { flow, head },
  ]);
  return pumpHead(curve, flow * ratio, ratio);
}

/** A size of a pipe type, by its nominal size in m. */
export function pipeRow(type: string, nominal: number): PipeSizeRow {
  const found = PIPE_TYPES.find(({ name }) => name === type)?.sizes.find((r) => Math.abs(r.nominal - nominal) < 1e-6);
  if (!found) throw new Error(`no ${nominal} m in ${type}`);
  return found;
}

/** The bed of a case; what it does not name is 0. */
export function bedOf(c: Case): Bed {
  const or0 = (name: string): number => (c.inputs[name] ? inSI(c, name) : 0);
  return { width: or0("b"), slope: or0("S"), roughness: given(c.inputs, "n"), sideSlope: or0("z") };
}
