import { describe, expect, it } from "vitest";
import { findFitting, fittingK, minorResistance, sumOfK } from "../../../src/calc/pipe/fittings";
import { FITTINGS } from "../../../src/calc/tables/fittings";

describe("fittings", () => {
  it("have one K or L/D each, one source each, and no name twice", () => {
    const names = FITTINGS.flatMap((f) => [f.name, ...f.also].map((name) => name.toLowerCase()));
    expect(new Set(names).size).toBe(names.length);
    for (const fitting of FITTINGS) {
      expect((fitting.k === undefined) !== (fitting.lengthRatio === undefined), fitting.name).toBe(true);
      expect(fitting.source.length).toBeGreaterThan(10);
      for (const name of [fitting.name, ...fitting.also]) expect(findFitting(name)).toBe(fitting);
    }
  });

  it.each([
    ["90° elbow", "90 elbow"],
    ["90 Degree Elbow", "90 elbow"],
    ["  CHECK valve ", "swing check valve"],
    ["tee", "tee, through branch"],
  ])("understands %s", (written, name) => expect(findFitting(written).name).toBe(name));

  it("adds up counts, without the outlet unless asked", () => {
    const rows = [
      { fitting: "90 elbow", count: 3 },
      { fitting: 1.5, count: 2 },
      { fitting: "pipe outlet", count: 1 },
    ];
    expect(sumOfK(rows, 0.05)).toBeCloseTo(3 * 0.9 + 2 * 1.5, 12);
    expect(sumOfK(rows, 0.05, true)).toBeCloseTo(3 * 0.9 + 2 * 1.5 + 1, 12);
  });

  it("makes Crane rows depend on the bore: ball valve 3 D in 2 in is 3 × 0.019", () => {
    // Crane TP-410 table A-26: fT of 2 in is 0.019
    expect(fittingK(findFitting("ball valve"), 2.067 * 0.0254)).toBeCloseTo(3 * 0.019, 3);
  });

  // EPANET 2.2 User Manual (EPA/600/R-20/133), Table 3.3, minor loss coefficients; Perry's Chemical Engineers' Handbook,
  // coupling or union 0.04 (from memory).
  it.each([
    ["90 elbow", 0.9],
    ["90 sweep", 0.6],
    ["45 elbow", 0.4],
    ["tee, straight through", 0.6],
    ["tee, through branch", 1.8],
    ["swing check valve", 2.5],
    ["gate valve", 0.2],
    ["pipe entrance", 0.5],
    ["union or coupling", 0.04],
  ])("has the book's K of a %s: %d", (name, k) => expect(fittingK(findFitting(name), 0.05)).toBe(k));

  it("turns K into head: 2.5 at 0.5093 m/s is 2.5 × 0.0132248 m", () => {
    expect(minorResistance(2.5, 0.05) * 0.001 ** 2).toBeCloseTo(2.5 * 0.0132248, 6);
  });

  it("offers the names that exist", () => {
    expect(() => findFitting("flux capacitor")).toThrow('fitting "flux capacitor" is not known; use one of 90 elbow;');
    expect(() => sumOfK([{ fitting: -1, count: 1 }], 0.05)).toThrow("K of a fitting must be 0 to 1000; got -1");
  });
});
