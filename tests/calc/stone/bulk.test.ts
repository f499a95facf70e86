import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gravelWeight, stoneWeight } from "../../../src/calc/stone/bulk";

const size = fc.double({ min: 0.001, max: 1000, noNaN: true });
const depth = fc.double({ min: 0.001, max: 2, noNaN: true });
const density = fc.double({ min: 600, max: 2400, noNaN: true });

describe("gravel and stone by volume", () => {
  it("weighs a layer", () => {
    // By hand: 20 m² × 0.1 m × 1,500 kg/m³ × 1.05 = 3,150 kg.
    expect(gravelWeight(20, 0.1, 1500, 0.05)).toBeCloseTo(3150, 9);
    // By hand: 1.5 m³ × 1,600 kg/m³ = 2,400 kg.
    expect(stoneWeight(1.5, 1600)).toBe(2400);
    expect(stoneWeight(0, 1600)).toBe(0);
  });

  it("adds up: two areas weigh what their sum weighs", () => {
    fc.assert(
      fc.property(size, size, depth, density, (a, b, d, rho) => {
        const parts = gravelWeight(a, d, rho) + gravelWeight(b, d, rho);
        expect(Math.abs(parts - gravelWeight(a + b, d, rho))).toBeLessThanOrEqual(1e-9 * parts);
      }),
    );
  });

  it("grows with depth, density and waste", () => {
    fc.assert(
      fc.property(size, depth, density, (a, d, rho) => {
        const weight = gravelWeight(a, d, rho);
        expect(gravelWeight(a, d * 1.01, rho)).toBeGreaterThan(weight);
        expect(gravelWeight(a, d, rho * 1.01)).toBeGreaterThan(weight);
        expect(gravelWeight(a, d, rho, 0.01)).toBeGreaterThan(weight);
      }),
    );
  });

  it("refuses what no layer can be", () => {
    expect(() => gravelWeight(-1, 0.1, 1500)).toThrow("area must be 0 to 100000 m²; got -1 m²");
    expect(() => gravelWeight(1, 6, 1500)).toThrow("depth must be 0 to 5 m; got 6 m");
    expect(() => gravelWeight(1, NaN, 1500)).toThrow("depth must be a finite number");
    expect(() => stoneWeight(Infinity, 1500)).toThrow("volume must be a finite number");
    expect(() => stoneWeight(1, 1.5)).toThrow("stone density must be 600 to 2500 kg/m³");
    expect(() => stoneWeight(1, 1500, -0.1)).toThrow("waste must be 0 to 1");
  });
});
