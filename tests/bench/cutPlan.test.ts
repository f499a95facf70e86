import { describe, expect, it } from "vitest";
import { cutPlan } from "../../src/calc/liner/cutplan/plan";
import { stripInstances } from "../published/stripPacking";
import { edgeToEdge, eightPieces, placedAnywhere } from "./cutPlan";

describe("the speed of the cut plan", () => {
  it("proves eight different pieces within 50 ms of processor time", () => {
    const calls = 20;
    cutPlan(eightPieces(0));
    const start = process.cpuUsage();
    for (let turn = 1; turn <= calls; turn++) expect(cutPlan(eightPieces(turn)).proven).toBe(true);
    const { user, system } = process.cpuUsage(start);
    expect((user + system) / 1000 / calls).toBeLessThan(50);
  });
});

describe("our search beside a packing library that may place pieces anywhere", () => {
  it.each(stripInstances)("is no longer on $id, although its cuts run from edge to edge", (instance) => {
    expect(edgeToEdge(instance)).toBeLessThanOrEqual(placedAnywhere(instance, 1) + 1e-6);
  });
});
