import { bench, describe } from "vitest";
import { Epanet } from "../published/epanet";
import { dutyCalc, dutyForEpanet, dutySheet, rankSheet, tdhCalc, tdhSheet, tdhSheetWithFittings } from "./speed";

// `npm run vitest -- bench`: calls a second ("hz"); the summary at the end gives the ratios within this run.
const epanet = await Epanet.start();
const open = epanet.open(dutyForEpanet);

describe("total dynamic head", () => {
  bench("TDH, calculation", () => void tdhCalc());
  bench("TDH, worksheet function", () => void tdhSheet());
  bench("TDH, worksheet function with fittings", () => void tdhSheetWithFittings());
});

describe("duty point", () => {
  bench("DUTY, calculation", () => void dutyCalc());
  bench("DUTY, worksheet function", () => void dutySheet());
  bench("EPANET, network already read in", () => open.solveH());
  bench("EPANET, from the network's text", () => void epanet.solve(dutyForEpanet));
});

describe("pump choice", () => {
  bench("PUMPRANK over 500 pumps", () => void rankSheet());
});
