import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BERMVOLUME } from "../../../src/functions/earth/bermvolume";
import { PITVOLUME } from "../../../src/functions/earth/pitvolume";
import { SOILBALANCE } from "../../../src/functions/earth/soilbalance";

const YARD3 = 0.9144 ** 3;
const feet = fc.double({ min: 0.5, max: 30, noNaN: true });
const deep = fc.double({ min: 0.5, max: 6, noNaN: true });
const slope = fc.double({ min: 0.1, max: 3, noNaN: true });

describe("the ground functions in both systems", () => {
  it("give the same volume", () => {
    fc.assert(
      fc.property(feet, feet, deep, slope, fc.constantFrom(PITVOLUME, BERMVOLUME), (a, b, d, z, declaration) => {
        const us = declaration.evaluate([a, b, d, z, "US"]) as number;
        const si = declaration.evaluate([a * 0.3048, b * 0.3048, d * 0.3048, z, "SI"]) as number;
        expect((us * YARD3) / si).toBeCloseTo(1, 9);
      }),
    );
  });

  it("give the same balance and the same truckloads", () => {
    const us = SOILBALANCE.evaluate([20, 6, "clay", 12, "US"]) as unknown[][];
    const si = SOILBALANCE.evaluate([20 * YARD3, 6 * YARD3, "clay", 12 * YARD3, "SI"]) as unknown[][];
    us.slice(1).forEach((row, i) => {
      for (const column of [1, 2, 3]) {
        expect((row[column] as number) * YARD3).toBeCloseTo(si[i + 1]?.[column] as number, 9);
      }
      expect(row[4]).toBe(si[i + 1]?.[4]);
    });
    expect(us[0]).toEqual(["Soil", "Bank (yd³)", "Loose (yd³)", "Compacted (yd³)", "Truckloads"]);
  });
});

describe("the ground functions on bad input", () => {
  it("say what was wrong and what would be right", () => {
    expect(() => PITVOLUME.evaluate([8, 8, 2, -1])).toThrow("side slope must be 0 to 10; got -1");
    expect(() => PITVOLUME.evaluate([8, 8, 25])).toThrow("depth must be 0 to 20 ft; got 25 ft");
    expect(() => PITVOLUME.evaluate([8, "wide", 2])).toThrow("width");
    expect(() => BERMVOLUME.evaluate([8, 1, 2, -0.5])).toThrow("side slope must be more than 0, at most 10; got -0.5");
    expect(() => SOILBALANCE.evaluate([8, 1, "swell -10% shrink 5%"])).toThrow(
      "swell must be 0 to 1 of the bank volume",
    );
    expect(() => SOILBALANCE.evaluate([8, 1, "gravy"])).toThrow('soil "gravy" is not known; use one of loam');
    expect(() => SOILBALANCE.evaluate([8, 1, "loam", -4])).toThrow("truck must be 0.0131 to 130 yd³; got -4 yd³");
  });

  it("take upright sides for a blank slope of a pit, 2 to 1 for a berm's", () => {
    // By hand: 8 × 6 × 3 ft = 144 ft³; (1 + 2 × 3) × 3 × 9 = 189 ft³.
    for (const blank of [undefined, null, "", 0]) {
      expect(PITVOLUME.evaluate([8, 6, 3, blank])).toBeCloseTo(144 / 27, 12);
      expect(BERMVOLUME.evaluate([9, 1, 3, blank])).toBeCloseTo(189 / 27, 12);
    }
  });
});
