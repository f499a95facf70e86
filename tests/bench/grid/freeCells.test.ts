import { createRequire } from "node:module";
import { Workbook } from "@cj-tech-master/excelts";
import type { Univer } from "@univerjs/core";
import { expect, it, vi } from "vitest";
import { FreeCells } from "../../../src/bench/grid/freeCells";
import { writeCells } from "../../../src/bench/grid/write";
import { openWorkbook } from "../../../src/bench/reading/openWorkbook";
import { toGrid } from "../../../src/bench/reading/toGrid";
import { openInNode } from "../nodeBench";

vi.mock("@univerjs/core", () => createRequire(import.meta.url)("@univerjs/core") as object);
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);
vi.mock("@univerjs/preset-sheets-core", () => createRequire(import.meta.url)("@univerjs/sheets") as object);

/** A tinted column of amounts with a heading and one amount in it, and a result without a ground of its own. */
async function list(): Promise<Uint8Array> {
  const file = new Workbook();
  const sheet = file.addWorksheet("List");
  const tint = { type: "pattern", pattern: "solid", fgColor: { argb: "FFFBF4DF" } } as const;
  sheet.getColumn(2).fill = tint;
  sheet.getColumn(2).numFmt = "0.00";
  sheet.getCell("B1").value = "Amount";
  sheet.getCell("B1").style = { font: { bold: true } };
  sheet.getCell("B2").value = { formula: "SUM(B3:B9)+0%" };
  sheet.getCell("B2").style = { font: { italic: true } };
  sheet.getCell("B3").value = 4;
  sheet.getCell("B3").style = { fill: tint, numFmt: "0.00" };
  return new Uint8Array(await file.xlsx.writeBuffer());
}

it("gives the look of a column to cells that the file does not hold, and to no other, whatever is done to them", async () => {
  const bytes = await list();
  const bench = await openInNode(bytes);
  const univer = { __getInjector: () => bench.injector } as unknown as Univer;
  const opened = await openWorkbook("list.xlsx", bytes);
  const free = new FreeCells();
  free.begin(opened.workbook, toGrid(opened));
  free.listen(univer);
  const sheet = bench.workbook.getSheetByName("List")?.getSheet();
  const ground = (row: number) => sheet?.getComposedCellStyle(row, 1).bg?.rgb;
  const grounds = () => [0, 1, 2, 3, 30, 900].map(ground);
  const only = [undefined, undefined, "#FBF4DF", "#FBF4DF", "#FBF4DF", "#FBF4DF"];
  expect(grounds()).toEqual(only);
  expect(sheet?.getComposedCellStyle(3, 0).bg).toBeUndefined();

  const at = (row: number) => ({ sheet: "List", top: row, left: 1, bottom: row, right: 1 });
  for (const row of [0, 2, 3]) writeCells(univer, bench.grid, [{ area: at(row), values: [[7.5]] }]);
  await bench.calculation.settled();
  expect(grounds()).toEqual(only);
  expect(sheet?.getComposedCellStyle(3, 1).n?.pattern).toBe("0.00");
  for (let step = 0; step < 3; step++) bench.workbook.undo();
  await bench.calculation.settled();
  expect(grounds()).toEqual(only);
  bench.close();
});
