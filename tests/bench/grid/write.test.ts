import { createRequire } from "node:module";
import { IUniverInstanceService, IUndoRedoService, type Univer } from "@univerjs/core";
import { writeXlsx } from "hucre/xlsx";
import { expect, it, vi } from "vitest";
import { writeCells } from "../../../src/bench/grid/write";
import type { Grid } from "../../../src/host/port";
import { openInNode } from "../nodeBench";

vi.mock("@univerjs/core", () => createRequire(import.meta.url)("@univerjs/core") as object);
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);
vi.mock("@univerjs/preset-sheets-core", () => createRequire(import.meta.url)("@univerjs/sheets") as object);

it("writes values, formulas and blanks on several sheets as one step that can be taken back", async () => {
  const cells = new Map([
    ["0,0", { value: 2 }],
    ["0,1", { value: 20, formula: "A1*10" }],
    ["0,2", { value: "kept" }],
  ]);
  const bench = await openInNode(await writeXlsx({ sheets: ["One", "Two"].map((name) => ({ name, cells })) }));
  const { injector, grid, calculation } = bench;
  const area = (sheet: string, left: number, right: number) => ({ sheet, top: 0, left, bottom: 0, right });
  const row = (sheet: string): Grid => grid.values(area(sheet, 0, 3));
  const before = [[2, 20, "kept", ""]];
  expect([row("One"), row("Two")]).toEqual([before, before]);

  const univer = { __getInjector: () => injector } as unknown as Univer;
  const undo = injector.get(IUndoRedoService);
  const changes = [
    { area: area("One", 0, 0), values: [[3]] },
    { area: area("Two", 2, 3), values: [["", "=A1+1"]] },
    { area: area("One", 2, 3), values: [[true, "text"]] },
  ];
  writeCells(univer, grid, changes);
  await calculation.settled();
  const after = [[[3, 30, true, "text"]], [[2, 20, "", 3]]];
  expect([row("One"), row("Two")]).toEqual(after);

  // The stack is asked for that of the workbook in hand.
  injector.get(IUniverInstanceService).focusUnit("bench");
  expect(undo.pitchTopUndoElement()?.undoMutations).toHaveLength(2);
  bench.workbook.undo();
  await calculation.settled();
  expect([row("One"), row("Two")]).toEqual([before, before]);
  expect(undo.pitchTopUndoElement()).toBeNull();
  bench.workbook.redo();
  await calculation.settled();
  expect([row("One"), row("Two")]).toEqual(after);
  bench.close();
});
