import { describe, expect, it } from "vitest";
import { CUTFILL } from "../../../src/functions/ground/cutfill";
import { LEVELRUN } from "../../../src/functions/levels/levelrun";
import { SHOTCHECK } from "../../../src/functions/ground/shotcheck";
import { LINERRUN } from "../../../src/functions/ground/linerrun";

type Rows = (string | number)[][];

/** One column of a table that a function gave, without its head. */
function column(table: unknown, index: number): unknown[] {
  return (table as unknown[][]).slice(1).map((row) => row[index]);
}

/** Readings in meters as a US user's feet, all but names and blanks. */
const feet = (rows: Rows): Rows =>
  rows.map((row) => row.map((cell) => (typeof cell === "number" ? cell / 0.3048 : cell)));

describe("bad shots, as a cell tells them", () => {
  it.each<[string, Rows, string]>([
    ["a backsight missing", [["Rim", "", 4.2, ""]], "the first row needs a backsight"],
    [
      "a reading after the foresight that ended the set-up",
      [
        ["Rim", 4, "", ""],
        ["Stake", "", "", 5],
        ["Lip", "", 3, ""],
      ],
      "the foresight before this reading ended the set-up",
    ],
    ["a rod reading below 0", [["Rim", -0.4, "", ""]], "backsight must be more than 0, at most 25.2 ft; got -0.4 ft"],
    [
      "a rod reading over 25 ft",
      [
        ["Rim", 4, "", ""],
        ["Lip", "", 25.4, ""],
      ],
      "intermediate must be more than 0, at most 25.2 ft; got 25.4 ft",
    ],
  ])("LEVELRUN: %s", (_, readings, sentence) => {
    expect(() => LEVELRUN.evaluate([readings, 100, "", "", "", "US"])).toThrow(sentence);
  });

  it("LEVELRUN shares nothing out of a loop that does not close", () => {
    const loop = [
      ["Mark", 4, "", ""],
      ["Lip", "", 2, ""],
      ["Mark", "", "", 4.2],
    ];
    // By hand: the last sight comes to 100 + 4 - 4.2 = 99.8 ft, 0.2 ft low; 200 ft allow 0.024 m √0.06096 = 0.0194 ft.
    const table = LEVELRUN.evaluate([loop, 100, "", 200, "", "US"]);
    expect(column(table, 3)).toEqual(["", "", ""]);
    expect(String(column(table, 4).at(-1))).toMatch(/Closes 0\.2 ft low, over the limit of 0\.\d+ ft: level again\./);
  });

  it.each<[string, Rows, string]>([
    ["one station", [[0, 100, 3, "", 101]], "at least two; got 1"],
    [
      "a station twice",
      [
        [0, 100, 3, "", 101],
        [0, 99, 3, "", 101],
      ],
      "stations go along the line, each once",
    ],
    [
      "stations backwards",
      [
        [10, 100, 3, "", 101],
        [5, 99, 3, "", 101],
      ],
      "stations go along the line, each once",
    ],
  ])("CUTFILL and LINERRUN: %s", (_, stations, sentence) => {
    expect(() => CUTFILL.evaluate([stations, "", "", "", "", "", "", "US"])).toThrow(sentence);
    const liner = stations.map(([station = 0, bed = 0]) => [station, bed, 0, 3, 1, 0]);
    expect(() => LINERRUN.evaluate([liner, 1, 0, "US"])).toThrow(sentence);
  });

  it("CUTFILL: one shot only, and a station shot twice", () => {
    const stations = [
      [0, 100, 3],
      [10, 99, 3],
    ];
    const over = (shots: Rows) => () => CUTFILL.evaluate([stations, "", "", "", shots, "", "", "US"]);
    expect(over([[0, 0, 101]])).toThrow("two stations at least, as at the top and at the basin; got 1");
    expect(
      over([
        [0, 0, 101],
        [0, 0, 102],
        [10, 0, 99],
      ]),
    ).toThrow("was shot twice on the line");
  });

  it("SHOTCHECK: a sentence in each row, and none where all is well", () => {
    const rows: Rows = [
      ["Mark", 4, "", "", "", ""],
      ["Top", "", 2, "", 0, ""],
      ["Rod", "", 25.5, "", 10, ""],
      ["Low", "", -1, "", 20, ""],
      ["Both", 3, 2, "", 30, ""],
      ["Again", "", 3, "", 30, ""],
      ["Back", "", 3, "", 15, ""],
      ["End", "", "", 4, "", ""],
      ["Late", "", 3, "", 40, ""],
    ];
    const told = column(SHOTCHECK.evaluate([rows, "US"]), 0).map((text) => String(text).split(":")[0]);
    expect(told).toEqual([
      "",
      "",
      "Off the rod",
      "Off the rod",
      "Out of order",
      "Station twice",
      "Goes back",
      "",
      "Out of order",
    ]);
  });
});

describe("published books, in feet and in meters alike", () => {
  // A surveying class's handout on profile leveling, illustrative problem 1: five set-ups; its readings, heights by hand.
  const BOOK: Rows = [
    ["BMa", 0.95, "", ""],
    ["0+00", "", 3, ""],
    ["0+10", "", 2.3, ""],
    ["TP1", 3.13, "", 0.64],
    ["0+22", "", 2.7, ""],
    ["0+30.5", "", 2.8, ""],
    ["0+34.2", "", 3.1, ""],
    ["0+39.3", "", 0.5, ""],
    ["0+42.5", "", 0.8, ""],
    ["TP2", 2.16, "", 1.28],
    ["0+45", "", 0.9, ""],
    ["0+48.6", "", 1.2, ""],
    ["0+50", "", 1.7, ""],
    ["0+53.7", "", 2.8, ""],
    ["TP3", 0.82, "", 2.37],
    ["TP4", 1.35, "", 3.5],
    ["0+75", "", 3, ""],
    ["BMb", "", "", 1.99],
  ];
  const LEVELS = [
    125.5, 123.45, 124.15, 125.81, 126.24, 126.14, 125.84, 128.44, 128.14, 127.66, 128.92, 128.62, 128.12, 127.02,
    127.45, 124.77, 123.12, 124.13,
  ];

  it.each([
    ["SI", BOOK, 125.5, 1],
    ["US", feet(BOOK), 125.5 / 0.3048, 0.3048],
  ] as const)("profile leveling, %s", (system, book, start, unit) => {
    const levels = column(LEVELRUN.evaluate([book, start, "", "", "", system]), 2).map((level) => Number(level) * unit);
    levels.forEach((level, index) => expect(level, String(book[index]?.[0])).toBeCloseTo(LEVELS[index] ?? NaN, 9));
  });

  it("a mass diagram's cut and fill between stations 125 and 131, by average end areas", () => {
    // A university's construction-equipment tutorial, question 1, printed: cut 652 ft² at 126 and 2,150 at 127 make 5,188.89 yd³.
    // The areas stand here as upright sections, 100 ft wide: no deeper than this function takes.
    const stations = [652, 2150].map((area, index) => [index * 100, 100, 100, "", 100 + area / 100]);
    const table = CUTFILL.evaluate([stations, 0, 0, "average end area", "", "", "", "US"]);
    expect(Number(column(table, 6)[1])).toBeCloseTo(5188.89, 2);
  });

  it("a 30 m tape with one end 0.70 m low: 29.991832 m along the line take 30 m of liner", () => {
    // Slope correction of taping manuals: 30 - √(30² - 0.7²) = 0.00817 m.
    const liner = [
      [0, 10, 0, 1, 0, 0],
      [29.991832, 9.3, 0, 1, 0, 0],
    ];
    expect(Number(column(LINERRUN.evaluate([liner, 0.1, 0, "SI"]), 1)[1])).toBeCloseTo(30, 6);
  });

  it("the sloping faces of a bank 200 m long are 1,162.755 m²", () => {
    // Earthwork course sheet, 2 L d √(s² + 1): heights 1.00 and 1.60 m, 2 to 1; the mean of both ends' widths, no bed.
    const liner = [
      [0, 10, 0, 0, 1, 2],
      [200, 10, 0, 0, 1.6, 2],
    ];
    const across = column(LINERRUN.evaluate([liner, 0.0001, 0, "SI"]), 2).map((width) => Number(width) - 0.0002);
    expect((((across[0] ?? NaN) + (across[1] ?? NaN)) / 2) * 200).toBeCloseTo(1162.755, 3);
  });
});

describe("the two jobs, in the cell", () => {
  it("a stream of 60 ft that falls 9 ft on flat ground takes 92.3 m³ of fill under its bed alone", () => {
    // By hand: below drop i of 12 the fill is h = 9 - 0.75 i - 0.5 ft high, 4 ft wide, 5 ft long, sides 2 to 1:
    // Σ 5 (4 h + 2 h²) for h > 0 is 3,258.75 ft³ = 120.694 yd³ = 92.277 m³.
    const stations: Rows = [];
    for (let drop = 1; drop <= 12; drop++) stations.push([(drop - 1) * 5, 100 + 9 - 0.75 * drop - 0.5, 4, 0.75]);
    stations.push([60, 99.5, 4, 0]);
    const ground: Rows = [
      [0, 0, 100],
      [60, 0, 100],
    ];
    const table = CUTFILL.evaluate([stations, 1, 2, "", ground, "", "", "US"]);
    expect(Number(column(table, 9).at(-1))).toBeCloseTo(3258.75 / 27, 6);
  });
});
