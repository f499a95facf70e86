import { describe, expect, it } from "vitest";
import { outOfRange, readEntry, type EntryCell } from "../../../src/bench/typing/readEntry";
import { FACTS } from "../../../src/job/facts";
import { TAPE_TEXTS } from "../../calc/quantity/tapeTexts";

const inFeet: EntryCell = { fact: FACTS.run, system: "US", form: "#,##0.00" };
const inMeters: EntryCell = { ...inFeet, system: "SI" };
const share: EntryCell = { fact: undefined, system: "US", form: "0.0%" };
const own: EntryCell = { fact: undefined, system: undefined, form: undefined };

describe("an entry in a measured cell", () => {
  it.each(TAPE_TEXTS)("is what a tape says: $text", ({ text, feet, meters, refused }) => {
    for (const [cell, length] of [
      [inFeet, feet],
      [inMeters, meters],
    ] as const) {
      const entry = readEntry(text, cell);
      if (length !== undefined) expect(entry).toEqual({ value: expect.closeTo(length, 9) as number });
      else {
        const sentence = entry && "refused" in entry ? entry.refused : "";
        for (const part of refused ?? []) expect(sentence).toContain(part);
      }
    }
  });

  it("is left to the grid where it is a formula, or nothing", () => {
    expect(readEntry("=B5*2", inFeet)).toBeUndefined();
    expect(readEntry(" ", inFeet)).toBeUndefined();
  });

  it("of percent without a form of its own is a plain number", () => {
    const cell = { ...inFeet, fact: { ...FACTS.run, kind: "percent" as const } };
    expect([readEntry("2%", cell), readEntry("2", cell), readEntry("2.5 %", cell)]).toEqual([
      { value: 2 },
      { value: 2 },
      { value: 2.5 },
    ]);
  });
});

describe("an entry in a percent cell", () => {
  // As spreadsheet programs take them: from 1 on a number is a percentage, below it a share.
  it.each([
    ["8", 0.08],
    ["8%", 0.08],
    ["8 %", 0.08],
    ["0.08", 0.08],
    ["45", 0.45],
    ["6.5", 0.065],
    ["1", 0.01],
    ["0.5", 0.5],
    ["0.5%", 0.005],
    ["-3", -0.03],
    ["0", 0],
    ["29", 0.29],
  ])("%s is %d", (text, value) => expect(readEntry(text, share)).toEqual({ value }));

  it("is refused with the range as it is typed", () => {
    expect(outOfRange("95", FACTS.wantedMargin, "US")).toMatch(/"95" .*0% to \d+%.*8, 8% or 0\.08/);
  });
});

describe("an entry elsewhere", () => {
  it("stays a text where it is one of a tape's, and is the grid's where it is not", () => {
    expect(readEntry("9'4", own)).toEqual({ value: "9'4" });
    expect(readEntry("2’ 6", own)).toEqual({ value: "2’ 6" });
    for (const text of ["12.5", "3-2", "1,250", "don't", "July 4"]) expect(readEntry(text, own), text).toBeUndefined();
  });
});

it("names what was typed, what would be right, and an example in the cell's own kind", () => {
  expect(outOfRange("1200", FACTS.run, "US")).toBe(
    `"1200" is not taken here; this cell takes 0.5 to 1000 ft, written like 3'-2", 3.17 ft or 38 in.`,
  );
  expect(outOfRange("1.5", FACTS.dropCount, "SI")).toMatch(/"1\.5" .*a whole number, 1 to 12/);
});
