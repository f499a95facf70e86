import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drainBack, drainBackTotal, type Feature } from "../../../src/calc/basin/drainBack";
import { findPipe } from "../../../src/calc/pipe/bore";

const none: Feature = { pools: [], reaches: [], pipes: [], checkValve: false };
const reach = { length: 5, width: 0.8, slope: 0.04, roughness: 0.05 };
const pipe = findPipe({ size: 0.063, isBore: false }, "PVC-U PN10");
const feature: Feature = {
  pools: [{ area: 3, lipWidth: 0.6 }],
  reaches: [reach],
  pipes: [{ pipe, length: 12 }],
  checkValve: false,
};
const flow = fc.double({ min: 1e-5, max: 0.02, noNaN: true });

describe("drainBack", () => {
  it("is lip depth × area in a pool", () => {
    // 0.01 m³/s over 1 m of flat stone: C = 2.63 × √0.3048 = 1.45199; H = (0.01 / 1.45199)^(2/3) = 0.036199 m; × 4 m²
    const [pool] = drainBack(0.01, { ...none, pools: [{ area: 4, lipWidth: 1 }] });
    expect(pool?.volume).toBeCloseTo(4 * 0.036199, 5);
    expect(pool?.remark).toContain("thin sheet");
  });

  it("is flow × length / speed in a bed: what is under way", () => {
    const [bed] = drainBack(0.005, { ...none, reaches: [reach] });
    expect(bed?.volume).toBeCloseTo((0.005 * reach.length) / (bed?.speed ?? NaN), 12);
    expect(bed?.volume).toBeCloseTo((bed?.depth ?? NaN) * reach.width * reach.length, 12);
  });

  it("is the bore's volume in a pipe, and nothing behind a check valve", () => {
    // 57 mm bore: π/4 × 0.057² × 12 m = 0.0306210 m³
    const pipes = [{ pipe, length: 12 }];
    expect(drainBackTotal(drainBack(0.001, { ...none, pipes }))).toBeCloseTo(0.030621, 6);
    const [held] = drainBack(0.001, { ...none, pipes, checkValve: true });
    expect(held).toMatchObject({ volume: 0, remark: "held by the check valve" });
  });

  it("grows with flow, and with every part (fast-check)", () => {
    fc.assert(
      fc.property(flow, fc.double({ min: 1.001, max: 3, noNaN: true }), (q, more) => {
        const total = drainBackTotal(drainBack(q, feature));
        expect(drainBackTotal(drainBack(q * more, feature))).toBeGreaterThan(total);
        const longer = { ...feature, reaches: [{ ...reach, length: reach.length * more }] };
        expect(drainBackTotal(drainBack(q, longer))).toBeGreaterThan(total);
        const wider = { ...feature, pools: [{ area: 3, lipWidth: 0.6 * more }] };
        expect(drainBackTotal(drainBack(q, wider))).toBeLessThan(total);
      }),
    );
  });

  it("says what is wrong", () => {
    expect(() => drainBack(0, feature)).toThrow("flow must be more than 0");
    expect(() => drainBack(0.01, none)).toThrow("pools, runs or a pipe is needed");
    expect(() => drainBack(0.01, { ...none, pools: [{ area: 0, lipWidth: 1 }] })).toThrow(
      "area of pool 1 must be 0.01",
    );
    expect(() => drainBack(0.01, { ...none, pipes: [{ pipe, length: NaN }] })).toThrow(
      "length of pipe 1 must be a finite",
    );
  });
});
