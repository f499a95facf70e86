import { describe, expect, it } from "vitest";
import { unitTurner } from "../../../../src/calc/money/reconcile/stoneUnits";

describe("unitTurner", () => {
  // NIST SP 811, appendix B.8: short ton 907.18474 kg, pound 0.45359237 kg, cubic yard 0.764554857984 m³.
  it.each([
    [2000, "lb", "ton", 1],
    [1, "ton", "kg", 907.18474],
    [1000, "kg", "t", 1],
    [1, "tonne", "lb", 2204.62262185],
    [1, "cubic yards", "m3", 0.764554857984],
    [3, "ft", "yd", 1],
    [6, "rolls", "Roll", 6],
    [6, "pcs", "each", 6],
    [6, "EA.", undefined, 6],
  ])("%s %s in %s is %s", (quantity, from, to, expected) => {
    expect(unitTurner(to, undefined).turn(quantity, from)).toBeCloseTo(expected, 8);
  });

  it("meets weight and volume through the density", () => {
    // EPA, Standard Volume-to-Weight Conversion Factors: crushed stone 2,700 lb/yd³, which is 1601.846 kg/m³.
    const density = (2700 * 0.45359237) / 0.764554857984;
    expect(unitTurner("ton", density).turn(20, "yd3")).toBeCloseTo(27, 8);
    expect(unitTurner("yd3", density).turn(27, "ton")).toBeCloseTo(20, 8);
    expect(unitTurner("t", 1600).turn(10, "m3")).toBeCloseTo(16, 8);
  });

  it("takes a blank unit as the order's", () => {
    expect(unitTurner("ton", undefined).turn(7, undefined)).toBe(7);
  });

  it("says why units do not meet", () => {
    const turner = unitTurner("ton", undefined);
    expect(turner.turn(5, "yd3")).toBeUndefined();
    expect(turner.reason("yd3")).toBe("yd3 meets ton only with a density on the order line");
    expect(turner.turn(5, "roll")).toBeUndefined();
    expect(turner.reason("roll")).toBe("roll cannot be turned into ton");
    expect(unitTurner("ton", 1600).turn(5, "ft")).toBeUndefined();
    expect(unitTurner("ton", 1600).reason("ft")).toBe("ft cannot be turned into ton");
  });
});
