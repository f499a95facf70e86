import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { densityNames, readDensity, readDensityRange, requireDensity } from "../../../src/calc/stone/density";
import { ROCKS } from "../../../src/calc/tables/rocks";
import { STONES } from "../../../src/calc/tables/stones";

// 1 lb/ft³ = 16.01846 kg/m³; 1 short ton/yd³ = 2,000 × 0.45359237 / 0.9144³ = 1186.553 kg/m³ (NIST SP 811, B.8).
const POUND = 16.01846337;
const TON = 1186.553;

describe("readDensity", () => {
  it("takes the table's usual figure for a name, in any case and spacing", () => {
    // US EPA: crushed stone 2,700 lb/yd³ = 100 lb/ft³.
    expect(readDensity("stone", "Crushed-Stone", "US", "stone") / POUND).toBeCloseTo(100, 6);
    expect(readDensity("stone", " river  ROCK ", "SI", "stone") / POUND).toBeCloseTo(99, 6);
    expect(readDensity("rock", "granite", "US", "rock")).toBe(2650);
  });

  it.each([
    ["105 lb/ft3", 105 * POUND],
    ["105 pcf", 105 * POUND],
    ["1.35 ton/yd3", 1.35 * TON],
    ["1.35 tons per cubic yard", 1.35 * TON],
    ["2,700 lb/cu yd", 1.35 * TON],
    ["1.45 t/m3", 1450],
    ["1,45 t/m³", 1450],
    ["1450 kg/m^3", 1450],
  ])("takes the user's own figure %s in either system", (written, kilograms) => {
    for (const system of ["US", "SI"] as const) {
      expect(readDensity("stone", written, system, "stone") / kilograms).toBeCloseTo(1, 6);
    }
  });

  // ASTM C503 (from memory): at least 162 lb/ft³ of calcite, 175 of dolomite marble; dolomite itself has 2.87.
  // Loose lava rock weighs about half of crushed stone (common practice, no source): half of the EPA's 2,700 lb/yd³.
  it("takes lava rock for half as heavy as crushed stone", () => {
    expect((readDensity("stone", "lava rock", "US", "stone") / POUND) * 27).toBeCloseTo(2700 / 2, 6);
  });

  it("knows marble, its heavy kind included", () => {
    const row = ROCKS.find(({ name }) => name === "marble");
    expect((row?.low ?? NaN) / POUND).toBeCloseTo(162, 0);
    expect((row?.high ?? NaN) / POUND).toBeGreaterThan(175);
    expect(row?.usual).toBe(2700);
  });

  it("takes a number in the system's default unit", () => {
    expect(readDensity("rock", 165, "US", "rock") / POUND).toBeCloseTo(165, 6);
    expect(readDensity("rock", 2.6, "SI", "rock")).toBeCloseTo(2600, 9);
  });

  it("gives a row of the table with its range, and a figure of one's own without", () => {
    // USACE, Streambank Manual, appendix A: rock 150 to 170 lb/ft³.
    const { low, high } = readDensityRange("rock", "fieldstone", "US", "rock");
    expect([low / POUND, high / POUND]).toEqual([expect.closeTo(150, 6), expect.closeTo(170, 6)]);
    expect(readDensityRange("rock", 2.6, "SI", "rock")).toEqual({ low: 2600, usual: 2600, high: 2600 });
  });

  it("tells a figure that cannot be meant from one that can, and how to write it", () => {
    expect(() => readDensity("stone", 1.35, "US", "stone")).toThrow(
      /stone must weigh 0\.6 to 2\.5 t\/m³ .*; got 1\.35 lb\/ft³; write the unit behind a figure, such as "1\.35 ton\/yd3"/,
    );
    expect(() => readDensity("rock", 2650, "SI", "rock")).toThrow("got 2650 t/m³");
    expect(() => readDensity("stone", "-1.4 t/m3", "SI", "stone")).toThrow("stone must weigh");
    expect(() => readDensity("stone", "40 gal", "US", "stone")).toThrow(
      'stone must be a density, such as 165 lb/ft3 or 2.65 t/m3; got "40 gal"',
    );
    expect(() => readDensity("rock", "jelly", "US", "rock")).toThrow(
      /rock "jelly" is not known; use one of fieldstone, granite, .* or a figure with its unit, such as "165 lb\/ft3"/,
    );
  });

  it("keeps loose stone and solid rock apart", () => {
    expect(() => readDensity("stone", "granite", "US", "stone")).toThrow('stone "granite" is not known');
    expect(() => requireDensity("stone", 2650)).toThrow("stone density must be 600 to 2500 kg/m³");
    expect(requireDensity("rock", 2650)).toBe(2650);
  });
});

describe("the density tables", () => {
  it.each([...STONES, ...ROCKS].map((row) => [row.name, row] as const))("%s is in order and has a source", (_, row) => {
    expect(row.low).toBeLessThanOrEqual(row.usual);
    expect(row.usual).toBeLessThanOrEqual(row.high);
    expect(row.source.length).toBeGreaterThan(8);
  });

  it("finds every row by each of its names (fast-check: in upper case and with hyphens)", () => {
    for (const [kind, rows] of [
      ["stone", STONES],
      ["rock", ROCKS],
    ] as const) {
      expect(densityNames(kind)).toEqual(rows.map((row) => row.name));
      const named = rows.flatMap((row) => [row.name, ...row.also].map((name) => [name, row] as const));
      expect(new Set(named.map(([name]) => name)).size).toBe(named.length);
      fc.assert(
        fc.property(fc.constantFrom(...named), fc.boolean(), ([name, row], shout) => {
          const written = shout ? name.toUpperCase().replace(/ /g, "-") : ` ${name} `;
          expect(readDensity(kind, written, "US", kind)).toBe(row.usual);
        }),
      );
    }
  });
});
