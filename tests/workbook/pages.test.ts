import { describe, expect, it } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import { lastPrintedRow, MARGINS, pageScale } from "../../src/workbook/layout/paging";
import { DEFAULT_HEIGHT } from "../../src/workbook/layout/style";
import type { SheetModel } from "../../src/workbook/model";
import { sheets } from "../../src/workbook/sheets";

/** The most pages a person wants of each sheet of the trade. */
const MOST: Readonly<Record<string, number>> = {
  Start: 2,
  Site: 1,
  Ground: 3,
  Water: 2,
  Pump: 3,
  Basin: 3,
  Liner: 3,
  Stone: 2,
  Earth: 2,
  Levels: 4,
  Hours: 1,
  Crew: 1,
  Takeoff: 3,
  // Terms, warranty and the limits of deposits are printed by the quote.
  Price: 3,
  // What is built, what it costs and on which terms, what is agreed.
  Quote: 3,
};

/** Points of the page that rows may take at full size, on the shorter of Letter (11 × 8.5 in) and A4 (11.69 × 8.27 in). */
function roomOf({ print }: SheetModel): number {
  return ((print.landscape ? 8.27 : 11) - MARGINS.top - MARGINS.bottom) * 72;
}

function heightOf(sheet: SheetModel, from: number, to: number): number {
  let height = 0;
  for (let row = from; row <= to; row++) height += sheet.heights.get(row) ?? DEFAULT_HEIGHT;
  return height;
}

/** Heights of the pages between the breaks. */
function pagesOf(sheet: SheetModel): number[] {
  const ends = [...sheet.print.breaks, lastPrintedRow(sheet)];
  return ends.map((end, index) => heightOf(sheet, (ends[index - 1] ?? 0) + 1, end));
}

describe.each(["US", "SI"] as const)("the printed sheets, %s", (system) => {
  const printed = assemble(sheets, system, "demo").sheets.filter(({ name }) => MOST[name] !== undefined);

  it("take few pages", () => {
    expect(printed).toHaveLength(Object.keys(MOST).length);
    for (const sheet of printed) {
      const room = (roomOf(sheet) * 100) / pageScale(sheet);
      // A section longer than a page runs on; the list of checks on Start is one.
      const pages = pagesOf(sheet).reduce((sum, height) => sum + Math.ceil(height / room), 0);
      expect(pages, sheet.name).toBeLessThanOrEqual(MOST[sheet.name] ?? 0);
    }
  });

  it("are large enough to read: 75 % of life size or more, so that letters of 10 points print at 7.5", () => {
    for (const sheet of printed) {
      const high = sheet.print.pagesHigh;
      const fitted = high > 0 ? (100 * high * roomOf(sheet)) / heightOf(sheet, 1, lastPrintedRow(sheet)) : 100;
      expect(Math.min(pageScale(sheet), fitted), sheet.name).toBeGreaterThanOrEqual(75);
    }
  });

  it("leave no page with little more than a heading", () => {
    for (const sheet of printed) for (const height of pagesOf(sheet)) expect(height, sheet.name).toBeGreaterThan(150);
  });

  it("leave out what only formulas and charts read, and the lists", () => {
    const all = assemble(sheets, system, "demo").sheets;
    const behind = all.filter(({ print }) => print.lastRow !== undefined).map(({ name }) => name);
    expect(behind).toEqual(expect.arrayContaining(["Water", "Pump", "Stone"]));
    expect(all.filter(({ hidden }) => hidden).map(({ name }) => name)).toEqual(["Lists"]);
  });
});
