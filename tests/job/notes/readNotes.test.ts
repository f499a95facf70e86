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
  [
    'Fall 3\'-2", run 14\', lip 30", clay, gate 34"',
    { fallTyped: 38, run: 168, lips: 30, soil: "clay", accessWidth: 34 },
  ],
  ["38 in. drop, 14 ft. run, 30 in. wide lip", { fallTyped: 38, run: 168, lips: 30 }],
  ["fall = 38\"; length = 14'; soil = loam", { fallTyped: 38, run: 168, soil: "loam" }],
  ['Gate is 36" wide. Clay soil. 3 drops.', { accessWidth: 36, soil: "clay", dropCount: 3 }],
  ["total drop 5 ft over 25 ft", { fallTyped: 60, run: 300 }],
  ["falls 3 ft over 16 ft", { fallTyped: 36, run: 192 }],
  ["sheet 3/4 in over 30 in lip", { sheetWanted: 0.75, lips: 30 }],
  ["lip width 2 ft, want it loud", { lips: 24, waterCharacter: "loud" }],
  ["run: 18ft, fall: 40in", { run: 216, fallTyped: 40 }],
  ["wants a clear sheet, 3 ft lip", { waterCharacter: "clear sheet", lips: 36 }],
  ["hard clay, gate 42in, no overhead lines", { soil: "clay", accessWidth: 42 }],
  ["water table 6 ft down", { groundwaterDepth: 72 }],
  ["fall 3'2\" (measured w/ level), run 14' +/-", { fallTyped: 38, run: 168 }],
  ['access thru 34" side gate', { accessWidth: 34 }],
  ["height 3', length 15', width 30\"", { fallTyped: 36, run: 180 }],
  ["approx. 14' long", { run: 168 }],
  ["bank 6in high both sides", { bankHeight: 6 }],
  ["rock is limestone, soil silt", { rock: "limestone", soil: "silt" }],
  ["gate 3 ft 0 in", { accessWidth: 36 }],
  ['30" spillway', { lips: 30 }],
  ["fall 4 ft -6 in", { fallTyped: 54 }],
  ["fall - 3 ft, gate - 34 in", { fallTyped: 36, accessWidth: 34 }],
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
  ["fall -3 ft", /minus/],
  ["run 0", /must be more than 0/],
  ["gate 34-36 in", /range/],
  ["sandy soil", /names no fact/],
  ["fall three feet", /how much/],
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
