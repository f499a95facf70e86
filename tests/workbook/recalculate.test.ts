import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import { calculate } from "../../src/workbook/build";
import { defineSheet, type SheetLayout } from "../../src/workbook/layout";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";
import { writeWorkbook } from "../../src/workbook/write";
import { changeSheets } from "./templates";

const sheetOf = (build: (s: SheetLayout) => void): ReturnType<typeof assemble> =>
  assemble([defineSheet({ name: "Try", order: 1, build })], "US", "demo");

/** Results of formulas laid out one below the other. */
async function resultsOf(...formulas: string[]): Promise<Recalculated> {
  return calculate(sheetOf((s) => formulas.forEach((formula) => s.result({ label: "x", kind: "number", formula }))));
}

describe("recalculation in Node", () => {
  it("calls our functions, nested and in any case", async () => {
    // 2 ft 6 1/2 in = 30.5 in; 30.5 × 25.4 mm = 774.7 mm.
    const { results } = await resultsOf('RILL.QTY("2\' 6 1/2""","in")', 'ROUND(rill.qty("2\' 6 1/2""","mm"),1)*2');
    expect(results.get("Try!B1")).toBeCloseTo(30.5, 12);
    expect(results.get("Try!B2")).toBeCloseTo(1549.4, 9);
  });

  it("turns a wrong value into #VALUE!, a missing thing into #N/A, and keeps the sentence of each cell", async () => {
    const { results, reasons } = await resultsOf(
      'RILL.QTY("soup","in")',
      "RILL.PIPEBORE(7.77)",
      'RILL.QTY(B1,"in")',
      "1/0",
    );
    expect([1, 2, 3, 4].map((row) => results.get(`Try!B${row}`))).toEqual(["#VALUE!", "#N/A", "#VALUE!", "#DIV/0!"]);
    expect(reasons.get("Try!B1")).toMatch(/soup/);
    expect(reasons.get("Try!B2")).toMatch(/size/);
    expect(reasons.get("Try!B3")).toMatch(/text holds the error #VALUE!/);
    expect(reasons.has("Try!B4")).toBe(false);
  });

  it("does not take a stored result on trust, not even of a function nobody knows", async () => {
    const model = sheetOf((s) => void s.result({ label: "x", kind: "number", formula: "2+2" }));
    const wrong = changeSheets(await writeWorkbook(model), (xml) => xml.replace("</f>", "</f><v>5</v>"));
    expect((await recalculate(wrong)).results.get("Try!B1")).toBe(4);
    const foreign = changeSheets(wrong, (xml) => xml.replace("<f>2+2</f>", "<f>NOSUCHFUNCTION(1)</f>"));
    expect((await recalculate(foreign)).results.get("Try!B1")).toBe("#NAME?");
  });

  it("reads formulas that Excel has folded into one another", async () => {
    const model = sheetOf((s) => {
      for (const value of [3, 4, 5]) s.put(s.row++, 1, { value });
      s.row = 1;
      for (let row = 1; row <= 3; row++) s.put(s.row++, 2, { formula: `RILL.QTY(A${row}&" ft","in")` });
    });
    const folded = changeSheets(await writeWorkbook(model), (xml) =>
      xml
        .replace(
          /<c r="B1"([^>]*?) cm="1">.*?<\/c>/,
          '<c r="B1"$1><f t="shared" ref="B1:B3" si="0">_xldudf_RILL_QTY(A1&amp;" ft","in")</f><v>0</v></c>',
        )
        .replace(/<c r="B([23])"([^>]*?) cm="1">.*?<\/c>/g, '<c r="B$1"$2><f t="shared" si="0"/><v>0</v></c>'),
    );
    const xml = strFromU8(unzipSync(folded)["xl/worksheets/sheet1.xml"] ?? new Uint8Array());
    expect(xml.match(/si="0"/g)).toHaveLength(3);
    const { results } = await recalculate(folded);
    // 3, 4 and 5 ft in inches.
    expect([1, 2, 3].map((row) => results.get(`Try!B${row}`))).toEqual(
      [36, 48, 60].map((inches) => expect.closeTo(inches, 9) as unknown),
    );
  });

  it("rounds as Excel does", async () => {
    const rounding: [formula: string, excel: number | string][] = [
      ["ROUND(1.005,2)", 1.01],
      ["ROUND(-2.5,0)", -3],
      ["ROUND(0.285,2)", 0.29],
      ["ROUND(1234.5,-2)", 1200],
      ['ROUND("x",1)', "#VALUE!"],
      ["ROUNDUP(1136.9,2)", 1136.9],
      ["ROUNDUP(1136.901,2)", 1136.91],
      ["ROUNDUP(-0.21,1)", -0.3],
      ["ROUNDDOWN(0.29*100,0)", 29],
      ["ROUNDDOWN(-1.99,1)", -1.9],
    ];
    const { results } = await resultsOf(...rounding.map(([formula]) => formula));
    expect(rounding.map((_, index) => results.get(`Try!B${index + 1}`))).toEqual(rounding.map(([, excel]) => excel));
  });

  it("settles spills that feed one another, and refuses a circle", async () => {
    const { results } = await calculate(
      sheetOf((s) => {
        const columns = [{ title: "n", kind: "count" as const }];
        const first = s.spill({ header: "ours", rows: 3, formula: "SEQUENCE(3)", columns });
        const second = s.spill({ header: "ours", rows: 3, formula: `UNIQUE(${first.body}*2)`, columns });
        s.result({ label: "sum", kind: "count", formula: `SUM(${second.body})` });
      }),
    );
    // 2 + 4 + 6
    expect(results.get("Try!B9")).toBe(12);
  });
});
