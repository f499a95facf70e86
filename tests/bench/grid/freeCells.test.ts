import { createRequire } from "node:module";
import type { Univer } from "@univerjs/core";
import type { CellStyle } from "hucre";
import { writeXlsx } from "hucre/xlsx";
import { expect, it, vi } from "vitest";
import { FreeCells } from "../../../src/bench/grid/freeCells";
import { writeCells } from "../../../src/bench/grid/write";
import { openWorkbook } from "../../../src/bench/reading/openWorkbook";
import { toGrid } from "../../../src/bench/reading/toGrid";
import { openColumns } from "../../../src/workbook/file/openRows";
import { readXml, withPieces } from "../../../src/xlsx/xml";
import { changeSheets } from "../../workbook/templates";
import { openInNode } from "../nodeBench";

vi.mock("@univerjs/core", () => createRequire(import.meta.url)("@univerjs/core") as object);
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);
vi.mock("@univerjs/preset-sheets-core", () => createRequire(import.meta.url)("@univerjs/sheets") as object);

/** A tinted column of amounts with a heading and one amount in it, and a result without a fill of its own. */
async function list(): Promise<Uint8Array> {
  const tinted: CellStyle = {
    fill: { type: "pattern", pattern: "solid", fgColor: { rgb: "FBF4DF" } },
    numFmt: "0.00",
  };
  const bytes = await writeXlsx({
    sheets: [
      {
        name: "List",
        columns: [{ width: 10 }, { width: 10 }],
        cells: new Map([
          ["0,1", { value: "Amount", style: { font: { bold: true } } }],
          ["1,1", { formula: "SUM(B3:B9)+0%", value: 4, style: { font: { italic: true } } }],
          ["2,1", { value: 4, style: tinted }],
        ]),
      },
    ],
  });
  // The writing library gives columns no look.
  return changeSheets(bytes, (xml) => withPieces(xml, openColumns(readXml(xml), { openFrom: 3, heights: new Map() })));
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
  const fill = (row: number) => sheet?.getComposedCellStyle(row, 1).bg?.rgb;
  const fills = () => [0, 1, 2, 3, 30, 900].map(fill);
  const only = [undefined, undefined, "#FBF4DF", "#FBF4DF", "#FBF4DF", "#FBF4DF"];
  expect(fills()).toEqual(only);
  expect(sheet?.getComposedCellStyle(3, 0).bg).toBeUndefined();

  const at = (row: number) => ({ sheet: "List", top: row, left: 1, bottom: row, right: 1 });
  for (const row of [0, 2, 3]) writeCells(univer, bench.grid, [{ area: at(row), values: [[7.5]] }]);
  await bench.calculation.settled();
  expect(fills()).toEqual(only);
  expect(sheet?.getComposedCellStyle(3, 1).n?.pattern).toBe("0.00");
  for (let step = 0; step < 3; step++) bench.workbook.undo();
  await bench.calculation.settled();
  expect(fills()).toEqual(only);
  bench.close();
});
