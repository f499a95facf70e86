import { expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { defineSheet, type SheetLayout } from "../../../src/workbook/layout";
import { pageScale } from "../../../src/workbook/layout/paging";
import type { SheetModel } from "../../../src/workbook/model";

function laidOut(build: (s: SheetLayout) => void): SheetModel {
  const [sheet] = assemble([defineSheet({ name: "Try", order: 1, build })], "US", "demo").sheets;
  if (!sheet) throw new Error("no sheet");
  return sheet;
}

/** Rows of plain cells, each 15 points high. */
function rows(s: SheetLayout, count: number): void {
  for (let index = 0; index < count; index++) s.put(s.row++, 1, { value: index });
}

it("scales a sheet to the narrower paper, never above life size", () => {
  // 100 characters are (100 × 7 + 5) / 96 = 7.34 in; A4 leaves 8.27 − 1 = 7.27 in; 97 % of 7.27 / 7.34.
  expect(pageScale(laidOut((s) => s.widths([100])))).toBe(96);
  expect(pageScale(laidOut((s) => s.widths([20])))).toBe(100);
  // Letter lies 11 in wide: 10 / 7.34.
  const landscape = laidOut((s) => {
    s.widths([100]);
    s.print({ landscape: true });
  });
  expect(pageScale(landscape)).toBe(100);
});

it("begins a page where a section would be cut, and not where it fits or no page could hold it", () => {
  // A page holds (11 − 1.25) × 72 × 0.96 = 674 points, which is 43 rows of 15 with room for headings of 19.
  const sheet = (second: number): SheetModel =>
    laidOut((s) => {
      s.widths([60]);
      s.section("One");
      rows(s, 25);
      s.section("Two");
      rows(s, second);
    });
  expect(sheet(12).print.breaks).toEqual([]);
  expect(sheet(30).print.breaks).toEqual([27]);
  expect(sheet(60).print.breaks).toEqual([]);
});

it("keeps the breaks a sheet asks for, and counts from them", () => {
  const sheet = laidOut((s) => {
    s.widths([60]);
    rows(s, 20);
    s.pageBreak();
    s.section("Two");
    rows(s, 30);
    s.section("Three");
    rows(s, 20);
  });
  expect(sheet.print.breaks).toEqual([20, 53]);
});

it("fits a sheet to the pages it names, without breaks", () => {
  const sheet = laidOut((s) => {
    s.print({ pagesHigh: 1 });
    s.section("One");
    rows(s, 60);
    s.section("Two");
    rows(s, 60);
  });
  expect([sheet.print.pagesHigh, sheet.print.breaks]).toEqual([1, []]);
});
