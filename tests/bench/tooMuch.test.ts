import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { toGrid } from "../../src/bench/reading/toGrid";
import { FileRefusal } from "../../src/workbook/file/refusal";
import { smallTemplate } from "../host/smallTemplate";
import { rows, SHEET, TOO_MUCH, withPut } from "./tooMuchFiles";

const MOST_SECONDS = 3;
const MOST_BYTES = 1_000_000_000;
/** Runs something and says how much of the machine it took. */
async function cost(act: () => Promise<void>): Promise<{ seconds: number; bytes: number }> {
  const before = process.cpuUsage();
  const { rss } = process.memoryUsage();
  await act();
  const { user, system } = process.cpuUsage(before);
  return { seconds: (user + system) / 1e6, bytes: process.memoryUsage().rss - rss };
}

describe("files that ask for too much", () => {
  it.each(TOO_MUCH)("refuses %s in a sentence, at once", async (_, bytes, sentence) => {
    const file = await bytes();
    const { seconds, bytes: taken } = await cost(async () => {
      const opening = openWorkbook("x.xlsx", file);
      await expect(opening).rejects.toThrow(sentence);
      await expect(opening).rejects.toThrow(FileRefusal);
    });
    expect(seconds).toBeLessThan(MOST_SECONDS);
    expect(taken).toBeLessThan(MOST_BYTES);
  });

  it.each([
    ["cells merged over a whole sheet", '<mergeCells count="1"><mergeCell ref="A1:XFD1048576"/></mergeCells>'],
    [
      "a list over a whole sheet",
      '<dataValidations count="1"><dataValidation type="list" sqref="A1:XFD1048576"><formula1>"a,b"</formula1></dataValidation></dataValidations>',
    ],
  ])("opens %s without taking it apart", async (_, put) => {
    const file = await withPut([[SHEET, "<pageMargins", put]]).catch(() => withPut([[SHEET, "</worksheet>", put]]));
    const { seconds, bytes } = await cost(async () => {
      toGrid(await openWorkbook("x.xlsx", file));
    });
    expect(seconds).toBeLessThan(MOST_SECONDS);
    expect(bytes).toBeLessThan(MOST_BYTES);
  });

  it("takes a sum over 5,000 rows in each of them, and a lookup in each of 5,000 rows", async () => {
    const file = await withPut([
      rows(
        5000,
        (row) =>
          `<c r="D${row}"><v>1</v></c><c r="E${row}"><f>SUM($D$9:D${row})+VLOOKUP(D${row},$A$9:$B$5008,2)</f><v>1</v></c>`,
      ),
    ]);
    expect((await openWorkbook("x.xlsx", file)).workbook.sheets[0]?.cells?.size).toBe(5000);
    await openWorkbook("small.xlsx", await smallTemplate());
  });
});
