import { describe, expect, it } from "vitest";
import { FILL_PLACES, draftToFill } from "../../src/taskpane/fillDraft";
import { buildWorkbook } from "../../src/workbook/build";
import type { CellValue } from "../../src/workbook/model";
import { openWorkbook } from "../../src/workbook/recalculate";
import { readJob } from "../../src/workbook/jobCells/readJob";
import { loadLater } from "../../src/functions/catalogue";

await loadLater();
const blank = await openWorkbook(await buildWorkbook("US", "blank"));

const cellOf = (name: string): string => (blank.names.get(name) ?? "").replace(/\$/g, "").replace(/:.*/, "");
const ANSWERS: [string, CellValue][] = [
  ["FallAskedYours", "3'2"],
  ["RunAskedYours", 14],
  ["LipAskedYours", 30],
  ["SoilAskedYours", "clay"],
];
const typed = (...more: [string, CellValue][]): Map<string, CellValue> =>
  new Map([...ANSWERS, ...more].map(([name, value]) => [cellOf(name), value]));
const filled = (cells: ReadonlyMap<string, CellValue>) => {
  const workbook = blank.recalculate(cells);
  return draftToFill(
    FILL_PLACES.map((place) => workbook.named(place)),
    blank.names,
  );
};

describe("the draft filled into a job", () => {
  it("shows each fact with its reason, and leaves what was typed alone", () => {
    const { facts, changes, section } = filled(typed(["BedWidthYours", 5]));
    // 38 in / 5 = 7.6 in, between 6 and 8 in and nearest to 7.
    expect(changes).toContainEqual({ place: cellOf("DropCountYours"), values: [[5]] });
    expect(changes.filter(({ place }) => place === cellOf("BedWidthYours"))).toEqual([]);
    // The lip that was answered on Start goes to Water: 30 in.
    expect(changes).toContainEqual({ place: cellOf("LipTable"), values: [[30]] });
    expect(facts.filter(({ reason }) => !reason.endsWith("."))).toEqual([]);
    expect(section).toMatch(/^<svg[^]*5 drops with a fall of 3.17 ft over a run of 14 ft/);
  });

  it("is assumed in the workbook until it is changed, and can be shown again", () => {
    const answered = typed();
    const { facts, changes } = filled(answered);
    const after = new Map([...answered, ...changes.map(({ place, values }) => [place, values[0]?.[0] ?? ""] as const)]);
    const workbook = blank.recalculate(after);
    const { drafted, wrong } = readJob(workbook);
    expect(wrong).toEqual([]);
    expect(drafted.size).toBe(facts.length);
    // Six readings of names, dates and the like are left; before it was dozens.
    expect(Number(workbook.named("FactsUnknown")?.[0]?.[0])).toBeLessThan(8);
    expect(workbook.named("DraftWanted")).toEqual([["yes"]]);
    expect(filled(after).changes).toEqual(changes);
  });

  it("says what is missing where nothing was answered", () => {
    expect(() => filled(new Map())).toThrow(/answer a question on Start/);
  });
});
