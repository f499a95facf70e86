import { spawnSync } from "node:child_process";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { estimate } from "../../src/cli/estimate";
import { assemble } from "../../src/workbook/assemble";
import { buildWorkbook } from "../../src/workbook/build";
import { GLANCE } from "../../src/workbook/glance";
import { defineSheet } from "../../src/workbook/layout";
import type { Summary } from "../../src/workbook/summary";
import { sheets } from "../../src/workbook/sheets";
import { writeWorkbook } from "../../src/workbook/write";
import { badFiles } from "../badFiles";

const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
afterAll(() => rmSync(folder, { recursive: true }));

function kept(name: string, bytes: Uint8Array): string {
  const file = path.join(folder, name);
  writeFileSync(file, bytes);
  return file;
}

function never(): never {
  throw new Error("the demo has no lips");
}

describe("the estimate command", () => {
  let demo: string;
  beforeAll(async () => {
    demo = kept("demo.xlsx", await buildWorkbook("US", "demo"));
  });

  it("prints the job's summary", async () => {
    const { text, agrees } = await estimate([demo]);
    expect(agrees).toBe(true);
    expect(text).toMatch(/Calculated a second time by other code: the same in every result and check\.$/);
    expect(text).toMatch(/^Hollow Bank stream, backyard \(US units\)/);
    expect(text).toMatch(/Checks: \d+ passed/);
  });

  it("reads what a tape says in a column of a table, and says so", async () => {
    const model = assemble(sheets, "US", "demo");
    const { sheet, area } = model.names.find(({ name }) => name === "LipTable") ?? never();
    const lip =
      model.sheets
        .find(({ name }) => name === sheet)
        ?.rows.get(area.top)
        ?.get(area.left) ?? never();
    // 2 × 12 + 2 = 26 in, which the demo's lip has as a number.
    expect(lip.value).toBe(26);
    lip.value = "2' 2";
    const { text, agrees } = await estimate([kept("tape.xlsx", await writeWorkbook(model, { charts: false }))]);
    expect(agrees).toBe(true);
    expect(text).toMatch(/Texts in tables, read as a tape says them:\n {2}Water!B\d+: 2' 2 taken as 26 in\n/);
  });

  it("prints it as JSON, with units", async () => {
    const summary = JSON.parse((await estimate([demo, "--json"])).text) as Summary;
    expect(summary.units).toBe("US");
    expect(summary.errors).toEqual([]);
    expect(summary.results.every(({ name }) => GLANCE.some((one) => one.name === name))).toBe(true);
    expect(summary.checks.length).toBeGreaterThan(2);
  });

  it("says what is still to fill in a blank workbook", async () => {
    const { text } = await estimate([kept("blank.xlsx", await buildWorkbook("SI", "blank"))]);
    expect(text).toMatch(/^A job without a name \(metric units\)/);
    expect(text).toMatch(/FIX +Inputs still blank on Site \(Site: Your company\)/);
  });

  it.each<[string, () => string[] | Promise<string[]>, RegExp]>([
    ["no file", () => [], /^Usage: npm run estimate/],
    ["two files", () => ["a.xlsx", "b.xlsx"], /^Usage/],
    ["an unknown option", () => ["--csv"], /There is no option --csv/],
    ["a file that is not there", () => [path.join(folder, "none.xlsx")], /There is no file/],
    ["a folder", () => [folder], /is a folder/],
    ["an option before a file", () => ["--metric", demo], /There is no option --metric/],
    ["a device", () => ["/dev/zero"], /is not a file/],
    [
      "somebody else's workbook",
      async () => {
        const sheet = defineSheet({ name: "Other", order: 1, build: (s) => s.note("Groceries") });
        return [kept("foreign.xlsx", await writeWorkbook(assemble([sheet], "US", "demo")))];
      },
      /is not a Rillwright estimate/,
    ],
  ])("refuses %s in a sentence", async (_, args, sentence) => {
    await expect(estimate(await args())).rejects.toThrow(sentence);
  });

  /** The demo with something broken in the bytes of its parts. */
  function broken(what: string, change: (name: string, xml: string) => string): string {
    const parts = unzipSync(readFileSync(demo));
    const after = Object.entries(parts).map(([name, bytes]) => {
      const isText = name.endsWith(".xml");
      return [name, isText ? strToU8(change(name, strFromU8(bytes))) : bytes] as const;
    });
    return kept(`${what}.xlsx`, zipSync(Object.fromEntries(after)));
  }

  it("prints no price for a workbook whose names were changed", async () => {
    const file = broken("renamed", (name, xml) =>
      name === "xl/workbook.xml" ? xml.replace('name="Tariff"', 'name="TariffOld"') : xml,
    );
    await expect(estimate([file])).rejects.toThrow(/no price that could be trusted:\n {2}no cell is named Tariff/);
  });

  it("prints no price for a workbook with a cell in error", async () => {
    const file = broken("error", (name, xml) =>
      name.includes("worksheets/") ? xml.replace(/<f>IF\(COUNT\(TakeoffCosts\)=0,[^<]*<\/f>/, "<f>1/0</f>") : xml,
    );
    await expect(estimate([file])).rejects.toThrow(/no price that could be trusted:\n.*#DIV\/0!/s);
  });

  it("prints both and says so where a formula was typed over", async () => {
    const file = broken("typed-over", (name, xml) =>
      name.includes("worksheets/") ? xml.replace(/<f>IF\(COUNT\(TakeoffCosts\)=0,[^<]*<\/f>/, "<f>1234</f>") : xml,
    );
    const { text, agrees } = await estimate([file]);
    expect(agrees).toBe(false);
    expect(text).toMatch(/THE TWO CALCULATIONS DIFFER[^\n]*\n {2}TakeoffTotal: 1234 by the cells, \d/);
  });

  it.each(badFiles)("refuses $what in a sentence", async ({ bytes, asWorkbook }) => {
    const file = kept("bad.xlsx", await bytes());
    await expect(estimate([file])).rejects.toThrow(`${file} ${asWorkbook}`);
  });

  it("says it on the error output, and ends with 1", () => {
    const { status, stdout, stderr } = command([path.join(folder, "none.xlsx")]);
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(stderr).toMatch(/^There is no file [^\n]+none\.xlsx\.\n$/);
  });

  it("prints nothing but JSON with --json, and ends with 0", () => {
    const { status, stdout, stderr } = command([demo, "--json"]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect((JSON.parse(stdout) as Summary).units).toBe("US");
  });
});

/** Runs the command as a person does, in a process of its own. */
function command(args: readonly string[]): { status: number | null; stdout: string; stderr: string } {
  const top = path.join(import.meta.dirname, "../..");
  const program = [path.join(top, "node_modules/tsx/dist/cli.mjs"), path.join(top, "src/cli/estimate.ts")];
  return spawnSync(process.execPath, [...program, ...args], { encoding: "utf8", cwd: top });
}
