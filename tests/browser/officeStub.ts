import { readXlsx } from "hucre/xlsx";
import { dateToSerial } from "hucre";
import { cellName } from "../../src/xlsx/address";
import { formulaOf } from "../../src/bench/work/fileContent";
import { installFakeExcel } from "../host/fakeExcel";
import { FakeWorkbook, type FakeCell } from "../host/fakeWorkbook";

/**
 * What the pane's page gets in place of office.js: the fake host with the demo workbook open, as Excel would show it
 * (stored results, protection, names). `workbook` on the page's global object lets a test look and act as the user in Excel.
 */
const workbook = new FakeWorkbook();
Object.assign(globalThis, { workbook });

installFakeExcel(workbook, async () => {
  const answer = await fetch("templates/rillwright-us-demo.xlsx");
  const { sheets, namedRanges } = await readXlsx(new Uint8Array(await answer.arrayBuffer()), { readStyles: true });
  for (const { name, rows, cells, protection } of sheets) {
    const held: Record<string, FakeCell> = {};
    rows.forEach((row, r) =>
      row.forEach((value, c) => {
        const cell = cells?.get(`${r},${c}`);
        const shown = cell?.formulaResult ?? value ?? "";
        held[cellName(r, c)] = {
          value: shown instanceof Date ? dateToSerial(shown) : shown,
          formula: formulaOf(cell) || undefined,
          locked: cell?.style?.protection?.locked !== false,
        };
      }),
    );
    workbook.addSheet(name, held, protection !== undefined);
  }
  for (const { name, range } of namedRanges ?? []) if (!name.startsWith("_xl")) workbook.names.set(name, range);
});
