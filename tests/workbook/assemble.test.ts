import { describe, expect, test } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import { sheets } from "../../src/workbook/sheets";

describe("the workbook as data", () => {
  test.each(["US", "SI"] as const)("is laid out in %s, demo and blank", (system) => {
    const demo = assemble(sheets, system, "demo");
    const blank = assemble(sheets, system, "blank");
    expect(demo.sheets.map((sheet) => sheet.name)).toEqual(blank.sheets.map((sheet) => sheet.name));
    expect(demo.names).toEqual(blank.names);
  });
});
