import { describe, expect, it } from "vitest";
import { BASINCHECK } from "../../../src/functions/basin/basincheck";
import { BASINMIX } from "../../../src/functions/basin/basinmix";
import { DRAINBACK } from "../../../src/functions/basin/drainback";
import { DRAINTABLE } from "../../../src/functions/basin/draintable";

const pools = [
  [40, 12],
  [null, null],
  [10, 24],
];
const total = (...args: unknown[]): number => DRAINBACK.evaluate(args) as number;

describe("DRAINBACK and DRAINTABLE", () => {
  it("agree, and name the rows of the user's ranges", () => {
    const args = [3000, pools, [[20, 1.5, 5, "cobbles and boulders"]], 2, 60];
    const table = DRAINTABLE.evaluate(args) as unknown[][];
    expect(table.map((row) => row[0])).toEqual(["Part", "Pool 1", "Pool 3", "Bed 1", "Pipe 2 in Sch 40 PVC", "Total"]);
    expect(table.at(-1)?.[1]).toBeCloseTo(total(...args), 9);
    const sum = table.slice(1, -1).reduce((all, row) => all + (row[1] as number), 0);
    expect(table.at(-1)?.[1]).toBeCloseTo(sum, 9);
  });

  it("take one pipe, or columns of pipes in series with blanks between them", () => {
    const one = total(3000, pools, null, 2, 60) - total(3000, pools);
    const other = total(3000, pools, null, 1.5, 10) - total(3000, pools);
    const both = total(
      3000,
      pools,
      null,
      [[2], [null], [1.5], [null]],
      [[60], [0], [10], [null]],
      [["sch 40"], [""], [""], [""]],
    );
    expect(both - total(3000, pools)).toBeCloseTo(one + other, 9);
  });

  it("take a blank range or cell as no pipe, however the host passes it", () => {
    for (const blank of [undefined, null, "", 0, [[null], [null]], [[0], [0]], [[""], [""]]])
      expect(total(3000, pools, null, blank, blank, blank, blank === 0 ? 0 : null)).toBe(total(3000, pools));
  });

  it("name what is missing or unknown", () => {
    expect(() => total(3000, pools, null, 2)).toThrow("pipe length is needed where a pipe size is given");
    expect(() => total(3000, pools, null, [[2], [null]], [[60], [10]])).toThrow(
      "pipe size 2 is needed where a pipe length is given",
    );
    expect(() => total(3000, pools, null, 2.25, 60)).toThrow("pipe size 2 1/4 in does not exist");
    expect(() => total(3000, [[40, null]])).toThrow("pools row 1: lip width is needed");
    expect(() => total(3000, null, [[20, 1.5, 5, "mud"]])).toThrow('runs row 1: roughness "mud" is not known');
    expect(() => total(3000, null, [[20, 1.5, 0.5, 9]])).toThrow("runs row 1: roughness as Manning's n must be");
    expect(() => total(3000)).toThrow("pools, runs or a pipe is needed");
  });

  it("use the lip shape's own coefficient, of all pools or of one", () => {
    // 50 gpm = 0.111400 ft³/s over 1 ft: H = (Q / C)^(2/3) ft, × 40 ft² × 7.48052 gal/ft³. C 2.0: 0.145849 ft, 43.641 gal;
    // sharp edge, C 3.33 (Francis): 0.103825 ft, 31.066 gal; flat stone, C 2.63 (Brater & King): 36.359 gal.
    const all = (shape: unknown): number => total(3000, [[40, 12]], null, null, null, null, null, shape);
    expect(all(2)).toBeCloseTo(43.641, 2);
    expect(all("sharp")).toBeCloseTo(31.066, 2);
    expect(all(null)).toBeCloseTo(36.359, 2);
    const rows = [
      [40, 12, "sharp"],
      [40, 12, null],
    ];
    const table = DRAINTABLE.evaluate([3000, rows, null, null, null, null, null, 2]) as unknown[][];
    expect(table[1]?.[1]).toBeCloseTo(31.066, 2);
    expect(table[2]?.[1]).toBeCloseTo(43.641, 2);
    expect(() => all("round")).toThrow('lip shape "round" is not known');
    expect(() => total(3000, [[40, 12, "round"]])).toThrow('pools row 1: lip shape "round" is not known');
  });

  it("give the same water in SI", () => {
    const us = total(3000, [[40, 12]], [[20, 1.5, 5, 0.05]], "bore 50 mm", 60) * 3.785411784;
    const si = total(
      3000 * 3.785411784,
      [[40 * 0.09290304, 304.8]],
      [[20 * 0.3048, 1.5 * 0.3048, 5, 0.05]],
      "bore 50 mm",
      60 * 0.3048,
      null,
      null,
      null,
      "SI",
    );
    expect(si / us).toBeCloseTo(1, 9);
  });
});

describe("BASINMIX", () => {
  it("takes blanks in a row as the kind's own, however the host passes them", () => {
    for (const blank of [null, "", 0, undefined]) {
      const table = BASINMIX.evaluate([
        [
          ["Pit", 10, 8, 3, blank, blank],
          ["Round well", 2, blank, 3, blank, blank],
          [blank, blank, blank, blank, blank, blank],
        ],
      ]) as unknown[][];
      expect(table.map((row) => row[2])).toEqual([
        "Void fraction",
        1,
        0.4,
        expect.closeTo(0.4 + (0.6 * Math.PI * 3) / 240, 9),
        expect.closeTo(0.4 + (0.6 * Math.PI * 3) / 240, 9),
      ]);
    }
  });

  it("names the row that is wrong", () => {
    expect(() =>
      BASINMIX.evaluate([
        [
          ["pit", 10, 8, 3],
          ["modules", 9, 9, 2],
        ],
      ]),
    ).toThrow("parts row 2 is");
    expect(() => BASINMIX.evaluate([[["tank", 10, 8, 3]]])).toThrow('parts row 1: kind "tank" is not known');
  });
});

describe("BASINCHECK", () => {
  const row = (table: unknown, at: number): unknown[] => (table as unknown[][])[at] ?? [];

  it("says each verdict in plain words", () => {
    const enough = BASINCHECK.evaluate([600, 200, 120, 15, 14, 80, 0.4]);
    expect(row(enough, 3)[3]).toBe("enough");
    expect(row(enough, 5)[3]).toBe("as long as planned, or longer");
    expect(row(enough, 6)[3]).toContain("none if filled with the pump off");
    const reserve = BASINCHECK.evaluate([500, 200, 120, 15, 14]);
    expect(row(reserve, 3)[3]).toContain("plan fewer days");
    expect(row(reserve, 4)).toEqual(["Level drop on starting", "", "", "give the footprint to see it"]);
    expect(row(reserve, 5)[3]).toContain("sooner than planned");
    const small = BASINCHECK.evaluate([300, 250, 120, 15, 14]);
    expect(row(small, 3)[3]).toContain("too small even to run");
    expect(row(small, 5)[3]).toContain("at once");
    expect(row(small, 6)[3]).toContain("spills");
    const tight = BASINCHECK.evaluate([600, 200, 120, 0, 14]);
    expect(row(tight, 5)).toEqual(["Days until the pump sucks air", "", "days", "never: nothing is lost"]);
  });

  it("names the unit of each value", () => {
    const si = BASINCHECK.evaluate([2000, 600, 400, 50, 10, 6, 0.4, "SI"]);
    expect((si as unknown[][]).map((cells) => cells[2])).toEqual(["Unit", "L", "L", "L", "m", "days", "L"]);
    expect(row(si, 4)[1]).toBeCloseTo(0.25, 9);
  });
});
