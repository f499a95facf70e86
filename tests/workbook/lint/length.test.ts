import { describe, expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { cellAddress } from "../../../src/workbook/layout/address";
import { sheets } from "../../../src/workbook/sheets";

/** The most letters of a cell's formula that a person still reads. */
const MOST = 300;
/** As many formulas of a workbook as a person can still look through are fewer than this. */
const FEWER_THAN = 2000;

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

  it.each(["US", "SI"] as const)("are fewer than 2,000, %s", (system) => {
    const cells = assemble(sheets, system, "demo").sheets.flatMap(({ rows }) =>
      [...rows.values()].flatMap((row) => [...row.values()]),
    );
    expect(cells.filter(({ formula }) => formula !== undefined).length).toBeLessThan(FEWER_THAN);
  });
});
