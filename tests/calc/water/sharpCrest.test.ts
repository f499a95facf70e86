import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findLipShape, lipFlow } from "../../../src/calc/water/lip";
import { sharpCrestDepth, sharpCrestFlow } from "../../../src/calc/water/sharpCrest";

const crest = fc
  .record({
    width: fc.double({ min: 0.15, max: 3, noNaN: true }),
    crestHeight: fc.double({ min: 0.1, max: 2, noNaN: true }),
    widening: fc.option(fc.double({ min: 1, max: 6, noNaN: true }), { nil: undefined }),
  })
  .map(({ width, crestHeight, widening }) => ({ width, crestHeight, poolWidth: widening && width * widening }));

describe("a sharp crest in its pool", () => {
  it("leads from a flow back to its depth (fast-check)", () => {
    fc.assert(
      fc.property(crest, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (one, part) => {
        const depth = part * Math.min(one.width, one.crestHeight, 1);
        expect(sharpCrestDepth(sharpCrestFlow(one, depth), one) / depth).toBeCloseTo(1, 9);
      }),
    );
  });

  // Two men's formulas for one crest, each of them sure to 1.5 % (ISO 1438, from memory).
  it("is the same by both formulas where the crest is as wide as its pool", () => {
    for (const [width, crestHeight, depth] of [
      [1, 0.3, 0.06],
      [0.6, 0.5, 0.1],
      [2, 0.4, 0.15],
    ] as const) {
      const rehbock = sharpCrestFlow({ width, crestHeight }, depth);
      const kindsvater = sharpCrestFlow({ width, crestHeight, poolWidth: width }, depth);
      expect(Math.abs(kindsvater / rehbock - 1), `${kindsvater} and ${rehbock}`).toBeLessThan(0.015);
    }
  });

  // Francis' contraction takes a tenth of the head off at each end, whatever the pool: a wide pool must lie near it.
  it("draws in at its ends as Francis says where the pool is wide", () => {
    const flow = sharpCrestFlow({ width: 1, crestHeight: 1, poolWidth: 5 }, 0.1);
    expect(Math.abs(flow / lipFlow(1, 0.1, findLipShape("sharp, narrowed")) - 1), String(flow)).toBeLessThan(0.03);
  });

  it("refuses what the formulas do not cover", () => {
    expect(() => sharpCrestFlow({ width: 1, crestHeight: 0.1 }, 0.11)).toThrow(
      "sheet depth must be at most 100 mm (3.937 in) on this crest; got 110 mm (4.331 in)",
    );
    expect(() => sharpCrestFlow({ width: 1, crestHeight: 0.1, poolWidth: 0.9 }, 0.05)).toThrow(
      "pool width must be at least the lip width, 1000 mm (39.37 in)",
    );
    expect(() => sharpCrestDepth(5, { width: 1, crestHeight: 0.1 })).toThrow(/flow must be at most .* over this crest/);
    expect(() => sharpCrestFlow({ width: 1, crestHeight: 0.01 }, 0.005)).toThrow("crest height must be 0.03 to 10 m");
    expect(sharpCrestFlow({ width: 1, crestHeight: 0.1 }, 0)).toBe(0);
  });
});
