import { describe, expect, it } from "vitest";
import { BEDDEPTH } from "../../../src/functions/water/beddepth";
import { LIPDEPTH } from "../../../src/functions/water/lipdepth";
import { LIPFLOW } from "../../../src/functions/water/lipflow";
import { SPLITFLOW } from "../../../src/functions/water/splitflow";

const flow = (...args: unknown[]): number => LIPFLOW.evaluate(args) as number;

describe("LIPFLOW and LIPDEPTH", () => {
  it("take a flat stone for a blank shape, however the host passes it", () => {
    for (const blank of [undefined, null, "", 0]) expect(flow(24, 1, blank)).toBe(flow(24, 1, "Broad"));
  });

  it("take an own coefficient in the unit of the system", () => {
    expect(flow(24, 1, 3.33)).toBeCloseTo(flow(24, 1, "sharp"), 9);
    expect(flow(24, 1, "2.63")).toBeCloseTo(flow(24, 1), 9);
    // 3.33 ft^½/s is 1.838 m^½/s (× √0.3048)
    expect(flow(600, 25, 3.33 * Math.sqrt(0.3048), null, null, "SI")).toBeCloseTo(
      flow(600, 25, "sharp", null, null, "SI"),
      6,
    );
    expect(flow(24, 1, 2)).toBeGreaterThan(0);
    expect(flow(24, 1, 4)).toBeGreaterThan(0);
  });

  it("refuse a coefficient of the other system, and say the range", () => {
    expect(() => flow(600, 25, 3.33, null, null, "SI")).toThrow(
      "lip shape as a coefficient must be 1.1 to 2.21 m^½/s; got 3.33",
    );
    expect(() => flow(24, 1, 1.84)).toThrow("lip shape as a coefficient must be 2 to 4 ft^½/s; got 1.84");
    expect(() => flow(24, 1, "ogee")).toThrow(
      'lip shape "ogee" is not known; use one of broad; broad, deep; broad, smooth; sharp; sharp, narrowed; or a coefficient of your own',
    );
  });

  it("read text with its own unit", () => {
    expect(flow("2 ft", '1"')).toBeCloseTo(flow(24, 1), 9);
    expect(LIPDEPTH.evaluate(["50 gpm", "1 ft"])).toBeCloseTo(LIPDEPTH.evaluate([3000, 12]) as number, 9);
  });

  it("derive a sharp lip by its crest's height and its pool's width, and ask for what is missing", () => {
    // Kindsvater and Carter by hand, as wide as the pool: 3.30 × 1.99705 ft × 0.203^1.5 = 0.60276 ft³/s.
    const gph = 3.3 * (2 - 0.9 / 304.8) * 0.203 ** 1.5 * (1728 / 231) * 3600;
    expect(flow(24, 2.4, "sharp", 12, 24)).toBeCloseTo(gph, 6);
    expect(LIPDEPTH.evaluate([gph, 24, "sharp", 12, 24])).toBeCloseTo(2.4, 9);
    // Drawn in from a wide pool it carries less than as wide as its pool.
    expect(flow(24, 2.4, "sharp, narrowed", 12, 60)).toBeLessThan(gph);
    expect(() => flow(24, 2.4, "sharp", null, 60)).toThrow("crest height is needed where a pool width is given");
    expect(() => flow(24, 2.4, "sharp, narrowed", 12)).toThrow("pool width is needed with a crest height");
    expect(() => flow(24, 2.4, "broad", 12)).toThrow('crest height counts for lip shape "sharp" or "sharp, narrowed"');
    expect(() => flow(24, 2.4, 3.33, 12)).toThrow("crest height counts for lip shape");
    expect(() => flow(24, 2.4, "sharp", 12, 20)).toThrow("pool width must be at least the lip width");
  });

  it("say in both systems what the lip can carry", () => {
    expect(() => LIPDEPTH.evaluate([100000, 3])).toThrow(
      /over a lip 76.2 mm \(3 in\) wide; got .* L\/h \(100000 gph\)/,
    );
    expect(() => flow(3, 4)).toThrow("sheet depth must be at most the lip width, 76.2 mm (3 in)");
  });
});

describe("SPLITFLOW", () => {
  it("gives the flow of an inch of lip, or of 100 mm, under a title that says which", () => {
    // 3,000 gph over 12 in are 250 gph an inch; 11,356.2 L/h over 304.8 mm are 3,725.8 L/h each 100 mm.
    const us = SPLITFLOW.evaluate([3000, [[12, 0]]]) as unknown[][];
    const si = SPLITFLOW.evaluate([3000 * 3.785411784, [[304.8, 0]], "", "SI"]) as unknown[][];
    expect([us[0]?.[5], us[1]?.[5]]).toEqual(["Per inch (gph)", expect.closeTo(250, 9)]);
    expect([si[0]?.[5], si[1]?.[5]]).toEqual(["Per 100 mm (L/h)", expect.closeTo(3725.8, 1)]);
  });

  it("names lips by their rows and reads a blank level as the lowest", () => {
    const table = SPLITFLOW.evaluate([
      3000,
      [
        [26, null],
        [null, null],
        [14, 0.25],
      ],
    ]) as unknown[][];
    expect(table.map((row) => row[0])).toEqual(["Lip", "Lip 1", "Lip 3"]);
    expect(table[1]?.[2]).toBeCloseTo((table[2]?.[2] as number) + 0.25, 9);
    expect(() =>
      SPLITFLOW.evaluate([
        3000,
        [
          [26, 0],
          [null, 0.25],
        ],
      ]),
    ).toThrow("lips row 2: lip width is needed");
  });
});

describe("BEDDEPTH", () => {
  it("takes cobbles and boulders for a blank roughness, and any bed kind by name", () => {
    const depth = (...args: unknown[]): number => BEDDEPTH.evaluate([3000, 2, 4, ...args]) as number;
    for (const blank of [undefined, null, "", 0]) expect(depth(blank)).toBe(depth(0.05));
    expect(depth("Cascade over stones")).toBe(depth(0.1));
    expect(() => depth("0,5 m")).toThrow("roughness");
    expect(() => depth(0.5)).toThrow("roughness as Manning's n must be 0.009 to 0.3; got 0.5");
  });
});
