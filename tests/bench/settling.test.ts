import { createRequire } from "node:module";
import { expect, it, vi } from "vitest";
import { Calculation } from "../../src/bench/grid/calculation";
import { GridModel, UNIT } from "../../src/bench/grid/model";
import { Reasons } from "../../src/bench/grid/reasons";
import { rillFunctions } from "../../src/bench/grid/rillFunctions";
import { safeSort } from "../../src/bench/grid/safeSort";
import { orderBySpills } from "../../src/bench/grid/spillOrder";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { storedSpills } from "../../src/bench/reading/cellSets";
import { toGrid } from "../../src/bench/reading/toGrid";
import { assemble } from "../../src/workbook/assemble";
import { calculate } from "../../src/workbook/build";
import { cellAt, type NameModel } from "../../src/workbook/model";
import type { Recalculated } from "../../src/workbook/recalculate";
import { sheets } from "../../src/workbook/sheets";
import { writeWorkbook } from "../../src/workbook/write";

// The bench's engine loads in Node as CommonJS only; its functions must extend the classes of that same copy.
const load = createRequire(import.meta.url);
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);

it("follows an edit through spills that keep their size: a thicker sheet of water raises the head", async () => {
  const model = assemble(sheets, "US", "demo");
  const opened = await calculate(model);
  const file = await writeWorkbook(model);
  const placeOf = (name: string): NameModel => {
    const found = model.names.find((one) => one.name === name);
    if (!found) throw new Error(`no name ${name}`);
    return found;
  };

  // What Node gives for the same edit; the lift hangs on the spilled drain-back.
  const { sheet: sheetName, area } = placeOf("SheetWanted");
  const changed = assemble(sheets, "US", "demo");
  const sheet = changed.sheets.find(({ name }) => name === sheetName);
  const typed = sheet && cellAt(sheet, area.top, area.left);
  if (!typed) throw new Error("the wanted sheet has no cell");
  typed.value = 0.8;
  const edited = await calculate(changed);

  const { LocaleType, LogLevel, Univer } = load("@univerjs/core") as typeof import("@univerjs/core");
  const { FUniver } = load("@univerjs/core/facade") as typeof import("@univerjs/core/facade");
  const { UniverSheetsNodeCorePreset } = load(
    "@univerjs/preset-sheets-node-core",
  ) as typeof import("@univerjs/preset-sheets-node-core");
  orderBySpills();
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
  const grid = new GridModel(univer, api);
  const calculation = new Calculation(univer, api, grid, () => undefined);
  const read = await openWorkbook("demo.xlsx", file);
  calculation.begin(storedSpills(read.workbook));
  const workbook = api.createWorkbook({ ...toGrid(read), id: UNIT });
  calculation.listen();
  const NAMES = ["DrainBack", "StaticLift", "DesignHead", "DeliveredFlow"];
  const agrees = (expected: Recalculated): void => {
    for (const name of NAMES) {
      const { sheet: on, area: at } = placeOf(name);
      const shown = workbook
        .getSheetByName(on)
        ?.getRange(at.top - 1, at.left - 1, 1, 1)
        .getValue();
      expect(shown, name).toBeCloseTo(expected.named(name)?.[0]?.[0] as number, 6);
    }
  };
  await calculation.opened();
  agrees(opened);
  workbook
    .getSheetByName(sheetName)
    ?.getRange(area.top - 1, area.left - 1, 1, 1)
    .setValue(0.8);
  await calculation.settled();
  agrees(edited);
  univer.dispose();
}, 120_000);
