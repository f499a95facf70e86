import { readFileSync } from "node:fs";
import { readXlsx, writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { Engine } from "../../../src/workbook/engine/engine";
import { sourceOf } from "../../../src/workbook/engine/source";
import { isWorkable } from "../../../src/workbook/engine/workable";

describe("formulas that cannot be worked out here", () => {
  it.each([
    "GETPIVOTDATA(A1,B1)*2",
    "IF(A1,[1]Prices!B4,0)",
    "'[2]Own prices'!$B$4",
    "SUM('C:\\jobs\\[3]Own'!A1:A3)",
    "OWNADDIN.PRICE(A1)",
    "SUM(A1:INDEX(A:A,B1))",
    "SUM(Prices[Cost])",
    "Größen_2[[#This Row],[Cost]]*2",
  ])("are told from the others: %s", (formula) => expect(isWorkable(formula)).toBe(false));

  it.each([
    'SUM(A1:A3)&" GETPIVOTDATA("',
    "RILL.FTIN(A1)",
    'IF(A1,"so: "&SUM(A1:A3),"(no):")',
    "SUM('Own (old): mine'!A1:A3)",
    "'Own (old)'!A1",
    '"Prices[Cost]"&A1',
    "{1,2}*A1",
    "LET(f,LAMBDA(x,x+1),f(2))",
    "SUM(OFFSET(A1,0,0):B9)",
    "-(A1+2)",
    "",
  ])("do not include: %s", (formula) => expect(isWorkable(formula)).toBe(true));

  it.each(["us-blank", "us-demo", "si-blank", "si-demo"])("are none in the template %s", async (name) => {
    const workbook = await readXlsx(readFileSync(`templates/rillwright-${name}.xlsx`), { readStyles: true });
    expect(sourceOf(workbook, true).unworkable).toBe(0);
  });

  it("keep the results that the file has, and what reads them goes on", async () => {
    const cells = new Map([
      ["0,0", { value: 42, formula: 'GETPIVOTDATA("Cost",B9)', formulaResult: 42 }],
      ["1,0", { value: 84, formula: "A1*2", formulaResult: 84 }],
    ]);
    const source = sourceOf(await readXlsx(await writeXlsx({ sheets: [{ name: "Own", rows: [], cells }] })), true);
    const engine = new Engine(source);
    expect(engine.runAll()).toEqual([]);
    expect([1, 2].map((row) => engine.value("Own", row, 1))).toEqual([42, 84]);
    expect(source.unworkable).toBe(1);
  });
});
