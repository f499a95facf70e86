import fc from "fast-check";
import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { calculate } from "../../../src/workbook/build";
import { Engine } from "../../../src/workbook/engine/engine";
import { sourceOf } from "../../../src/workbook/engine/source";
import { parseArea } from "../../../src/xlsx/address";
import type { CellModel, WorkbookModel } from "../../../src/workbook/model";
import { sheets } from "../../../src/workbook/sheets";
import { writeWorkbook } from "../../../src/workbook/write";
import { tries } from "../../effort";
import { agree } from "../templates";

interface Input {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly cell: CellModel;
  readonly value: number;
}

/** The numbers that a person may change. */
function inputs(model: WorkbookModel): Input[] {
  return model.sheets.flatMap(({ name, rows }) =>
    [...rows].flatMap(([row, cells]) =>
      [...cells].flatMap(([column, cell]) =>
        cell.style.unlocked && typeof cell.value === "number"
          ? [{ sheet: name, row, column, cell, value: cell.value }]
          : [],
      ),
    ),
  );
}

describe.each(["US", "SI"] as const)("edits of the %s demo", (system) => {
  it("come to what a calculation of everything comes to, here and from the file anew", async () => {
    const model = assemble(sheets, system, "demo");
    await calculate(model);
    const engine = new Engine(sourceOf(await readXlsx(await writeWorkbook(model), { readStyles: true })));
    expect(engine.runAll(), "stored results that differ").toEqual([]);
    const edit = fc.record({
      input: fc.constantFrom(...inputs(model)),
      factor: fc.double({ min: 0.7, max: 1.4, noNaN: true }),
      blank: fc.integer({ min: 0, max: 9 }).map((die) => die === 0),
    });
    for (const [index, { input, factor, blank }] of fc.sample(edit, { numRuns: tries(30, 100), seed: 26 }).entries()) {
      const { sheet, row, column, cell, value } = input;
      const typed = Number.isInteger(value) ? Math.round(value * factor) : Number((value * factor).toPrecision(3));
      if (blank) delete cell.value;
      else cell.value = typed;
      engine.set(sheet, row, column, blank ? undefined : typed);
      engine.run();
      if (index % 10 === 9) expect(engine.runAll(), `after edit ${index + 1}`).toEqual([]);
    }
    const { results } = await calculate(model);
    const different = [...results].flatMap(([key, result]) => {
      const [sheet = "", address = ""] = key.split("!");
      const { top = 0, left = 0 } = parseArea(address, sheet) ?? {};
      const { row, column } = { row: top + 1, column: left + 1 };
      const rows = Array.isArray(result) ? result : [[result]];
      return rows.flatMap((line, down) =>
        line.flatMap((expected, across) => {
          const found = engine.value(sheet, row + down, column + across);
          return agree(expected, found)
            ? []
            : [`${key} +${down},${across}: ${JSON.stringify(expected)} and ${JSON.stringify(found)}`];
        }),
      );
    });
    expect(different).toEqual([]);
  }, 120_000);
});
