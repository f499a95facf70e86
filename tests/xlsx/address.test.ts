import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  areaName,
  cellName,
  columnLetters,
  columnNumber,
  overlap,
  parseArea,
  quotedSheet,
} from "../../src/xlsx/address";

describe("addresses", () => {
  it.each([
    // Columns of the .xlsx format: Z is the 26th, AA the 27th, XFD the 16,384th and last.
    [25, "Z"],
    [26, "AA"],
    [16_383, "XFD"],
  ])("column %i is %s", (column, letters) => {
    expect(columnLetters(column)).toBe(letters);
    expect(columnNumber(letters)).toBe(column);
  });

  it("names a cell by column and row counted from 1", () => expect(cellName(6, 1)).toBe("B7"));

  it.each([
    ["Water!$B$7:$C$9", { sheet: "Water", top: 6, left: 1, bottom: 8, right: 2 }],
    ["='Pipe run'!B7", { sheet: "Pipe run", top: 6, left: 1, bottom: 6, right: 1 }],
    ["'Don''t'!C9:B7", { sheet: "Don't", top: 6, left: 1, bottom: 8, right: 2 }],
  ])("reads %s", (written, area) => expect(parseArea(written)).toEqual(area));

  it.each([
    "0.1",
    "Water!A:A",
    "Water!A1,Water!B2",
    "=SUM(Water!A1:A3)",
    "#REF!",
    "B7",
    "Water!XFE1",
    "Water!A1048577",
  ])("finds no cells in %s", (written) => expect(parseArea(written)).toBeUndefined());

  it("quotes sheet names that a formula would misread", () => {
    expect(["Pump", "Pipe run", "Q1", "R1C1", "Don't"].map(quotedSheet)).toEqual([
      "Pump",
      "'Pipe run'",
      "'Q1'",
      "'R1C1'",
      "'Don''t'",
    ]);
  });

  it("reads back every area it writes", () => {
    const corner = fc.tuple(fc.nat(1_048_575), fc.nat(16_383));
    fc.assert(
      fc.property(
        fc.string({ minLength: 1, maxLength: 31 }).filter((name) => name.trim() === name),
        corner,
        corner,
        (sheet, [r1, c1], [r2, c2]) => {
          const area = {
            sheet,
            top: Math.min(r1, r2),
            bottom: Math.max(r1, r2),
            left: Math.min(c1, c2),
            right: Math.max(c1, c2),
          };
          expect(parseArea(areaName(area))).toEqual(area);
        },
      ),
    );
  });

  it("sees shared cells, on one sheet only", () => {
    const area = { sheet: "A", top: 1, left: 1, bottom: 3, right: 3 };
    expect(overlap(area, { ...area, top: 3, bottom: 9 })).toBe(true);
    expect(overlap(area, { ...area, top: 4, bottom: 9 })).toBe(false);
    expect(overlap(area, { ...area, sheet: "B" })).toBe(false);
  });
});
