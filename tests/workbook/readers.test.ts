import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { recalculate } from "../../src/workbook/recalculate";
import { cellAddress } from "../../src/workbook/layout/address";
import { agree, builtTemplates, type BuiltTemplate } from "./templates";
import { hasOpenpyxl, PYTHON } from "./tools";

let built: readonly BuiltTemplate[];
beforeAll(async () => {
  built = await builtTemplates();
});

/** What the model says each cell shows: spilled values lie in the cells they spill to. */
function shownByModel({ model }: BuiltTemplate): Map<string, unknown> {
  const shown = new Map<string, unknown>();
  for (const { name, rows } of model.sheets) {
    for (const [row, cells] of rows) {
      for (const [column, { value, formula, result }] of cells) {
        if (formula === undefined) {
          if (value !== undefined) shown.set(`${name}!${cellAddress(row, column)}`, value);
          continue;
        }
        const table = Array.isArray(result) ? result : [[result ?? ""]];
        table.forEach((line, down) =>
          line.forEach((one, across) => shown.set(`${name}!${cellAddress(row + down, column + across)}`, one)),
        );
      }
    }
  }
  return shown;
}

describe("stored values", () => {
  it("equal a fresh recalculation of the finished file", async () => {
    for (const { file, bytes, calculated } of built) {
      const again = await recalculate(bytes);
      expect([...again.results.keys()], file).toEqual([...calculated.results.keys()]);
      for (const [cell, result] of again.results)
        expect(result, `${file} ${cell}`).toEqual(calculated.results.get(cell));
    }
  });

  it.skipIf(!hasOpenpyxl())(
    "are read by openpyxl as the model has them, with names, validations and protection",
    () => {
      const script = `
import datetime, json, sys, openpyxl
from openpyxl.utils.datetime import to_excel
book = openpyxl.load_workbook(sys.argv[1], data_only=True)
cells = {}
for sheet in book.worksheets:
    for row in sheet.iter_rows():
        for cell in row:
            if cell.value is not None:
                value = cell.value
                cells[sheet.title + "!" + cell.coordinate] = to_excel(value) if isinstance(value, datetime.datetime) else value
names = book.defined_names
names = [n.name for n in names.definedName] if hasattr(names, "definedName") else list(names)
print(json.dumps({
    "cells": cells,
    "names": [n for n in names if not n.startswith("_xlnm")],
    "protected": [s.protection.sheet for s in book.worksheets],
    "validated": sum(len(s.data_validations.dataValidation) for s in book.worksheets),
    "unlocked": {s.title: sum(1 for r in s.iter_rows() for c in r if not c.protection.locked) for s in book.worksheets},
}))`;
      const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
      try {
        for (const one of built) {
          const file = path.join(folder, one.file);
          writeFileSync(file, one.bytes);
          const read = JSON.parse(execFileSync(PYTHON, ["-c", script, file], { encoding: "utf8", maxBuffer: 1e9 })) as {
            cells: Record<string, unknown>;
            names: string[];
            protected: boolean[];
            validated: number;
            unlocked: Record<string, number>;
          };
          for (const [cell, value] of shownByModel(one)) {
            const found = read.cells[cell] ?? "";
            expect(agree(value, found), `${one.file} ${cell}: ${String(value)} and ${String(found)}`).toBe(true);
          }
          expect([...read.names].sort()).toEqual(one.model.names.map(({ name }) => name).sort());
          expect(read.protected.every(Boolean)).toBe(true);
          expect(read.validated).toBeGreaterThan(20);
          // A table that may grow has no cells in the file for rows that hold nothing.
          for (const { name, rows, openFrom } of one.model.sheets) {
            if (openFrom !== undefined) continue;
            const cells = [...rows.values()].flatMap((row) => [...row.values()]);
            expect(read.unlocked[name], name).toBe(cells.filter(({ style }) => style.unlocked).length);
          }
        }
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
  );
});
