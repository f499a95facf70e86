import { describe, expect, it } from "vitest";
import { aboutUnit, readSaleUnit, unitsOf } from "../../src/book/units";

describe("units of sale", () => {
  it("are as NIST SP 811, appendix B.8, prints them", () => {
    // ft 3.048 E-01 m; ft² 9.290304 E-02 m²; yd² 8.361274 E-01 m²; ft³ 2.831685 E-02 m³; yd³ 7.645549 E-01 m³;
    // gal (US) 3.785412 E-03 m³; lb 4.535924 E-01 kg; ton, short 9.071847 E+02 kg; ton, metric 1.0 E+03 kg.
    const printed = {
      ft: 0.3048,
      "ft²": 9.290304e-2,
      "yd²": 8.361274e-1,
      "ft³": 2.831685e-2,
      "yd³": 7.645549e-1,
      gal: 3.785412e-3,
      lb: 4.535924e-1,
      ton: 9.071847e2,
      t: 1000,
    } as const;
    for (const [unit, factor] of Object.entries(printed)) {
      expect(aboutUnit(unit as keyof typeof printed).inside / factor, unit).toBeCloseTo(1, 6);
    }
  });

  it("are read as suppliers write them", () => {
    expect(["EA", "lf", "Sq Ft", "cy", "Tons", "m2", "hour"].map(readSaleUnit)).toEqual([
      "each",
      "ft",
      "ft²",
      "yd³",
      "ton",
      "m²",
      undefined,
    ]);
  });

  it("belong to a system", () => {
    expect(unitsOf("SI")).not.toContain("ton");
    expect(unitsOf("US")).not.toContain("t");
  });
});
