import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BOULDERMIX } from "../../../src/functions/stone/bouldermix";
import { BOULDERTONS } from "../../../src/functions/stone/bouldertons";
import { BOULDERWEIGHT } from "../../../src/functions/stone/boulderweight";
import { GRAVELTONS } from "../../../src/functions/stone/graveltons";
import { STONETONS } from "../../../src/functions/stone/stonetons";

const FOOT = 0.3048;
const TON = 0.90718474;
const size = fc.double({ min: 0.5, max: 40, noNaN: true });

describe("the stone functions in both systems", () => {
  it("weigh the same", () => {
    fc.assert(
      fc.property(size, size, size, fc.constantFrom("pea gravel", "1.4 ton/yd3", "1.6 t/m3"), (a, b, c, stone) => {
        const gravel = GRAVELTONS.evaluate([a, b, stone, 0.1, "US"]) as number;
        expect(
          (gravel * TON) / (GRAVELTONS.evaluate([a * FOOT ** 2, b * 25.4, stone, 0.1, "SI"]) as number),
        ).toBeCloseTo(1, 9);
        const loose = STONETONS.evaluate([a, stone, 0, "US"]) as number;
        expect((loose * TON) / (STONETONS.evaluate([a * 0.9144 ** 3, stone, 0, "SI"]) as number)).toBeCloseTo(1, 9);
        const face = BOULDERTONS.evaluate([a, b, c, "granite", 0.7, 0, "US"]) as number;
        const metric = BOULDERTONS.evaluate([a * FOOT, b * FOOT, c * 25.4, "granite", 0.7, 0, "SI"]) as number;
        expect((face * TON) / metric).toBeCloseTo(1, 9);
        const one = BOULDERWEIGHT.evaluate([a, b, c, "basalt", "angular", "", "US"]) as number;
        const kilograms = BOULDERWEIGHT.evaluate([
          a * 25.4,
          b * 25.4,
          c * 25.4,
          "basalt",
          "angular",
          "",
          "SI",
        ]) as number;
        expect((one * 0.45359237) / kilograms).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("the stone functions on bad input", () => {
  it("name the argument, the row and the cure", () => {
    expect(() => GRAVELTONS.evaluate([120, 3, "moon rock"])).toThrow(
      'stone "moon rock" is not known; use one of washed gravel',
    );
    expect(() => GRAVELTONS.evaluate([120, 3, 1.35])).toThrow('write the unit behind a figure, such as "1.35 ton/yd3"');
    expect(() => GRAVELTONS.evaluate([120, -3])).toThrow("depth must be 0 to 196 in; got -3 in");
    expect(() => GRAVELTONS.evaluate([120, 3, "", 10])).toThrow("for 10% write 0.1 or 10%");
    expect(() => BOULDERTONS.evaluate([10, 2, 18, "granite", 0.1])).toThrow("solid share must be a share of 0.3 to 1");
    expect(() => BOULDERWEIGHT.evaluate([30, 24, 18, "granite", "pyramid"])).toThrow(
      "shape must be one of rounded, angular, box",
    );
    expect(() =>
      BOULDERMIX.evaluate([
        4,
        [
          [12, 0.5],
          [18, 0.4],
        ],
      ]),
    ).toThrow("mix shares must add up to 100%; they add up to 90%");
    expect(() =>
      BOULDERMIX.evaluate([
        4,
        [
          [12, 0.5],
          ["", 0.5],
        ],
      ]),
    ).toThrow("mix row 2: size is needed");
  });

  it("skip blank rows of a mix, and count nothing for no tons", () => {
    const mix = [
      [12, 0.5],
      ["", ""],
      [0, 0],
      [18, 0.5],
    ];
    const table = BOULDERMIX.evaluate([4, mix]) as unknown[][];
    expect(table).toHaveLength(4);
    expect(table[3]).toEqual(["Total", 1, 4, "", "", "", expect.any(Number), ""]);
    expect((BOULDERMIX.evaluate([0, mix]) as unknown[][])[3]?.[6]).toBe(0);
  });

  it("take washed gravel and fieldstone where nothing is named", () => {
    // By hand: 1 yd³ of washed gravel at 100 lb/ft³ is 2,700 lb = 1.35 ton; 1 ft³ of fieldstone as a box is 165 lb.
    for (const blank of [undefined, null, "", 0]) {
      expect(STONETONS.evaluate([1, blank])).toBeCloseTo(1.35, 9);
      expect(BOULDERWEIGHT.evaluate([12, 12, 12, blank, "box"])).toBeCloseTo(165, 9);
    }
  });

  it("say by hand or by machine at the user's own limit", () => {
    // By hand: the box of 1 ft³ at the heaviest of fieldstone is 170 lb = 77.1 kg, whatever shape it is counted as.
    const lifting = (limit: unknown): unknown =>
      (BOULDERMIX.evaluate([1, [[12, 1]], "", limit]) as unknown[][])[1]?.[7];
    expect(lifting("")).toBe("Machine and rigging");
    expect(lifting(169)).toBe("Machine and rigging");
    expect(lifting(171)).toBe("By hand");
    expect(lifting("78 kg")).toBe("By hand");
  });
});
