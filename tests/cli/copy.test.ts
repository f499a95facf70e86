import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { copyValues } from "../../src/cli/copy";
import { estimate } from "../../src/cli/estimate";
import { buildWorkbook } from "../../src/workbook/build";
import { copyMadeAt } from "../../src/workbook/copy/valuesCopy";
import { changeSheets } from "../workbook/templates";

const folder = mkdtempSync(path.join(tmpdir(), "rillwright-copy-"));
afterAll(() => rmSync(folder, { recursive: true }));
const made = new Date(2026, 10, 28, 9, 5);
const job = path.join(folder, "Job.xlsx");
const copy = path.join(folder, "Job values 2026-11-28 09.05.xlsx");

describe("the copy command", () => {
  beforeAll(async () => {
    // Its stored results are those of another day: the copy must hold today's.
    const bytes = changeSheets(await buildWorkbook("US", "demo"), (xml) =>
      xml.replace(/(<f>[^<]*<\/f>)<v>\d+(?:\.\d+)?<\/v>/g, "$1<v>4711</v>"),
    );
    writeFileSync(job, bytes);
  });

  it("writes the values beside the workbook, calculated afresh, and says so", async () => {
    expect(await copyValues([job], made)).toBe(`${copy} holds the values of Job.xlsx, without formulas.`);
    const bytes = new Uint8Array(readFileSync(copy));
    expect(copyMadeAt(bytes)).toBe("2026-11-28 09:05");
    expect(Buffer.from(bytes).length).toBeGreaterThan(50_000);
    changeSheets(bytes, (xml) => {
      expect(xml).not.toContain("<v>4711</v>");
      return xml;
    });
  });

  it("writes over nothing, and refuses what is no workbook or a copy, in a sentence", async () => {
    await expect(copyValues([job], made)).rejects.toThrow(`${copy} is there already.`);
    await expect(copyValues([copy], made)).rejects.toThrow(/is a copy of values made 2026-11-28 09:05/);
    await expect(estimate([copy])).rejects.toThrow(/is a copy of values made 2026-11-28 09:05/);
    await expect(copyValues([path.join(folder, "none.xlsx")], made)).rejects.toThrow(/There is no file/);
    await expect(copyValues([], made)).rejects.toThrow(/^Usage/);
    expect(readdirSync(folder).sort()).toEqual(["Job values 2026-11-28 09.05.xlsx", "Job.xlsx"]);
  });
});
