import { describe, expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { cellAddress } from "../../../src/workbook/layout/address";
import { sheets } from "../../../src/workbook/sheets";

/** The most letters of a cell's formula that a person still reads. */
const MOST = 300;

describe("the formulas of the workbook", () => {
  it.each(["US", "SI"] as const)("have at most 300 letters, %s", (system) => {
    const long = assemble(sheets, system, "demo").sheets.flatMap(({ name, rows }) =>
      [...rows].flatMap(([row, cells]) =>
        [...cells].flatMap(([column, { formula = "" }]) =>
          formula.length > MOST ? [`${name}!${cellAddress(row, column)} has ${formula.length}: ${formula}`] : [],
        ),
      ),
    );
    expect(long).toEqual([]);
  });
});
