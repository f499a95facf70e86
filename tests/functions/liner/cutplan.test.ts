import { describe, expect, it } from "vitest";
import { CUTPLAN } from "../../../src/functions/liner/cutplan";

type Table = (string | number)[][];
const plan = (...args: unknown[]): Table => CUTPLAN.evaluate(args) as Table;
const value = (table: Table, name: string): unknown => table.find((row) => row[0] === name)?.[1];
const bought = (table: Table): unknown[][] =>
  table.filter((row) => row[0] === "Length to buy").map((row) => row.slice(1, 6));

const cuts = [
  ["Basin", 12, 9, 1],
  ["Skirt", 4, 3, 2],
];

describe("RILL.CUTPLAN", () => {
  it("costs the same whichever way a price is given", () => {
    // By hand: a roll of 10 ft at 12.50 a ft is 1.25 a ft², or 41.0105 a m; of 3.048 m, 13.4549 a m².
    const perFoot = plan(cuts, [[10, 12.5, "length", 100]]);
    const perSquareFoot = plan(cuts, [[10, 1.25, "area", 100]]);
    const perMetre = plan(
      [
        ["Basin", "12 ft", "9 ft", 1],
        ["Skirt", "4 ft", "3 ft", 2],
      ],
      [["10 ft", 12.5 / 0.3048, "length", "100 ft"]],
      ...[null, null, null, null, null],
      "SI",
    );
    for (const table of [perSquareFoot, perMetre]) expect(value(table, "Cost")).toBe(value(perFoot, "Cost"));
    // By hand: 108 + 2 × 12 = 132 ft² need at least 13.2 ft; basin 12 ft, skirts beside each other (2 × 4 of 10) 3 ft.
    expect(value(perFoot, "Cost")).toBe(15 * 12.5);
    expect(bought(perFoot)).toEqual([[1, 0, 0, expect.closeTo(15, 6), 10]]);
  });

  it("rounds money as every other function does, half a cent up, whatever the unit of the price", () => {
    // By hand: 10.5 ft × 0.67 = 7.035, a half cent that commercial rounding takes to 7.04; 10.5 ft of 10 ft at 0.067 a ft².
    const piece = [["Strip", 10.5, 10, 1]];
    expect(value(plan(piece, [[10, 0.67, "length", 100]]), "Cost")).toBe(7.04);
    expect(value(plan(piece, [[10, 0.067, "area", 100]]), "Cost")).toBe(7.04);
    // By hand: 3 rolls of 100.335 are 301.005, so 301.01.
    const long = [["Strip", 20, 10, 3]];
    expect(value(plan(long, [[10, 100.335, "roll", 20]]), "Cost")).toBe(301.01);
  });

  it("takes what is left out: one of each, a price per length, no limit of length", () => {
    const short = plan(
      [
        ["", 12, 9],
        ["", 4, 3],
      ],
      [[10, 12.5]],
    );
    expect(short.slice(1, 3).map((row) => row[0])).toEqual(["Piece 1", "Piece 2"]);
    expect(value(short, "Plan")).toBe("proven least cost");
    // Hosts that pass blank cells as 0 mean the same.
    expect(
      plan(
        [
          [0, 12, 9, 0],
          [0, 4, 3, 0],
        ],
        [[10, 12.5, 0, 0]],
        0,
      ),
    ).toEqual(
      plan(
        [
          ["", 12, 9, ""],
          ["", 4, 3, ""],
        ],
        [[10, 12.5, "", ""]],
        false,
      ),
    );
  });

  it("names a roll by its row, blank rows counted", () => {
    const table = plan(
      [["Basin", 12, 9, 1]],
      [
        [8, 1, "length", 100],
        ["", "", "", ""],
        [10, 12.5, "length", 100],
      ],
    );
    expect(table[1]?.slice(0, 2)).toEqual(["Basin", 3]);
    expect(bought(table)[0]?.[0]).toBe(3);
  });

  it("keeps the waste and the bound", () => {
    const table = plan(cuts, [[10, 12.5, "length", 100]]);
    // 150 ft² bought, 132 ft² cut
    expect(value(table, "Area to buy")).toBeCloseTo(150, 6);
    expect(value(table, "Waste")).toBeCloseTo(18, 6);
    expect(value(table, "Waste share")).toBeCloseTo(0.12, 9);
    expect(value(table, "Lower bound")).toBe(value(table, "Cost"));
  });

  it("counts the seam and the tape of what fits no roll, once a seam is allowed", () => {
    const wide = [["Basin", 18, 16, 1]];
    const rolls = [[10, 9, "length", 100]];
    expect(() => plan(wide, rolls)).toThrow(
      "cuts row 1: Basin, 18 ft by 16 ft, is wider both ways than the widest roll of 10 ft; use a larger roll, or allow a seam by giving its lap",
    );
    const seamed = plan(wide, rolls, null, 4);
    // By hand: one seam of 16 ft across the longer side, a tenth more of tape.
    expect(value(seamed, "Seam length")).toBeCloseTo(16, 6);
    expect(value(seamed, "Seam tape")).toBeCloseTo(17.6, 6);
    expect(value(seamed, "Plan")).toBe("proven least cost of the partings tried");
    expect(value(seamed, "Cost of seams")).toBe("not priced");
    // By hand: at 2.50 a ft the seam of 16 ft is 40.00.
    const priced = plan(wide, rolls, null, 4, 2.5);
    expect(value(priced, "Cost of seams")).toBe(40);
    expect(value(priced, "Cost")).toBe(Number(value(priced, "Cost of rolls")) + 40);
  });

  it.each<[string, unknown[], string]>([
    ["a size of 0", [[["Basin", 0, 9, 1]], [[10, 1]]], "cuts row 1: length"],
    ["a negative size", [[["Basin", 12, -9, 1]], [[10, 1]]], "cuts row 1: width"],
    ["no rolls", [cuts, [["", "", "", ""]]], "rolls is needed"],
    ["an unknown price basis", [cuts, [[10, 1, "pound", 100]]], "rolls row 1: per must be one of length, area, roll"],
    [
      "over 200 pieces",
      [
        [
          ["Skirt", 4, 3, 150],
          ["Skirt", 4, 2, 51],
        ],
        [[10, 1]],
      ],
      "cuts takes at most 200 pieces; got 201",
    ],
    ["a full roll of unknown length", [cuts, [[10, 900, "roll", ""]]], "rolls row 1: longest length is needed"],
    [
      "one price missing",
      [
        cuts,
        [
          [10, 9],
          ["", ""],
          [12, ""],
        ],
      ],
      "rolls row 3: price is needed",
    ],
  ])("refuses %s", (_, args, sentence) => expect(() => plan(...args)).toThrow(sentence));
});
