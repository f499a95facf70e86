import { createRequire } from "node:module";
import type { FUniver } from "@univerjs/core/facade";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { columnLetters } from "../../src/workbook/layout/address";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { toGrid } from "../../src/bench/reading/toGrid";
import { rillFunctions } from "../../src/bench/grid/rillFunctions";
import { safeSort } from "../../src/bench/grid/safeSort";
import { Reasons } from "../../src/bench/grid/reasons";
import { agree, builtTemplates, changeSheets, type BuiltTemplate } from "./templates";

// The bench's engine loads in Node as CommonJS only; its functions must extend the classes of that same copy.
const load = createRequire(import.meta.url);
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);

type FWorkbook = ReturnType<FUniver["createWorkbook"]>;

/** What every cell shows after the bench's engine has opened and calculated a file, by "Sheet!B7". */
async function calculatedByTheBench(file: string, bytes: Uint8Array): Promise<Map<string, unknown>> {
  const { LocaleType, LogLevel, Univer } = load("@univerjs/core") as typeof import("@univerjs/core");
  const { FUniver } = load("@univerjs/core/facade") as typeof import("@univerjs/core/facade");
  const { UniverSheetsNodeCorePreset } = load(
    "@univerjs/preset-sheets-node-core",
  ) as typeof import("@univerjs/preset-sheets-node-core");
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.ERROR,
  });
  for (const plugin of UniverSheetsNodeCorePreset().plugins) {
    const [Plugin, config] = (Array.isArray(plugin) ? plugin : [plugin, {}]) as [{ pluginName: string }, object];
    const extra =
      Plugin.pluginName === "UNIVER_ENGINE_FORMULA_PLUGIN"
        ? { function: [...rillFunctions(new Reasons()), ...safeSort()] }
        : Plugin.pluginName === "SHEETS_FORMULA_PLUGIN"
          ? { initialFormulaComputing: 0 }
          : {};
    univer.registerPlugin(Plugin as never, { ...config, ...extra } as never);
  }
  const api = FUniver.newAPI(univer);
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

describe("both engines", () => {
  let built: BuiltTemplate[];
  beforeAll(async () => {
    built = await builtTemplates();
  });

  it("agree on every cell of every template", async () => {
    for (const { file, bytes, calculated } of built) {
      const bench = await calculatedByTheBench(file, withoutResults(bytes));
      const differences: string[] = [];
      let compared = 0;
      const compare = (key: string, ours: unknown): void => {
        compared++;
        const theirs = bench.get(key) ?? "";
        // The bench keeps TRUE and FALSE as 1 and 0.
        if (!agree(typeof ours === "boolean" ? Number(ours) : ours, theirs)) {
          differences.push(`${key}: ${JSON.stringify(ours)} and ${JSON.stringify(theirs)}`);
        }
      };
      for (const [key, result] of calculated.results) {
        const [sheet = "", address = ""] = key.split("!");
        const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
        const left = [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0);
        const rows = Array.isArray(result) ? result : [[result]];
        rows.forEach((row, down) =>
          row.forEach((value, across) =>
            compare(`${sheet}!${columnLetters(left + across)}${Number(digits) + down}`, value),
          ),
        );
      }
      expect(compared).toBe(
        [...calculated.results.values()].reduce<number>(
          (sum, one) => sum + (Array.isArray(one) ? one.flat().length : 1),
          0,
        ),
      );
      expect(differences, `${file}: ${differences.length} of ${compared} cells`).toEqual([]);
      console.log(`${file}: ${compared} calculated cells agree`);
    }
  });
});
