import { TDH } from "../../src/functions/pipe/tdh";
import { DUTY } from "../../src/functions/pump/duty";
import { PUMPRANK } from "../../src/functions/pump/pumprank";
import { findPipe } from "../../src/calc/pipe/bore";
import { makeSystem, totalDynamicHead } from "../../src/calc/pipe/route";
import { makeCurve } from "../../src/calc/pump/curve";
import { dutyPoint } from "../../src/calc/pump/duty";
import type { EpanetSystem } from "../published/epanet";

/*
 * What the timings call, shared by the benchmark (which reports) and the guard (which only catches a slide).
 * Every call gets other numbers than the one before, so that nothing can be remembered.
 */
let turn = 0;
const next = (): number => (turn = (turn + 1) % 1000) / 1e6;

const pipe = findPipe({ size: 0.063, isBore: false }, "PVC-U PN10");
const route = [{ pipe, length: 24, k: 6 }];
const curveLitres = [
  [0, 8.4],
  [1, 8.1],
  [2, 7.3],
  [3, 5.9],
  [4, 3.8],
  [5, 0.9],
] as const;
const curve = makeCurve(curveLitres.map(([flow, head]) => ({ flow: flow / 1000, head })));
const curveRows = curveLitres.map(([flow, head]) => [flow * 3600, head]);

export const tdhCalc = (): number => totalDynamicHead(0.003 + next() / 1000, 2, route);
export const tdhSheet = (): unknown => TDH.evaluate([2400 + next(), 6, 2, 100]);
export const tdhSheetWithFittings = (): unknown => {
  const fittings = [
    ["90 elbow", 3],
    ["swing check valve", 1],
  ];
  return TDH.evaluate([2400 + next(), 6, 2, 100, fittings, "Sch 40 PVC", "Hazen-Williams", "US"]);
};

export const dutyCalc = (): number => dutyPoint(curve, makeSystem(2 + next(), route)).flow;
export const dutySheet = (): unknown =>
  DUTY.evaluate([curveRows, 2 + next(), [[63, 24, "PVC-U PN10", 6]], null, null, 10_000, null, null, null, "SI"]);

/** The system of dutyCalc, for EPANET; its K holds the outlet. */
export const dutyForEpanet: EpanetSystem = {
  from: 0,
  to: 2,
  method: "H-W",
  viscosity: 1,
  curve: curveLitres,
  pumps: 1,
  speed: 1,
  pipes: [{ bore: 57, length: 24, roughness: 150, k: 7 }],
};

const pumps = Array.from({ length: 500 }, (_, i) => {
  const share = 0.4 + i / 500;
  return [
    `pump ${i}`,
    100 + i,
    60 + i,
    ...curveLitres.flatMap(([q, h]) => (q === 0 ? [h * share] : [q * 3600, h * share])),
  ];
});
export const rankSheet = (): unknown =>
  PUMPRANK.evaluate([
    pumps,
    10_000,
    2 + next(),
    [[63, 24, "PVC-U PN10", 6]],
    null,
    null,
    null,
    null,
    null,
    null,
    null,
    null,
    null,
    "SI",
  ]);
