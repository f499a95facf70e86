import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bedDoubt, findRoughness, flowAtDepth, normalFlow, type Bed } from "../../../src/calc/water/bed";
import { BED_KINDS } from "../../../src/calc/tables/beds";

const bed = fc.record({
  width: fc.double({ min: 0.5, max: 10, noNaN: true }),
  slope: fc.double({ min: 1e-3, max: 0.5, noNaN: true }),
  roughness: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
  sideSlope: fc.double({ min: 0, max: 4, noNaN: true }),
});
const flow = fc.double({ min: 1e-6, max: 0.05, noNaN: true });

describe("normalFlow", () => {
  it("is the wide bed's closed form where the banks do not count", () => {
    // q = y^(5/3) √S / n: 50 m wide, 0.01 m³/s per metre, n 0.04, S 0.01 → y = (0.01 × 0.04 / 0.1)^0.6 = 0.0364 m
    const { depth } = normalFlow(0.5, { width: 50, slope: 0.01, roughness: 0.04, sideSlope: 0 });
    expect(Math.abs(depth / (0.01 * 0.4) ** 0.6 - 1)).toBeLessThan(0.001);
  });

  it("carries the flow it was asked for: area × speed (fast-check)", () => {
    fc.assert(
      fc.property(flow, bed, (q, b) => {
        const { area, speed } = normalFlow(q, b);
        expect(Math.abs((area * speed) / q - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("finds the depth back (fast-check)", () => {
    fc.assert(
      fc.property(bed, fc.double({ min: 0.001, max: 0.2, noNaN: true }), (b, y) => {
        const { area, speed } = flowAtDepth(b, y);
        expect(Math.abs(normalFlow(area * speed, b).depth / y - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("stands deeper for more flow, a rougher bed, a flatter bed or a narrower bed (fast-check)", () => {
    fc.assert(
      fc.property(flow, bed, fc.double({ min: 1.01, max: 1.9, noNaN: true }), (q, b, more) => {
        const { depth } = normalFlow(q, b);
        const deeper = (other: Partial<Bed>): void =>
          expect(normalFlow(q, { ...b, ...other }).depth).toBeGreaterThan(depth);
        expect(normalFlow(q * more, b).depth).toBeGreaterThan(depth);
        deeper({ slope: b.slope / more });
        deeper({ width: b.width / more });
        if (b.roughness * more <= 0.3) deeper({ roughness: b.roughness * more });
      }),
    );
  });

  it("has Froude number 1 at critical depth", () => {
    // y = (q²/g)^(1/3): 0.5 m³/s per metre → 0.29427 m; any bed at that depth and speed is critical
    const { froude, speed } = flowAtDepth({ width: 1, slope: 0.01, roughness: 0.03, sideSlope: 0 }, 0.29427);
    expect(froude).toBeCloseTo(speed / Math.sqrt(9.80665 * 0.29427), 9);
  });

  it("gives no depth to no flow, and says when a bed cannot carry the flow", () => {
    const narrow = { width: 0.01, slope: 1e-5, roughness: 0.3, sideSlope: 0 };
    expect(normalFlow(0, narrow)).toEqual({ depth: 0, speed: 0, area: 0, froude: 0 });
    expect(() => normalFlow(1, narrow)).toThrow("flow must fit the bed");
    expect(() => normalFlow(1, { ...narrow, slope: 0 })).toThrow("slope must be 0.00001 to 1 m/m");
    expect(() => normalFlow(1, { ...narrow, width: 0 })).toThrow("bed width must be more than 0");
    expect(() => normalFlow(1, { ...narrow, roughness: 5 })).toThrow("roughness must be 0.009 to 0.3");
  });
});

describe("findRoughness", () => {
  it("reads every bed kind, and lies inside its source's span", () => {
    for (const kind of BED_KINDS) {
      expect(findRoughness(kind.name.toUpperCase())).toBe(kind.n);
      expect(kind.n).toBeGreaterThanOrEqual(kind.least);
      expect(kind.n).toBeLessThanOrEqual(kind.most);
      expect(kind.source.length).toBeGreaterThan(10);
    }
    expect(() => findRoughness("mud")).toThrow('roughness "mud" is not known; use one of cascade over stones');
  });
});

describe("bedDoubt", () => {
  it("warns of thin water and of shooting water", () => {
    const flow = { depth: 0.2, speed: 1, area: 1, froude: 0.5 };
    expect(bedDoubt(flow)).toBe("");
    expect(bedDoubt({ ...flow, depth: 0.03 })).toContain("shallow");
    expect(bedDoubt({ ...flow, froude: 1.2 })).toContain("shoots");
  });
});
