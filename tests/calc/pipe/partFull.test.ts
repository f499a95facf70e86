import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fullFlow, partFull, partFullDepth } from "../../../src/calc/pipe/partFull";

const PIPE = { bore: 0.1, slope: 0.01, roughness: 0.011 };

describe("a part-full pipe", () => {
  it("carries half of its full flow at half depth: half the area, the same hydraulic radius", () => {
    expect(partFull(PIPE, 0.05).flow / fullFlow(PIPE)).toBeCloseTo(0.5, 12);
    expect(partFullDepth(fullFlow(PIPE) / 2, PIPE)).toBeCloseTo(0.05, 9);
    expect(partFull(PIPE, 0.1).flow).toBeCloseTo(fullFlow(PIPE), 12);
    expect(partFull(PIPE, 0)).toEqual({ area: 0, wetted: 0, speed: 0, flow: 0 });
  });

  it("takes the shallower of the depths that carry a flow, and leads back to it (fast-check)", () => {
    const pipe = fc.record({
      bore: fc.double({ min: 0.02, max: 1, noNaN: true }),
      slope: fc.double({ min: 1e-4, max: 0.5, noNaN: true }),
      roughness: fc.double({ min: 0.008, max: 0.03, noNaN: true }),
    });
    fc.assert(
      fc.property(pipe, fc.double({ min: 1e-6, max: 1, noNaN: true }), (one, share) => {
        const flow = share * fullFlow(one);
        const depth = partFullDepth(flow, one);
        expect(depth / one.bore).toBeLessThan(0.83);
        expect(partFull(one, depth).flow / flow).toBeCloseTo(1, 6);
      }),
    );
  });

  it("refuses more than the full pipe carries, and depths over the bore", () => {
    expect(() => partFullDepth(1.01 * fullFlow(PIPE), PIPE)).toThrow(
      /flow must be 0 to what the full pipe carries, .*a larger size, .*more slope/,
    );
    expect(() => partFull(PIPE, 0.11)).toThrow(
      "depth must be 0 to the bore of this size, 100 mm (3.937 in); got 110 mm (4.331 in)",
    );
    expect(() => partFull({ ...PIPE, slope: 2 }, 0.05)).toThrow("slope must be 0.00001 to 1");
    expect(() => partFullDepth(0.001, { ...PIPE, roughness: 0.1 })).toThrow("roughness must be 0.008 to 0.03");
  });
});
