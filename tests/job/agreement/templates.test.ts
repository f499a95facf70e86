import { describe, expect, it } from "vitest";
import { evaluate } from "../../../src/job/evaluate";
import { RESULTS } from "../../../src/job/results";
import { assemble } from "../../../src/workbook/assemble";
import { compareCalculations } from "../../../src/workbook/jobCells/compare";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import { recalculate } from "../../../src/workbook/recalculate";
import { sheets } from "../../../src/workbook/sheets";
import { writeWorkbook } from "../../../src/workbook/write";

describe.each([
  ["US", "demo"],
  ["US", "blank"],
  ["SI", "demo"],
  ["SI", "blank"],
] as const)("the %s %s workbook", (system, filled) => {
  it("is calculated alike by its cells and by the job's functions", async () => {
    const workbook = await recalculate(await writeWorkbook(assemble(sheets, system, filled), { charts: false }));
    const { used: job, wrong } = readJob(workbook);
    expect(wrong).toEqual([]);
    expect(compareCalculations(workbook, evaluate(job), job)).toEqual([]);
    // A comparison of nothing would pass too.
    const names = Object.values(RESULTS).flatMap((results) => results.map(({ name }) => name));
    expect(new Set(names).size).toBeGreaterThan(100);
    const shown = names.filter((name) => typeof workbook.named(name)?.[0]?.[0] === "number");
    if (filled === "demo") expect(shown.length).toBeGreaterThan(90);
  });
});
