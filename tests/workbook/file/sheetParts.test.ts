import { expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { writerSheet } from "../../../src/workbook/file/sheetParts";
import { areaAddress } from "../../../src/workbook/layout/address";
import { lastPrintedColumn, lastPrintedRow } from "../../../src/workbook/layout/paging";
import { sheets } from "../../../src/workbook/sheets";

it("prints nothing that stands right of the page or below it for formulas, not even where a table may grow there", () => {
  const { sheets: all, names } = assemble(sheets, "US", "blank");
  const checked = all.flatMap((sheet) => {
    const right = lastPrintedColumn(sheet);
    const beside = [...sheet.rows.values()].some((cells) => [...cells.keys()].some((column) => column > right));
    if (sheet.hidden || (!beside && sheet.print.lastRow === undefined)) return [];
    const area = areaAddress({ top: 1, left: 1, bottom: lastPrintedRow(sheet), right }, true);
    expect(writerSheet(sheet, names, "letter").pageSetup?.printArea, sheet.name).toBe(area);
    return [sheet.name];
  });
  expect(checked).toEqual(expect.arrayContaining(["Start", "Ground", "Quote", "Crew", "Facts"]));
});
