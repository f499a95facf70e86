import { readFile } from "node:fs/promises";
import { cpus } from "node:os";
import path from "node:path";
import Papa from "papaparse";
import { readPriceList } from "../../src/csv/readPriceList";
import { RECONCILE } from "../../src/functions/money/reconcile";
import { cutPlan } from "../../src/calc/liner/cutplan/plan";
import { recalculate } from "../../src/workbook/recalculate";
import { Epanet } from "../published/epanet";
import { stripInstances } from "../published/stripPacking";
import { edgeToEdge, eightPieces, placedAnywhere } from "./cutPlan";
import { headsCalculated, headsLookedUp, linesSummed } from "./plainSpreadsheet";
import { manyPapers } from "./reconcileLines";
import { dutyCalc, dutyForEpanet, dutySheet, rankSheet, tdhCalc, tdhSheet, tdhSheetWithFittings } from "./speed";
import { secondsOf, secondsPerCall } from "./time";

/*
 * `npm run bench`: our speeds as ratios, within one run, against what a user would otherwise have, or against the wanted
 * figure where there is nothing to compare with. A ratio above 1 is in our favour.
 */
const rate = (seconds: number): string => `${Math.round(1 / seconds).toLocaleString("en")} a second`;
const ms = (seconds: number): string => `${Number((seconds * 1000).toPrecision(3))} ms`;

function line(what: string, ours: string, against: string, ratio: number): void {
  const times = ratio >= 20 ? Math.round(ratio).toString() : ratio.toPrecision(2);
  console.log(`${what.padEnd(46)}${ours.padEnd(22)}${`${times} ×`.padStart(9)}  ${against}`);
}

const wanted = (what: string, seconds: number, atMost: number): void =>
  line(what, ms(seconds), `the wanted ${ms(atMost)}`, atMost / seconds);
const wantedRate = (what: string, seconds: number, atLeast: number): void =>
  line(what, rate(seconds), `the wanted ${atLeast.toLocaleString("en")} a second`, 1 / seconds / atLeast);

async function head(): Promise<void> {
  wantedRate("TDH, calculation", secondsPerCall(tdhCalc, 100_000), 500_000);
  wantedRate("TDH, worksheet function", secondsPerCall(tdhSheet, 50_000), 500_000);
  wantedRate("TDH, worksheet function with fittings", secondsPerCall(tdhSheetWithFittings, 50_000), 500_000);
  const [ours, theirs] = [headsCalculated(2000), headsLookedUp(2000)].map((sheet) => secondsPerCall(sheet, 2) / 2000);
  line("TDH, one cell of a sheet", ms(ours ?? NaN), "a lookup in a friction table", (theirs ?? NaN) / (ours ?? NaN));

  const epanet = await Epanet.start();
  const read = secondsPerCall(() => epanet.solve(dutyForEpanet), 300);
  const opened = epanet.open(dutyForEpanet);
  const solve = secondsPerCall(() => opened.solveH(), 5000);
  for (const [what, call] of [
    ["DUTY, calculation", dutyCalc],
    ["DUTY, worksheet function", dutySheet],
  ] as const) {
    const ours = secondsPerCall(call, 20_000);
    wantedRate(what, ours, 50_000);
    line("", "", "EPANET, reading the network and solving it", read / ours);
    line("", "", "EPANET, solving a network already read", solve / ours);
  }
  wanted("PUMPRANK over 500 pumps", secondsPerCall(rankSheet, 10), 0.05);
}

function plans(): void {
  let turn = 0;
  wanted(
    "CUTPLAN, eight different pieces, proven",
    secondsPerCall(() => cutPlan(eightPieces(turn++)), 10),
    0.05,
  );
  for (const instance of stripInstances) {
    const { id, pieces, optimalLength } = instance;
    let length = NaN;
    const seconds = secondsPerCall(() => (length = edgeToEdge(instance)), 1);
    wanted(`CUTPLAN, strip ${id}, ${pieces.length} pieces`, seconds, 1);
    const gap = (of: number): string => `${((100 * of) / optimalLength - 100).toFixed(1)} % over the shortest`;
    const theirs = placedAnywhere(instance, Math.max(1, seconds));
    line("", gap(length), `a packing library, in length: ${gap(theirs)}`, theirs / length);
  }
}

async function papers(): Promise<void> {
  const some = manyPapers(3000);
  const ours = secondsPerCall(() => RECONCILE.evaluate(some), 3);
  line("RECONCILE, 3,000 lines", ms(ours), "SUMIFS over the same lines", secondsPerCall(linesSummed(1000), 1) / ours);
  const many = manyPapers(50_000);
  wanted(
    "RECONCILE, 50,000 lines",
    secondsPerCall(() => RECONCILE.evaluate(many), 1),
    1,
  );

  const rows = Array.from(
    { length: 20_000 },
    (_, i) => `C-${i},"Item ${i}, grey",${(i % 900) / 7},each,Yard ${i % 30}`,
  );
  const bytes = new TextEncoder().encode(["Code,Description,Cost,Unit,Supplier", ...rows].join("\n"));
  const list = secondsPerCall(() => readPriceList(bytes), 1);
  wanted("Price list of 20,000 lines", list, 1);
  const bare = secondsPerCall(() => Papa.parse(new TextDecoder().decode(bytes)), 1);
  line("", "", "the CSV library alone, which checks nothing", bare / list);

  const demo = await readFile(path.join(import.meta.dirname, "../../templates/rillwright-us-demo.xlsx"));
  wanted("The demo workbook, opened and calculated", await secondsOf(() => recalculate(demo)), 0.3);
}

console.log(
  `${cpus().length} × ${cpus()[0]?.model ?? "?"}, Node ${process.versions.node}; processor time, best of 5\n`,
);
console.log(`${"".padEnd(46)}${"ours".padEnd(22)}${"times".padStart(9)}  as fast as\n`);
await head();
plans();
await papers();
