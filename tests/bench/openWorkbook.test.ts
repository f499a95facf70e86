import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { FileRefusal } from "../../src/workbook/file/refusal";
import { badFiles } from "../badFiles";
import { smallTemplate } from "../host/smallTemplate";

describe("opening", () => {
  it("reads a workbook", async () => {
    const { workbook } = await openWorkbook("job.xlsx", await smallTemplate());
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Site", "Pump", "Notes"]);
  });

  it.each(badFiles)("refuses $what in a sentence", async ({ bytes, asWorkbook }) => {
    const opening = openWorkbook("job.xlsx", await bytes());
    await expect(opening).rejects.toThrow(`job.xlsx ${asWorkbook}`);
    await expect(opening).rejects.toThrow(FileRefusal);
  });
});
