import { readXlsx } from "hucre/xlsx";
import { expect, it } from "vitest";
import { Signposts } from "../../../src/bench/grid/signposts";
import { assemble } from "../../../src/workbook/assemble";
import { cellAddress } from "../../../src/workbook/layout/address";
import { lastPrintedColumn } from "../../../src/workbook/layout/paging";
import { sheets } from "../../../src/workbook/sheets";
import { writeWorkbook } from "../../../src/workbook/write";

it("leads from every sheet to Start and to the next, in the file and in the bench, without a formula", async () => {
  const model = assemble(sheets, "US", "blank");
  const signposts = new Signposts(await readXlsx(await writeWorkbook(model)));
  const shown = model.sheets.filter(({ hidden }) => !hidden);
  shown.forEach((sheet, index) => {
    const next = shown[index + 1]?.name;
    const found = [1, 2].flatMap((row) =>
      [...(sheet.rows.get(row) ?? [])].flatMap(([column, { value, formula }]) => {
        const place = signposts.link(sheet.name, row - 1, column - 1, () => "");
        if (place === undefined) return [];
        expect(formula, `${sheet.name}!${cellAddress(row, column)}`).toBeUndefined();
        // The client's and the crew's pages print without them.
        if (sheet.print.plain) expect(column, sheet.name).toBeGreaterThan(lastPrintedColumn(sheet));
        return [[value, place]];
      }),
    );
    expect(found, sheet.name).toEqual([
      ...(index > 0 ? [["Start", "Start!A1"]] : []),
      ...(next === undefined ? [] : [[`Next: ${next}`, `${next}!A1`]]),
    ]);
  });
  expect(shown.filter(({ print }) => print.plain).map(({ name }) => name)).toEqual(["Quote", "Crew"]);
});
