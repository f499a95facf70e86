import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSoil, SOIL_NAMES, soilOf, soilVolume } from "../../../src/calc/earth/soil";
import { SOILS } from "../../../src/calc/tables/soils";

describe("readSoil", () => {
  it("finds every soil of the table by each of its names", () => {
    expect(SOIL_NAMES).toEqual(SOILS.map((row) => row.name));
    for (const row of SOILS) {
      for (const name of [row.name, ...row.also]) expect(readSoil(`  ${name.toUpperCase()} `)).toMatchObject(row);
      expect(row.compacted).toBeLessThanOrEqual(row.loose);
      expect(row.source.length).toBeGreaterThan(10);
    }
  });

  it.each([
    ["swell 30% shrink 10%", 1.3, 0.9],
    ["Swell: 0.3, shrinkage: 0.1", 1.3, 0.9],
    ["swell 12,5 % and shrink 7,5 %", 1.125, 0.925],
    ["swell=.5 shrink=-.3", 1.5, 1.3],
    ["swell 0 shrink 0", 1, 1],
  ])("takes the user's own figures: %s", (written, loose, compacted) => {
    const soil = readSoil(written);
    expect(soil.loose).toBeCloseTo(loose, 12);
    expect(soil.compacted).toBeCloseTo(compacted, 12);
  });

  it("refuses figures outside their physical range, and what is not understood", () => {
    expect(() => readSoil("swell -5% shrink 10%")).toThrow("swell must be 0 to 1 of the bank volume; got -0.05");
    expect(() => readSoil("swell 25 shrink 10")).toThrow("swell must be 0 to 1");
    expect(() => readSoil("swell 25% shrink 60%")).toThrow("shrink must be -0.6 to 0.4");
    expect(() => readSoil("swell 5% shrink -20%")).toThrow("compacted soil is never bulkier than loose soil");
    expect(() => readSoil("swell 30%")).toThrow('write both figures, as in "swell 30% shrink 10%"');
    expect(() => readSoil("1.25")).toThrow("write both figures");
    expect(() => readSoil("moon dust")).toThrow(/soil "moon dust" is not known; use one of loam, sand, clay/);
    expect(() => readSoil("swell 1.2.3 shrink 1")).toThrow("is not understood");
  });
});

describe("soilVolume", () => {
  it("comes back to the volume it started from, by any way round", () => {
    const state = fc.constantFrom("bank" as const, "loose" as const, "compacted" as const);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        state,
        state,
        (swell, shrink, volume, from, to) => {
          const soil = soilOf(swell, shrink);
          const there = soilVolume(soil, from, volume);
          expect(there[from]).toBe(volume);
          const back = soilVolume(soil, to, there[to]);
          expect(Math.abs(back[from] - volume)).toBeLessThanOrEqual(1e-9 * Math.max(1, volume));
          expect(there.loose).toBeGreaterThanOrEqual(there.bank * (1 - 1e-12));
        },
      ),
    );
  });
});
