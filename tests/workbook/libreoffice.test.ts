import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { valuesCopy } from "../../src/workbook/copy/valuesCopy";
import { isDynamic } from "../../src/workbook/formulaText";
import { cellAddress } from "../../src/workbook/layout/address";
import { writeWorkbook } from "../../src/workbook/write";
import { ALL } from "../effort";
import { agree, builtTemplates, changeSheets, type BuiltTemplate } from "./templates";
import { hasLibreOffice, SOFFICE } from "./tools";

const folder = mkdtempSync(path.join(tmpdir(), "rillwright-office-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Converts files by one start of the program, which takes longer than a file. */
function convert(files: readonly string[], to: string, profile = "profile"): string[] {
  const out = path.join(folder, to);
  mkdirSync(out, { recursive: true });
  const home = `-env:UserInstallation=file://${path.join(folder, profile)}`;
  execFileSync(SOFFICE, ["--headless", home, "--convert-to", to, "--outdir", out, ...files], { stdio: "ignore" });
  return files.map((file) => path.join(out, path.basename(file).replace(/\.xlsx$/, `.${to}`)));
}

/** A profile of this region in which every formula is calculated anew when a file is opened. */
function profileOf(region: string): string {
  const user = path.join(folder, region, "user");
  mkdirSync(user, { recursive: true });
  const item = (place: string, name: string, value: string): string =>
    `<item oor:path="/org.openoffice.${place}"><prop oor:name="${name}" oor:op="fuse"><value>${value}</value></prop></item>`;
  writeFileSync(
    path.join(user, "registrymodifications.xcu"),
    '<?xml version="1.0" encoding="UTF-8"?><oor:items xmlns:oor="http://openoffice.org/2001/registry">' +
      item("Setup/L10N", "ooSetupSystemLocale", region) +
      item("Office.Calc/Formula/Load", "OOXMLRecalcMode", "0") +
      "</oor:items>",
  );
  return region;
}

function textOf(pdf: string): string {
  return execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8", maxBuffer: 1e8 });
}

describe.skipIf(!hasLibreOffice())("LibreOffice", () => {
  let built: readonly BuiltTemplate[];
  beforeAll(async () => {
    built = await builtTemplates();
  });

  /** The demos, or all templates. */
  const tried = (): readonly BuiltTemplate[] => built.filter(({ model }) => ALL || model.filled === "demo");

  it("calculates the native formulas it knows to the same values", async () => {
    const sources = await Promise.all(
      tried().map(async ({ file, model }) => {
        // Our functions as values; no native formula keeps its stored result.
        const bytes = changeSheets(await writeWorkbook(model, { form: "values" }), (xml) =>
          xml.replace(/(<\/f>)<v>[^<]*<\/v>/g, "$1"),
        );
        const source = path.join(folder, file);
        writeFileSync(source, bytes);
        return source;
      }),
    );
    const converted = convert(sources, "xlsx");
    for (const [index, { file, model }] of tried().entries()) {
      const { sheets } = await readXlsx(readFileSync(converted[index] ?? ""));
      let compared = 0;
      const differences: string[] = [];
      for (const { name, rows } of model.sheets) {
        const read = sheets.find((sheet) => sheet.name === name);
        for (const [row, cells] of rows) {
          for (const [column, { formula, spill, result }] of cells) {
            if (formula === undefined || spill || isDynamic(formula)) continue;
            const found = read?.cells?.get(`${row - 1},${column - 1}`);
            const value = found?.formulaResult ?? found?.value ?? read?.rows[row - 1]?.[column - 1] ?? "";
            // Newer than this LibreOffice; IFERROR hides that from us.
            if (/IFERROR\(XMATCH\(/.test(formula)) continue;
            if (value === "#NAME?" && /\b(LET|XLOOKUP|XMATCH|TEXTJOIN|IFS|SWITCH)\(/.test(formula)) continue;
            compared++;
            if (!agree(result ?? "", value instanceof Date ? value.getTime() / 86_400_000 + 25_569 : value)) {
              differences.push(
                `${name}!${cellAddress(row, column)} ${formula}: ${String(result)} and ${String(value)}`,
              );
            }
          }
        }
      }
      expect(differences, `${file}: ${differences.length} of ${compared}`).toEqual([]);
      expect(compared).toBeGreaterThan(15);
      console.log(`${file}: ${compared} native formulas agree`);
    }
  });

  it("prints every sheet with nothing cut off by narrow columns", async () => {
    const sources: string[] = [];
    for (const { file, model } of tried()) {
      // Each on the paper of its country; when everything is tried, on the other too.
      const own = model.system === "US" ? "letter" : "a4";
      for (const paper of ALL ? (["letter", "a4"] as const) : ([own] as const)) {
        const source = path.join(folder, `${paper}-${file}`);
        writeFileSync(source, await writeWorkbook(model, { form: "values", paper }));
        sources.push(source);
      }
    }
    for (const pdf of convert(sources, "pdf")) {
      const text = textOf(pdf);
      expect(text, path.basename(pdf)).not.toMatch(/###/);
      expect(text, path.basename(pdf)).not.toMatch(/Err:\d|#NAME\?|#VALUE!|#REF!|#N\/A|#DIV\/0!/);
      expect(text, path.basename(pdf)).toMatch(/Page 1 of \d+/);
    }
    // Other programs take their time; how long is not what is tested.
  }, 240_000);

  it.each(["de-DE", "es-ES"])("writes the papers as a person of %s reads them, calculated there", async (region) => {
    const si = built.find(({ file }) => file === "rillwright-si-demo.xlsx");
    if (!si) throw new Error("there is no metric demo");
    const source = path.join(folder, `${region}.xlsx`);
    writeFileSync(source, await writeWorkbook(si.model, { form: "values" }));
    const text = textOf(convert([source], "pdf", profileOf(region))[0] ?? "");
    // Until November 2026 "a stream 03 m long" and "basin 03 by 02 m"; days stay as the cell's format says.
    expect(text).toMatch(/a stream \d+,\d m long that falls \d,\d\d m over/);
    expect(text).toMatch(/A basin under gravel at its foot, \d,\d by \d,\d m, that holds about [\d.]+ litres/);
    expect(text).toMatch(/About \d,\d tonnes of boulders/);
    expect(text).toMatch(/Date +2026-\d\d-\d\d/);
    expect(text).toMatch(/Dig the pit \d,\d\d m below finished grade/);
    // Where a formula of the papers took a number for the wrong pattern, it began with 0 or kept the pattern's letters.
    expect(text).not.toMatch(/(?<![\d.,-])0\d+ (?:m|mm|t|tonnes|liters)\b|yyyy|JJJJ|aaaa/);
  });

  it("shows a copy of values whole, where the workbook itself would show #NAME?", () => {
    const [{ file, bytes } = { file: "", bytes: new Uint8Array() }] = built.slice(1);
    const source = path.join(folder, `copy-${file}`);
    writeFileSync(source, valuesCopy(bytes, { made: new Date(2026, 10, 28, 9, 5) }));
    const text = textOf(convert([source], "pdf")[0] ?? "");
    expect(text).not.toMatch(/Err:\d|#NAME\?|#VALUE!|#REF!|#N\/A/);
    expect(text).toMatch(/Copy of values, 2026-11-28 09:05/);
  });
});
