import { expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { writerSheet } from "../../../src/workbook/file/sheetParts";
import { areaAddress, columnLetters } from "../../../src/workbook/layout/address";
import { lastPrintedColumn, lastPrintedRow } from "../../../src/workbook/layout/paging";
import { sheets } from "../../../src/workbook/sheets";

it("prints nothing that stands right of the page or below it for formulas, not even where a table may grow there", () => {
  const { sheets: all, names } = assemble(sheets, "US", "blank");
  const checked = all.flatMap((sheet) => {
    const right = lastPrintedColumn(sheet);
    const beside = [...sheet.rows.values()].some((cells) => [...cells.keys()].some((column) => column > right));
    if (sheet.hidden || (!beside && sheet.print.lastRow === undefined)) return [];
    // What may grow is printed as far as it has grown.
    const isLong = sheet.openFrom !== undefined && sheet.print.lastRow === undefined;
    const area = isLong
      ? `$A:$${columnLetters(right)}`
      : areaAddress({ top: 1, left: 1, bottom: lastPrintedRow(sheet), right }, true);
    expect(writerSheet(sheet, names, "letter").pageSetup?.printArea, sheet.name).toBe(area);
    return [sheet.name];
  });
  expect(checked).toEqual(expect.arrayContaining(["Start", "Ground", "Rates", "Quote", "Crew", "Facts"]));
});
