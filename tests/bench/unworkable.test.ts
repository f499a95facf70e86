import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { writeXlsx } from "hucre/xlsx";
import { describe, expect, it, vi } from "vitest";
import { knownFunctions } from "../../src/bench/grid/knownFunctions";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { toGrid } from "../../src/bench/reading/toGrid";
import { isWorkable, unworkable } from "../../src/bench/reading/unworkable";

// The bench's engine loads in Node as CommonJS only.
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);

const known = knownFunctions();
const knows = (name: string): boolean => known.has(name);

describe("formulas the bench cannot work out", () => {
  it.each([
    "=GETPIVOTDATA(A1,B1)*2",
    "=IF(A1,[1]Prices!B4,0)",
    "='[2]Own prices'!$B$4",
    "=SUM('C:\\jobs\\[3]Own'!A1:A3)",
    "=OWNADDIN.PRICE(A1)",
    "=SUM(A1:INDEX(A:A,B1))",
    "=SUM(OFFSET(A1,0,0):B9)",
    "=SUM(Prices[Cost])",
    "=Größen_2[[#This Row],[Cost]]*2",
  ])("are told from the others: %s", (formula) => expect(isWorkable(formula, knows)).toBe(false));

  it.each([
    '=SUM(A1:A3)&" GETPIVOTDATA("',
    "=RILL.FTIN(A1)",
    '=IF(A1,"so: "&SUM(A1:A3),"(no):")',
    "=SUM('Own (old): mine'!A1:A3)",
    "='Own (old)'!A1",
    '="Prices[Cost]"&A1',
    "={1,2}*A1",
    "=LET(f,LAMBDA(x,x+1),f(2))",
    "=-(A1+2)",
    "",
  ])("do not include: %s", (formula) => expect(isWorkable(formula, knows)).toBe(true));

  it.each(["us-blank", "us-demo", "si-blank", "si-demo"])("are none in the template %s", async (name) => {
    const { workbook } = await openWorkbook(name, readFileSync(`templates/rillwright-${name}.xlsx`));
    const found = [...unworkable(workbook, knows)].flatMap(([sheet, keys]) =>
      [...keys].map((key) => `${sheet} ${key}`),
    );
    expect(found).toEqual([]);
  });

  it("are shown by the results in the file, and what reads them goes on", async () => {
    const bytes = await writeXlsx({
      sheets: [
        {
          name: "Own",
          rows: [],
          cells: new Map([
            ["0,0", { value: 42, formula: 'GETPIVOTDATA("Cost",B9)', formulaResult: 42 }],
            ["1,0", { value: 84, formula: "A1*2", formulaResult: 84 }],
          ]),
        },
      ],
    });
    const opened = await openWorkbook("own.xlsx", bytes);
    const cells = toGrid(opened, Infinity, unworkable(opened.workbook, knows)).sheets.sheet1?.cellData;
    expect(cells?.[0]?.[0]).toMatchObject({ v: 42 });
    expect(cells?.[0]?.[0]?.f).toBeUndefined();
    expect(cells?.[1]?.[0]?.f).toBe("=A1*2");
  });
});
