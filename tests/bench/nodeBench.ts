import { createRequire } from "node:module";
import type { FWorkbook } from "@univerjs/sheets/facade";
import type { Injector, Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { answers } from "../../src/bench/calculation/answers";
import { Calculation } from "../../src/bench/grid/calculation";
import { GridModel, UNIT } from "../../src/bench/grid/model";
import { Reasons } from "../../src/bench/grid/reasons";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { toGrid } from "../../src/bench/reading/toGrid";
import type { Content } from "../../src/bench/work/content";
import type { Area } from "../../src/xlsx/address";

/** The bench's grid and calculation without its page. */
export interface NodeBench {
  readonly grid: GridModel;
  readonly calculation: Calculation;
  readonly workbook: FWorkbook;
  readonly injector: Injector;
  /** Writes the first cell of an area, as typing does, and waits for what follows from it. */
  type(area: Area, content: Content): Promise<void>;
  close(): void;
}

function startInNode(): { univer: Univer; api: FUniver } {
  const load = createRequire(import.meta.url);
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
        ? { notExecuteFormula: true }
        : Plugin.pluginName === "SHEETS_FORMULA_PLUGIN"
          ? { initialFormulaComputing: 2 }
          : {};
    univer.registerPlugin(Plugin as never, { ...config, ...extra } as never);
  }
  return { univer, api: FUniver.newAPI(univer) };
}

/**
 * Opens a workbook in the bench's grid. It loads in Node as CommonJS only, so a test that uses this puts that copy in place
 * of the other with `vi.mock`, as `write.test.ts` does.
 */
export async function openInNode(file: Uint8Array): Promise<NodeBench> {
  const { univer, api } = startInNode();
  const grid = new GridModel(univer, api);
  const heard = { finished: () => undefined, circles: () => undefined, failed: (problem: string) => fail(problem) };
  const calculation = new Calculation(univer, api, grid, new Reasons(), heard, answers);
  const read = await openWorkbook("try.xlsx", file);
  calculation.open(file, []);
  const workbook = api.createWorkbook({ ...toGrid(read), id: UNIT });
  calculation.showStored(read.workbook);
  calculation.listen();
  await calculation.settled();
  return {
    grid,
    calculation,
    workbook,
    injector: univer.__getInjector(),
    async type({ sheet, top, left }, content) {
      workbook.getSheetByName(sheet)?.getRange(top, left, 1, 1).setValue(content);
      await calculation.settled();
    },
    close: () => univer.dispose(),
  };
}

function fail(problem: string): never {
  throw new Error(problem);
}
