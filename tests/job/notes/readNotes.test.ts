import { describe, expect, it } from "vitest";
import { readNotes } from "../../../src/job/notes/readNotes";

const INCH = 0.0254;
const FOOT = 0.3048;

/** What was understood, in inches or by its word; lengths are converted by hand: 3'2 is 38 in. */
function read(notes: string, system: "US" | "SI" = "US"): Record<string, number | string> {
  const unit = system === "US" ? INCH : 0.001;
  return Object.fromEntries(
    readNotes(notes, system).understood.map(({ fact, value }) => [
      fact,
      typeof value === "number" && fact !== "dropCount" && fact !== "flowTyped"
        ? Number((value / unit).toFixed(3))
        : value,
    ]),
  );
}

/** Our own notes, and every fact that stands in them: no more and no less. Inches. */
const LINES: readonly (readonly [string, Record<string, number | string>])[] = [
  [
    "falls 3'2, 14 ft long, 30 in lip, clay, gate 34",
    { fallTyped: 38, run: 168, lips: 30, soil: "clay", accessWidth: 34 },
  ],
  ["fall 2' 9 1/2\", run 11'4", { fallTyped: 33.5, run: 136 }],
  ['lip 26"; clear sheet; sandy loam', { lips: 26, waterCharacter: "clear sheet", soil: "loam" }],
  ["fall 4 ft; loud; gate 10'", { fallTyped: 48, waterCharacter: "loud", accessWidth: 120 }],
  ["14 ft long and 3 ft high", { run: 168, fallTyped: 36 }],
  ["run 20 ft\nfall 4 ft\nsilt", { run: 240, fallTyped: 48, soil: "silt" }],
  ["bed 3'6 wide, banks 9 in", { bedWidth: 42, bankHeight: 9 }],
  ["water table at 4 ft, heavy clay", { groundwaterDepth: 48, soil: "clay" }],
  ["groundwater 5'", { groundwaterDepth: 60 }],
  ["30 in lip in clay", { lips: 30, soil: "clay" }],
  ["lip 30, fall 3, run 14", { lips: 30, fallTyped: 36, run: 168 }],
  ["they want it quiet", { waterCharacter: "trickle" }],
  ["should be loud", { waterCharacter: "loud" }],
  ["just a trickle, 18 in lip", { waterCharacter: "trickle", lips: 18 }],
  ["sheet 3/4 in over the lip", { sheetWanted: 0.75 }],
  ["sheet 3/4 in", { sheetWanted: 0.75 }],
  ["fall ½ ft", { fallTyped: 6 }],
  ["5 drops, fall 3 ft", { dropCount: 5, fallTyped: 36 }],
  ["granite, gate 6 ft", { rock: "granite", accessWidth: 72 }],
  ["way in 40 in", { accessWidth: 40 }],
  ["side yard 5 ft wide", { accessWidth: 60 }],
  ["access about 8 ft", { accessWidth: 96 }],
  ["trench 25 ft", { trenchLength: 300 }],
  ["total fall: 38 in", { fallTyped: 38 }],
  ["Run = 16 ft. Fall = 3 ft.", { run: 192, fallTyped: 36 }],
  ["sand", { soil: "sand" }],
  ["blasted rock, no machine", { soil: "blasted rock" }],
  ["falls 1 yd", { fallTyped: 36 }],
  ["weir 2 ft", { lips: 24 }],
  ["opening 3'-4\"", { accessWidth: 40 }],
];

/** Notes that say too little or too much: nothing comes of them but the reason. */
const OPEN: readonly (readonly [string, RegExp])[] = [
  ["gate not measured", /left open/],
  ["fall?", /left open/],
  ["don't know the soil", /left open/],
  ["3 to 4 ft fall", /which of 3 and 4 ft/],
  ["gate 34 x 80 in", /which of 34 and 80 in/],
  ["gate 34 in, gate 40 in", /way in was said as 34 in and .*: which/],
  ["12", /of what/],
  ["14 ft", /of what/],
  ["dog bites", /names no fact/],
  ["gate", /how much/],
  ["gate 900", /write it with its unit/],
  ["fall 200 ft", /must be/],
  ["lip 12 parsecs", /was not understood|of what|unit|write/],
];

describe("notes of a visit", () => {
  it.each(LINES)("%j", (line, facts) => {
    expect(read(line)).toEqual(facts);
  });

  it.each(OPEN)("%j is not guessed at", (line, reason) => {
    const { understood, open } = readNotes(line, "US");
    const lip = understood.filter(({ fact }) => fact !== "lips");
    expect(lip).toEqual([]);
    expect(open.map(({ why }) => why).join(" ")).toMatch(reason);
  });

  it("are read in metric units, where a bare number takes the unit that makes sense of it", () => {
    expect(read("fall 0,95 m, run 3.4 m, lip 660 mm, gate 90, silt, trickle", "SI")).toEqual({
      fallTyped: 950,
      run: 3400,
      lips: 660,
      accessWidth: 900,
      soil: "silt",
      waterCharacter: "trickle",
    });
    expect(read("fall 95 cm; run 4", "SI")).toEqual({ fallTyped: 950, run: 4000 });
  });

  it("take a flow by its unit: 2400 gph is 2400 x 231 in³ an hour", () => {
    const { understood } = readNotes("2400 gph, fall 3 ft", "US");
    expect(understood.map(({ fact }) => fact).sort()).toEqual(["fallTyped", "flowTyped"]);
    expect(understood[0]?.value).toBeCloseTo((2400 * 231 * INCH ** 3) / 3600, 12);
  });

  it("say in which unit a bare number was taken", () => {
    const { understood } = readNotes("gate 34", "US");
    expect(understood[0]?.remark).toMatch(/^in, as no other unit makes sense/);
    expect(understood[0]?.value).toBeCloseTo(34 * INCH, 12);
  });

  it("stay whole when they are long, strange or empty", () => {
    expect(readNotes("", "US").understood).toEqual([]);
    expect(readNotes("   \n ,;. ", "US").understood).toEqual([]);
    const started = process.cpuUsage().user;
    const { open } = readNotes("fall ".repeat(5000) + "3' ".repeat(3000), "US");
    expect(open.length).toBeGreaterThan(0);
    expect((process.cpuUsage().user - started) / 1000).toBeLessThan(1500);
  });

  it("make a job of what was said, and leave the rest open", () => {
    const { job } = readNotes("fall 3 ft, lip 24 in, loud", "US");
    expect(job.fallTyped).toBeCloseTo(3 * FOOT, 12);
    expect(job.lips).toEqual([{ width: 24 * INCH }]);
    expect(job.waterCharacter).toBe("loud");
    expect(job.run).toBeUndefined();
    expect(job.soil).toBeUndefined();
  });
});
