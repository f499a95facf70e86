import { describe, expect, it } from "vitest";
import { SETOUT } from "../../../src/functions/levels/setout";
import { STEPS } from "../../../src/functions/levels/steps";

const body = (args: readonly unknown[]): unknown[][] => (SETOUT.evaluate(args) as unknown[][]).slice(1);

describe("SETOUT", () => {
  it("keeps blank rows in the middle blank, so that readings stay beside their points", () => {
    const targets = [
      ["Basin bottom", 96.5],
      ["", ""],
      [null, 0],
      ["Rim", 99.75],
      [undefined, null],
    ];
    const rows = body([100, 4, targets, [[7.6], [""], [0], [4.25], [""]], 0.25, "", "US"]);
    expect(rows).toHaveLength(4);
    // By hand: HI = 104; the bottom reads 104 - 96.5 = 7.5, was read at 7.6, so it is 0.1 ft = 1.2 in low.
    expect(rows[0]).toEqual([
      "Basin bottom",
      expect.closeTo(96.5, 9),
      expect.closeTo(7.5, 9),
      "7'-6\"",
      "down 3'-6\"",
      expect.closeTo(7.6, 9),
      expect.closeTo(-0.1, 9),
      "fill 0'-1 1/4\"",
    ]);
    expect(rows[1]).toEqual(Array(8).fill(""));
    expect(rows[2]).toEqual(Array(8).fill(""));
    expect(rows[3]).toEqual([
      "Rim",
      expect.closeTo(99.75, 9),
      expect.closeTo(4.25, 9),
      "4'-3\"",
      "down 0'-3\"",
      expect.closeTo(4.25, 9),
      expect.closeTo(0, 9),
      "on grade",
    ]);
  });

  it("says that a point lies above the line of sight, and still gives its string measure", () => {
    // By hand: HI = 51.2 m; a berm top at 51.5 m stands 300 mm above it and 1,500 mm above the string.
    const [berm] = body([50, 1.2, [["Berm top", 51.5]], "", "", "", "SI"]);
    expect(berm?.slice(2, 5)).toEqual(["", "", "up 1500 mm"]);
    expect(berm?.[7]).toBe("above the line of sight by 300 mm: set up higher, or use the string");
  });

  it("lets a point without a level wait, beside its reading, and sets out the others", () => {
    // By hand: HI = 104 ft; the rim at 99.75 reads 4.25.
    const rows = body([
      100,
      4,
      [
        ["Foot of the box", ""],
        ["Rim", 99.75],
      ],
      [[3.5], [""]],
      "",
      "",
      "US",
    ]);
    expect(rows[0]).toEqual(["Foot of the box", "", "", "", "", expect.closeTo(3.5, 9), "", "needs its level"]);
    expect(rows[1]?.[2]).toBeCloseTo(4.25, 9);
  });

  it("names the row and the cure when a cell is wrong", () => {
    const call = (targets: unknown, readings: unknown, backsight: unknown = 4): unknown =>
      SETOUT.evaluate([100, backsight, targets, readings, 0.25, "", "US"]);
    expect(() =>
      call(
        [
          ["a", 99],
          ["", 98],
        ],
        "",
      ),
    ).toThrow("targets row 2: name is needed");
    expect(() => call([["a", 99]], [[-0.5]])).toThrow("readings row 1: reading must be more than 0, at most 25.2 ft");
    expect(() => call([["a", 99]], [[4], [5]])).toThrow("readings row 2 has no point beside it");
    expect(() => call([["a", 99]], [["soon"]])).toThrow("readings row 1: reading");
    expect(() => call([["", ""]], "")).toThrow("targets is needed");
    expect(() => call([["a", 99]], "", 0)).toThrow("backsight must be more than 0");
    expect(() => call([["a", { error: "#N/A" }]], "")).toThrow("targets row 1: level holds the error #N/A");
  });

  it("gives the same ground in both systems", () => {
    const us = body([100, 4.35, [["Lip", 97.125]], [[7.3]], 0.25, "", "US"])[0] ?? [];
    const si = body(["100 ft", "4.35 ft", [["Lip", "97.125 ft"]], [["7.3 ft"]], "0.25 in", "", "SI"])[0] ?? [];
    for (const column of [1, 2, 5, 6]) expect((us[column] as number) * 0.3048).toBeCloseTo(si[column] as number, 9);
    // By hand: 104.35 - 97.125 = 7.225 ft = 7 ft 2.7 in, nearest eighth 2 3/4; = 2,202.18 mm.
    expect(us[3]).toBe("7'-2 3/4\"");
    expect(si[3]).toBe("2202 mm");
  });
});

describe("STEPS", () => {
  it("counts with feet or metres, and adds up in either", () => {
    for (const system of ["US", "SI"] as const) {
      const table = STEPS.evaluate([2.75, 9.5, 4, 0.35, 3, system]) as unknown[][];
      const rows = table.slice(1) as number[][];
      expect(rows.reduce((all, row) => all + (row[1] ?? 0), 0)).toBeCloseTo(2.75, 12);
      expect(rows.reduce((all, row) => all + (row[2] ?? 0), 0)).toBeCloseTo(9.5, 12);
      expect(rows[3]?.slice(3)).toEqual([expect.closeTo(2.75, 12), expect.closeTo(9.5, 12)]);
      expect(table[0]?.[1]).toBe(system === "US" ? "Drop (ft)" : "Drop (m)");
    }
  });

  it("takes a blank seed and a seed of 0, which some hosts pass for it, alike", () => {
    const blank = STEPS.evaluate([2.75, 9.5, 4, "", "", "US"]);
    expect(STEPS.evaluate([2.75, 9.5, 4, null, 0, "US"])).toEqual(blank);
    expect(STEPS.evaluate([2.75, 9.5, 4, 0.35, 1, "US"])).toEqual(blank);
  });

  it("refuses more drops than the fall allows", () => {
    // By hand: 0.9 ft is 10.8 in, room for 10 drops of 1 in.
    expect(() => STEPS.evaluate([0.9, 9, 12])).toThrow("drops must be at most 10");
  });
});
