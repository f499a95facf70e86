import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromInside, say, toInside, unitLabel, type Measure } from "../../../src/calc/quantity/measures";
import { convert, findUnit } from "../../../src/calc/quantity/units";

// Exact by definition (NIST SP 811, appendix B.8): in = 25.4 mm, US gal = 231 in³, lb = 0.45359237 kg, short ton = 2,000 lb.
const EXACT: readonly (readonly [Measure, number])[] = [
  ["length", 0.3048],
  ["size", 0.0254],
  ["area", 0.3048 ** 2],
  ["earth", 0.9144 ** 3],
  ["water", 231 * 0.0254 ** 3],
  ["flow", (231 * 0.0254 ** 3) / 3600],
  ["speed", 0.3048],
  ["wind", 1609.344 / 3600],
  ["load", 907.18474],
  ["weight", 0.45359237],
];

describe("measures", () => {
  it.each(EXACT)("one US default unit of %s is exact in SI", (measure, si) => {
    expect(toInside(measure, 1, "US") / si).toBeCloseTo(1, 12);
  });

  it("shifts temperatures", () => {
    expect(toInside("temperature", 212, "US")).toBeCloseTo(100, 9);
    expect(fromInside("temperature", 0, "US")).toBeCloseTo(32, 9);
    expect(toInside("temperature", 15, "SI")).toBeCloseTo(15, 12);
  });

  it("comes back to the number it started from, in both systems", () => {
    const measures: Measure[] = [...EXACT.map(([measure]) => measure), "head", "temperature", "power"];
    fc.assert(
      fc.property(
        fc.constantFrom(...measures),
        fc.constantFrom("US" as const, "SI" as const),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (measure, system, value) => {
          expect(Math.abs(fromInside(measure, toInside(measure, value, system), system) - value)).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(value)),
          );
        },
      ),
    );
  });

  it("prints units as people write them", () => {
    expect(unitLabel("area", "US")).toBe("ft²");
    expect(unitLabel("load", "SI")).toBe("t");
    expect(say("flow", toInside("flow", 1234.5, "US"), "US")).toBe("1234.5 gph");
  });
});

describe("units", () => {
  it("knows nothing of names every object has", () => {
    for (const name of ["constructor", "__proto__", "toString", "hasOwnProperty", "", "x".repeat(100)]) {
      expect(findUnit(name)).toBeNull();
    }
  });
  it("refuses to turn a length into a flow", () => {
    expect(() => convert(1, "ft", "gph")).toThrow("measure different things");
    expect(() => convert(1, "blorps", "gph")).toThrow('unit "blorps" is not known');
  });
});
