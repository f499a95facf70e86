import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isDynamic } from "../../src/workbook/formulaText";
import { cellAddress } from "../../src/workbook/layout/address";
import { writeWorkbook } from "../../src/workbook/write";
import { agree, builtTemplates, changeSheets, type BuiltTemplate } from "./templates";
import { hasLibreOffice, SOFFICE } from "./tools";

const folder = mkdtempSync(path.join(tmpdir(), "rillwright-office-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function convert(file: string, to: string): string {
  const out = path.join(folder, to);
  mkdirSync(out, { recursive: true });
  execFileSync(
    SOFFICE,
    [
      "--headless",
      `-env:UserInstallation=file://${path.join(folder, "profile")}`,
      "--convert-to",
      to,
      "--outdir",
      out,
      file,
    ],
    { stdio: "ignore" },
  );
  return path.join(out, path.basename(file).replace(/\.xlsx$/, `.${to}`));
}

describe.skipIf(!hasLibreOffice())("LibreOffice", () => {
  let built: BuiltTemplate[];
  beforeAll(async () => {
    built = await builtTemplates();
  });

  it("calculates the native formulas it knows to the same values", async () => {
    for (const { file, model } of built) {
      // Our functions as values; no native formula keeps its stored result.
      const bytes = changeSheets(await writeWorkbook(model, { form: "values" }), (xml) =>
        xml.replace(/(<\/f>)<v>[^<]*<\/v>/g, "$1"),
      );
      const source = path.join(folder, file);
      writeFileSync(source, bytes);
      const { sheets } = await readXlsx(readFileSync(convert(source, "xlsx")));
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

  it("prints every sheet on Letter and A4 with nothing cut off by narrow columns", async () => {
    for (const { file, model } of built) {
      for (const paper of ["letter", "a4"] as const) {
        const source = path.join(folder, `${paper}-${file}`);
        writeFileSync(source, await writeWorkbook(model, { form: "values", paper }));
        const pdf = convert(source, "pdf");
        const text = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8", maxBuffer: 1e8 });
        expect(text, `${file} ${paper}`).not.toMatch(/###/);
        expect(text).not.toMatch(/Err:\d|#NAME\?|#VALUE!|#REF!|#N\/A|#DIV\/0!/);
        expect(text).toMatch(/Page 1 of \d+/);
      }
    }
    // Eight books through another program; how long that takes is not what is tested.
  }, 240_000);
});
