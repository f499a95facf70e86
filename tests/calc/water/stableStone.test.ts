import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stableStone } from "../../../src/calc/water/stableStone";

const speed = fc.double({ min: 0.01, max: 5, noNaN: true });
const density = fc.double({ min: 1300, max: 3000, noNaN: true });

describe("stableStone", () => {
  it("is Isbash by hand", () => {
    // 1 m/s, 2500 kg/m³, high: 1 / (2 × 9.80665 × 0.7396 × 1.5) = 0.045958 m
    expect(stableStone(1, 2500, "high")).toBeCloseTo(0.045958, 6);
    // low: 1 / (2 × 9.80665 × 1.44 × 1.5) = 0.023605 m
    expect(stableStone(1, 2500, "low")).toBeCloseTo(0.023605, 6);
    expect(stableStone(0, 2500, "high")).toBe(0);
  });

  it("grows with the square of the speed, shrinks with heavier rock and calmer water (fast-check)", () => {
    fc.assert(
      fc.property(speed, density, (v, d) => {
        expect(stableStone(2 * v, d, "high") / stableStone(v, d, "high")).toBeCloseTo(4, 9);
        expect(stableStone(v, d + 100, "high")).toBeLessThan(stableStone(v, d, "high"));
        expect(stableStone(v, d, "low")).toBeLessThan(stableStone(v, d, "high"));
      }),
    );
  });

  it("refuses rock that floats and speed beyond the range", () => {
    expect(() => stableStone(1, 1000, "high")).toThrow("rock must be 1200 to 3500 kg/m³");
    expect(() => stableStone(11, 2500, "high")).toThrow("speed must be 0 to 10 m/s");
  });
});
