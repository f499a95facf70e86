import { describe, expect, it } from "vitest";
import { brinkDepth } from "../../../src/calc/water/brink";

const FOOT = 0.3048;

describe("brinkDepth", () => {
  it("is 0.715 of the critical depth: by hand, 1 m²/s has (1 / 9.80665)^(1/3) = 0.46719 m, so 0.33404 m", () => {
    expect(brinkDepth(1)).toBeCloseTo(0.33404, 5);
    expect(brinkDepth(0)).toBe(0);
  });

  it("agrees with a printed design: critical depth 0.49 ft, brink 0.35 ft", () => {
    // Sample of the rock chute data sheet after Robinson, Rice and Kadavy (1998). Its flow per width at critical depth:
    // √(32.174 × 0.49³) = 1.9455 ft²/s.
    expect(brinkDepth(1.9455 * FOOT ** 2) / FOOT).toBeCloseTo(0.35, 2);
  });

  it("grows with the flow to the power 2/3, and refuses what is no flow", () => {
    expect(brinkDepth(8) / brinkDepth(1)).toBeCloseTo(4, 9);
    expect(() => brinkDepth(-1)).toThrow("flow per width must be 0 to 100 m²/s; got -1 m²/s");
    expect(() => brinkDepth(NaN)).toThrow("flow per width must be a finite number");
  });
});
