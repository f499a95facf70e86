import { describe, expect, it } from "vitest";
import type { CellValue, Grid, Place } from "../../src/host/port";
import { notesForCells } from "../../src/taskpane/noteCells";

/** A workbook whose cells are blank but for these. */
const workbook =
  (filled: Readonly<Record<Place, CellValue | undefined>> = {}) =>
  (places: readonly Place[]): Promise<(Grid | undefined)[]> =>
    Promise.resolve(
      places.map((place) => {
        const value = place in filled ? filled[place] : "";
        return value === undefined ? undefined : [[value]];
      }),
    );

const LINE = "falls 3'2, 14 ft long, 30 in lip, clay, gate 34, loud";

describe("notes of a visit for the cells of a workbook", () => {
  it("go to the questions on Start, in the unit of the cell: 3'2 is 38/12 ft, a gate of 34 in 34/12 ft", async () => {
    const { noted, open } = await notesForCells(LINE, "US", workbook());
    expect(open).toEqual([]);
    expect(Object.fromEntries(noted.map(({ change }) => [change.place, change.values[0]?.[0]]))).toEqual({
      FallAskedYours: 3.16666667,
      RunAskedYours: 14,
      LipAskedYours: 30,
      SoilAskedYours: "clay",
      WayInAskedYours: 2.83333333,
      WaterCharacterYours: "loud",
    });
    expect(noted.map(({ before }) => before)).toEqual(noted.map(() => ""));
  });

  it("go where something stands that would win over them, and say what they replace", async () => {
    const { noted } = await notesForCells(
      "falls 3 ft, run 14 ft",
      "US",
      workbook({ FallTypedYours: 4, RunAskedYours: 14 }),
    );
    expect(noted.map(({ change, before }) => [change.place, change.values, before])).toEqual([
      ["FallTypedYours", [[3]], 4],
      ["RunAskedYours", [[14]], ""],
    ]);
  });

  it("leave out what the workbook has no cell for, and say so", async () => {
    const { noted, open } = await notesForCells("loud, fall 3 ft", "US", workbook({ WaterCharacterYours: undefined }));
    expect(noted.map(({ change }) => change.place)).toEqual(["FallAskedYours"]);
    expect(open).toEqual([{ said: "loud", why: "this workbook has no cell for it" }]);
  });
});
