import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { darcyWeisbachLoss, frictionFactor, hazenWilliamsResistance, pipeSpeed } from "../../../src/calc/pipe/friction";
import { waterDensity, waterViscosity } from "../../../src/calc/pipe/waterProperties";

describe("frictionFactor", () => {
  it("satisfies Colebrook-White to the last digits (fast-check)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4000, max: 1e8, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (reynolds, rough) => {
          const x = 1 / Math.sqrt(frictionFactor(reynolds, rough));
          expect(x + 2 * Math.log10(rough / 3.7 + (2.51 * x) / reynolds)).toBeCloseTo(0, 10);
        },
      ),
    );
  });

  it("is 64 / Re when laminar, whatever the roughness", () => {
    expect(frictionFactor(800, 0.01)).toBeCloseTo(0.08, 12);
  });

  it("passes between laminar and turbulent without a jump or a kink, and head always rises (fast-check)", () => {
    for (const rough of [0, 0.0001, 0.01]) {
      for (const edge of [2000, 4000]) {
        const [before, at, after] = [edge - 0.01, edge, edge + 0.01].map((re) => frictionFactor(re, rough));
        expect(Math.abs((before ?? 0) / (at ?? 1) - 1)).toBeLessThan(1e-4);
        // Slopes on both sides agree.
        expect(((at ?? 0) - (before ?? 0)) / ((after ?? 0) - (at ?? 0))).toBeCloseTo(1, 2);
      }
    }
    fc.assert(
      fc.property(
        fc.double({ min: 1500, max: 4500, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (reynolds, rough) => {
          const head = (re: number): number => frictionFactor(re, rough) * re * re;
          expect(head(reynolds + 1)).toBeGreaterThan(head(reynolds));
        },
      ),
    );
  });

  it("refuses what has no meaning", () => {
    expect(() => frictionFactor(0, 0)).toThrow("Reynolds number must be more than 0");
    expect(() => frictionFactor(1e5, 0.06)).toThrow("roughness must be 0 to 0.05 of the bore");
  });
});

describe("losses", () => {
  it("agrees with hand arithmetic", () => {
    // 1 L/s in 50 mm: A = π × 0.05² / 4 = 0.00196350 m², V = 0.509296 m/s
    const speed = pipeSpeed(0.001, 0.05);
    expect(speed).toBeCloseTo(0.509296, 6);
    // Laminar: 0.01 L/s of oil at ν = 1e-5: V = 0.00509296, Re = 25.4648, f = 2.51327;
    // hf = 2.51327 × (10 / 0.05) × 0.00509296² / 19.6133 = 6.6474e-4 m, which is 128 ν L Q / (π g d⁴)
    expect(darcyWeisbachLoss(1e-5, 0.05, 10, 0, 1e-5)).toBeCloseTo(
      (128 * 1e-5 * 10 * 1e-5) / (Math.PI * 9.80665 * 0.05 ** 4),
      9,
    );
  });

  it("loses nothing without flow or length", () => {
    expect(darcyWeisbachLoss(0, 0.05, 10, 0, 1e-6)).toBe(0);
    expect(hazenWilliamsResistance(0, 0.05, 150)).toBe(0);
  });

  it("names what is wrong", () => {
    expect(() => pipeSpeed(0.001, 0)).toThrow("bore must be more than 0");
    expect(() => pipeSpeed(NaN, 0.05)).toThrow("flow must be a finite number");
    expect(() => hazenWilliamsResistance(1, 0.05, 0)).toThrow("C of Hazen-Williams must be more than 0");
    expect(() => darcyWeisbachLoss(0.001, 0.05, 1, 0, 0)).toThrow("viscosity must be more than 0");
  });
});

describe("water properties", () => {
  it("agrees with IAPWS at 20 °C: 998.207 kg/m³ and 1.0016 mPa·s", () => {
    expect(waterDensity(20)).toBeCloseTo(998.207, 2);
    expect(waterViscosity(20) * waterDensity(20) * 1000).toBeCloseTo(1.0016, 4);
  });

  it("is thinner the warmer it is (fast-check)", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 39.9, noNaN: true }), (t) => {
        expect(waterViscosity(t + 0.1)).toBeLessThan(waterViscosity(t));
      }),
    );
  });

  it("refuses ice and steam", () => {
    expect(() => waterViscosity(-1)).toThrow("water temperature must be 0 to 40 °C");
    expect(() => waterDensity(100)).toThrow("water temperature must be 0 to 40 °C");
  });
});
