import { createRequire } from "node:module";
import type { FUniver } from "@univerjs/core/facade";
import { describe, expect, it, vi } from "vitest";
import { columnLetters } from "../../src/workbook/layout/address";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { toGrid } from "../../src/bench/reading/toGrid";
import { assemble } from "../../src/workbook/assemble";
import { calculate, TEMPLATES } from "../../src/workbook/build";
import { position } from "../../src/workbook/lint/xml";
import type { Recalculated } from "../../src/workbook/recalculate";
import { writeWorkbook } from "../../src/workbook/write";
import { startInNode } from "../bench/nodeBench";
import { biggestJob, smallestJob } from "./jobs";
import { sheets } from "../../src/workbook/sheets";
import { agree, changeSheets } from "./templates";

// The bench's engine loads in Node as CommonJS only; its functions must extend the classes of that same copy.
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);

type FWorkbook = ReturnType<FUniver["createWorkbook"]>;

/** What every cell shows after the bench's engine has opened and calculated a file, by "Sheet!B7". */
async function calculatedByTheBench(file: string, bytes: Uint8Array): Promise<Map<string, unknown>> {
  const { univer, api } = startInNode();
  const workbook = api.createWorkbook(toGrid(await openWorkbook(file, bytes)));
  // Readers of a spill see it one pass later; two passes that change nothing are the end.
  let cells = new Map<string, unknown>();
  for (let pass = 0, quiet = 0; quiet < 2; pass++) {
    if (pass === 12) throw new Error(`${file} does not settle in the bench's engine`);
    await calculateOnce(api);
    const now = valuesOf(workbook);
    const same = now.size === cells.size && [...now].every(([key, value]) => cells.get(key) === value);
    quiet = same ? quiet + 1 : 0;
    cells = now;
  }
  univer.dispose();
  return cells;
}

function calculateOnce(api: FUniver): Promise<void> {
  return new Promise((resolve) => {
    const listener = api.getFormula().calculationResultApplied(() => {
      listener.dispose();
      resolve();
    });
    api.getFormula().executeCalculation();
  });
}

function valuesOf(workbook: FWorkbook): Map<string, unknown> {
  const cells = new Map<string, unknown>();
  for (const sheet of workbook.getSheets()) {
    const values = sheet.getRange(0, 0, sheet.getMaxRows(), sheet.getMaxColumns()).getValues();
    values.forEach((row, down) =>
      row.forEach((value, across) => {
        if (value === null || value === undefined) return;
        cells.set(`${sheet.getSheetName()}!${columnLetters(across + 1)}${down + 1}`, value);
      }),
    );
  }
  return cells;
}

/** The file without stored results, so that agreement cannot come from reading them. */
function withoutResults(bytes: Uint8Array): Uint8Array {
  return changeSheets(bytes, (xml) => xml.replace(/(<\/f>)<v>[^<]*<\/v>/g, "$1"));
}

/** Cells on which the two engines differ, and how many were compared. */
async function differences(
  file: string,
  bytes: Uint8Array,
  calculated: Recalculated,
): Promise<{ compared: number; found: string[] }> {
  const bench = await calculatedByTheBench(file, withoutResults(bytes));
  const found: string[] = [];
  let compared = 0;
  for (const [key, result] of calculated.results) {
    const [sheet = "", address = ""] = key.split("!");
    const { column, row } = position(address);
    const rows = Array.isArray(result) ? result : [[result]];
    rows.forEach((line, down) =>
      line.forEach((ours, across) => {
        const cell = `${sheet}!${columnLetters(column + across)}${row + down}`;
        const theirs = bench.get(cell) ?? "";
        compared++;
        // The bench keeps TRUE and FALSE as 1 and 0.
        if (agree(typeof ours === "boolean" ? Number(ours) : ours, theirs)) return;
        found.push(`${cell}: ${JSON.stringify(ours)} and ${JSON.stringify(theirs)}`);
      }),
    );
  }
  return { compared, found };
}

describe("both engines", () => {
  it.each(TEMPLATES)("agree on every cell of $file", async ({ file, system, filled }) => {
    const model = assemble(sheets, system, filled);
    const calculated = await calculate(model);
    const { compared, found } = await differences(file, await writeWorkbook(model), calculated);
    expect(found, `${file}: ${found.length} of ${compared} cells`).toEqual([]);
    console.log(`${file}: ${compared} calculated cells agree`);
  });

  it.each([
    ["the biggest job, US", biggestJob, "US"],
    ["the biggest job, SI", biggestJob, "SI"],
    ["the smallest job, US", smallestJob, "US"],
    ["the smallest job, SI", smallestJob, "SI"],
  ] as const)("agree on every cell of %s", async (name, make, system) => {
    const model = make(system);
    const calculated = await calculate(model);
    const { compared, found } = await differences("job.xlsx", await writeWorkbook(model), calculated);
    expect(found, `${name}: ${found.length} of ${compared} cells`).toEqual([]);
    console.log(`${name}: ${compared} calculated cells agree`);
  });
});
