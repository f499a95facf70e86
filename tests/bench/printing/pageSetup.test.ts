import { readXlsx } from "hucre/xlsx";
import { expect, it } from "vitest";
import { planPages } from "../../../src/bench/printing/pageSetup";
import { assemble } from "../../../src/workbook/assemble";
import { sheets } from "../../../src/workbook/sheets";
import { writeWorkbook } from "../../../src/workbook/write";

const filled = { top: 0, left: 0, bottom: 9, right: 3 };
const margins = { top: 1, right: 0.5, bottom: 1, left: 0.5 };

it("takes print area, titles, paper and margins from the file", () => {
  const pageSetup = {
    printArea: "$A$1:$C$40",
    printTitlesRow: "$5:$6",
    orientation: "landscape",
    paperSize: "a4",
    margins,
  } as const;
  const plan = planPages({ name: "Own", pageSetup, rowBreaks: [19] }, filled, () => ({ wide: 500, high: 900 }));
  expect(plan.area).toMatchObject({ top: 0, left: 0, bottom: 39, right: 2 });
  expect(plan.titles).toEqual({ first: 4, last: 5 });
  expect([plan.landscape, plan.paper, plan.scale]).toEqual([true, "A4", 1]);
  expect(plan.margins).toEqual([1, 0.5, 1, 0.5]);
  expect([...plan.breaks]).toEqual([20]);
});

it("prints whole columns as far down as they are filled", () => {
  const plan = planPages({ name: "Own", pageSetup: { printArea: "Own!$B:$C" } }, filled, () => ({ wide: 1, high: 1 }));
  expect(plan.area).toEqual({ top: 0, left: 1, bottom: 9, right: 2 });
});

it("makes a sheet as small as its page asks, and never wider than it", () => {
  const scaleOf = (pageSetup: object, wide: number, high: number): number =>
    planPages({ name: "Own", pageSetup: { margins, ...pageSetup } }, filled, () => ({ wide, high })).scale;
  // By hand: Letter is 8.5 in wide, less 2 × 0.5 in: 7.5 in × 96 = 720 dots; 11 in less 2 in: 9 in × 96 = 864 dots high.
  expect(scaleOf({ scale: 80 }, 700, 5000)).toBeCloseTo(0.8, 9);
  expect(scaleOf({ scale: 80 }, 1440, 5000)).toBeCloseTo(0.5, 9);
  expect(scaleOf({ fitToPage: true, fitToHeight: 1 }, 720, 1728)).toBeCloseTo(0.5, 9);
  expect(scaleOf({ fitToPage: true, fitToHeight: 0 }, 1440, 1728)).toBeCloseTo(0.5, 9);
  expect(planPages({ name: "Own" }, filled, () => ({ wide: 1, high: 1 })).area).toEqual(filled);
});

it("begins pages where the workbook's own do", async () => {
  const model = assemble(sheets, "US", "demo");
  const { sheets: read } = await readXlsx(await writeWorkbook(model), { readStyles: true });
  const quote = model.sheets.find(({ name }) => name === "Quote");
  const sheet = read.find(({ name }) => name === "Quote");
  if (!quote || !sheet) throw new Error("there is no Quote");
  // The model names the last row of a page, counted from 1: the next page begins at that number counted from 0.
  expect([...planPages(sheet, filled, () => ({ wide: 1, high: 1 })).breaks]).toEqual([...quote.print.breaks]);
});
