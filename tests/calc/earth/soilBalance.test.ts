import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSoil } from "../../../src/calc/earth/soil";
import { soilBalance } from "../../../src/calc/earth/soilBalance";

const loam = readSoil("loam");
const volume = fc.double({ min: 0, max: 500, noNaN: true });
const truck = fc.double({ min: 1, max: 20, noNaN: true });

describe("soilBalance", () => {
  it("sends the rest away, in loose truckloads", () => {
    // By hand, loam 1.25 and 0.90: 9 / 0.9 = 10 bank; 24 - 10 = 14 bank; × 1.25 = 17.5 loose; / 8 = 2.2, so 3 loads.
    const balance = soilBalance(24, 9, loam, 8);
    expect(balance.berm.bank).toBeCloseTo(10, 12);
    expect(balance.away.bank).toBeCloseTo(14, 12);
    expect(balance.away.loose).toBeCloseTo(17.5, 12);
    expect(balance.loadsAway).toBe(3);
    expect(balance.fill.bank).toBe(0);
    expect(balance.loadsFill).toBe(0);
  });

  it("brings what is missing, and sends no truck for nothing", () => {
    const short = soilBalance(5, 9, loam, 8);
    expect(short.fill.loose).toBeCloseTo(6.25, 12); // by hand: (10 - 5) × 1.25
    expect(short.loadsFill).toBe(1);
    expect(short.loadsAway).toBe(0);
    const even = soilBalance(10, 9, loam, 8);
    expect(even.loadsAway + even.loadsFill).toBe(0);
    // By hand: 12.8 bank × 1.25 = 16 loose, two full loads of 8 and not three.
    expect(soilBalance(12.8, 0, loam, 8).loadsAway).toBe(2);
  });

  it("loses no soil: dug + brought = berm + taken away, in every state", () => {
    const soils = fc.constantFrom("loam", "sand", "clay", "blasted rock");
    fc.assert(
      fc.property(volume, volume, soils, truck, (dug, berm, name, t) => {
        const balance = soilBalance(dug, berm, readSoil(name), t);
        for (const state of ["bank", "loose", "compacted"] as const) {
          const into = balance.dug[state] + balance.fill[state];
          const out = balance.berm[state] + balance.away[state];
          expect(Math.abs(into - out)).toBeLessThanOrEqual(1e-9 * Math.max(1, into));
        }
        expect(balance.away.bank === 0 || balance.fill.bank === 0).toBe(true);
        expect(balance.loadsAway * t).toBeGreaterThanOrEqual(balance.away.loose - 1e-6);
        expect((balance.loadsAway - 1) * t).toBeLessThan(balance.away.loose + 1e-6);
      }),
    );
  });

  it("never takes away more for a bigger berm", () => {
    fc.assert(
      fc.property(volume, volume, volume, (dug, berm, more) => {
        const less = soilBalance(dug, berm + more, loam, 8).away.bank;
        expect(less).toBeLessThanOrEqual(soilBalance(dug, berm, loam, 8).away.bank);
      }),
    );
  });

  it("refuses volumes and trucks that cannot be", () => {
    expect(() => soilBalance(-1, 0, loam, 8)).toThrow("dug must be 0 to 100000 m³");
    expect(() => soilBalance(1, NaN, loam, 8)).toThrow("berm must be a finite number");
    expect(() => soilBalance(1, 0, loam, 0)).toThrow("truck must be 0.01 to 100 m³; got 0 m³");
  });
});
