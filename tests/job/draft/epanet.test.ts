import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { USUAL_WATER_TEMPERATURE, waterViscosity } from "../../../src/calc/pipe/waterProperties";
import { lastFlow, makeCurve, pumpHead } from "../../../src/calc/pump/curve";
import { draftOf } from "../../../src/job/draft/draft";
import { known } from "../../../src/job/derived";
import { Epanet, EPANET_VISCOSITY, type EpanetPipe } from "../../published/epanet";
import { tries } from "../../effort";
import { sites, SYSTEMS, wishOf } from "./sites";

/** Drafts that EPANET solves for each system of units; 50 where asked for. */
const RUNS = Number(process.env.DRAFT_EPANET ?? tries(12, 50));
/** Pieces that the curve is given to EPANET in, which joins points by straight lines. */
const PIECES = 200;

describe.each(SYSTEMS)("pump and pipe of a draft in %s units, held against EPANET", (system) => {
  let epanet: Epanet;
  beforeAll(async () => {
    epanet = await Epanet.start();
  });

  it("deliver the flow that EPANET finds, within 0.2 %", { timeout: 60_000 + 1000 * RUNS }, () => {
    let solved = 0;
    for (const site of fc.sample(sites, { seed: 1128, numRuns: RUNS })) {
      const { job, state } = draftOf(wishOf(site, system));
      const { pump } = state;
      const [lift, duty, chosen] = [known(pump.lift), known(pump.duty), known(pump.curve)];
      if (lift === undefined || duty?.state !== "delivers" || !chosen) continue;
      const curve = makeCurve(chosen.flows.map((flow, index) => ({ flow, head: chosen.heads[index] ?? 0 })));
      const end = lastFlow(curve);
      const isHazen = job.frictionMethod === "Hazen-Williams";
      const pipes = (known(pump.route) ?? []).map((row, index, all): EpanetPipe => ({
        bore: row.pipe.bore * 1000,
        length: row.length,
        roughness: isHazen ? row.pipe.material.hazenWilliams : row.pipe.material.roughness * 1000,
        k: row.k + (index === all.length - 1 ? 1 : 0),
      }));
      const riser = (known(pump.risers) ?? []).map((row): EpanetPipe => ({
        bore: row.pipe.bore * 1000,
        length: row.length,
        roughness: isHazen ? row.pipe.material.hazenWilliams : row.pipe.material.roughness * 1000,
        k: row.k,
      }));
      const theirs = epanet.solve({
        from: 0,
        to: lift,
        method: isHazen ? "H-W" : "D-W",
        viscosity: waterViscosity(USUAL_WATER_TEMPERATURE) / EPANET_VISCOSITY,
        curve: Array.from({ length: PIECES + 1 }, (_, index) => {
          const flow = (end * index) / PIECES;
          return [flow * 1000, pumpHead(curve, flow)] as const;
        }),
        pumps: job.pumpCount ?? 1,
        speed: 1,
        pipes,
        riser: (job.pumpCount ?? 1) > 1 ? riser : [],
      });
      const apart = Math.abs(theirs.flow / 1000 / duty.flow - 1);
      expect(apart, `${job.chosenPump ?? ""}: ${theirs.flow / 1000} by EPANET, ${duty.flow} here`).toBeLessThan(0.002);
      solved++;
    }
    expect(solved).toBeGreaterThan(0.8 * RUNS);
  });
});
