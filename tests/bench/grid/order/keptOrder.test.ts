import { createRequire } from "node:module";
import { Workbook } from "@cj-tech-master/excelts";
import fc from "fast-check";
import { FormulaRuntimeService, IDependencyManagerService } from "@univerjs/engine-formula";
import { afterEach, describe, expect, it, vi } from "vitest";
import { columnLetters, type Area } from "../../../../src/xlsx/address";
import { assemble } from "../../../../src/workbook/assemble";
import { calculate } from "../../../../src/workbook/build";
import { cellAt, type CellModel, type CellValue, type WorkbookModel } from "../../../../src/workbook/model";
import { sheets } from "../../../../src/workbook/sheets";
import { writeWorkbook } from "../../../../src/workbook/write";
import { agree } from "../../../workbook/templates";
import { openInNode, type NodeBench } from "../../nodeBench";

vi.mock("@univerjs/core", () => createRequire(import.meta.url)("@univerjs/core") as object);
vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);

let bench: NodeBench | undefined;
afterEach(() => {
  bench?.close();
  bench = undefined;
});

async function openDemo(system: "US" | "SI"): Promise<{ bench: NodeBench; model: WorkbookModel }> {
  const model = assemble(sheets, system, "demo");
  await calculate(model);
  bench = await openInNode(await writeWorkbook(model));
  return { bench, model };
}

/** A cell's place, with rows and columns counted from 0. */
function place(sheet: string, row: number, column: number): Area {
  return { sheet, top: row - 1, left: column - 1, bottom: row - 1, right: column - 1 };
}

function named(model: WorkbookModel, name: string): Area {
  const found = model.names.find((one) => one.name === name);
  if (!found) throw new Error(`no name ${name}`);
  return place(found.sheet, found.area.top, found.area.left);
}

interface Input {
  readonly at: Area;
  readonly cell: CellModel;
  readonly value: number;
}

/** The numbers that a person may change. */
function inputs(model: WorkbookModel): Input[] {
  return model.sheets.flatMap(({ name, rows }) =>
    [...rows].flatMap(([row, cells]) =>
      [...cells].flatMap(([column, cell]) =>
        cell.style.unlocked && typeof cell.value === "number"
          ? [{ at: place(name, row, column), cell, value: cell.value }]
          : [],
      ),
    ),
  );
}

/** All that formulas come to, by "Sheet!B7". */
function shown({ grid }: NodeBench): Map<string, CellValue> {
  const cells = new Map<string, CellValue>();
  for (const { sheet, row, column, values } of grid.results()) {
    values.forEach((line, down) =>
      line.forEach((value, across) => cells.set(`${sheet}!${columnLetters(column + across)}${row + down + 1}`, value)),
    );
  }
  return cells;
}

/** How many formulas run meanwhile. */
async function runs(what: () => Promise<void>): Promise<number> {
  const run = vi.spyOn(FormulaRuntimeService.prototype, "setRuntimeData");
  await what();
  const count = run.mock.calls.length;
  run.mockRestore();
  return count;
}

describe.each(["US", "SI"] as const)("edits of the %s demo", (system) => {
  it("come to what a calculation of everything comes to, in either engine", async () => {
    const { bench, model } = await openDemo(system);
    const edit = fc.record({
      input: fc.constantFrom(...inputs(model)),
      factor: fc.double({ min: 0.7, max: 1.4, noNaN: true }),
      blank: fc.integer({ min: 0, max: 9 }).map((die) => die === 0),
    });
    for (const [index, { input, factor, blank }] of fc.sample(edit, { numRuns: 40, seed: 26 }).entries()) {
      const { at, cell, value } = input;
      const typed = Number.isInteger(value) ? Math.round(value * factor) : Number((value * factor).toPrecision(3));
      if (blank) delete cell.value;
      else cell.value = typed;
      await bench.type(at, blank ? "" : typed);
      if (index % 20 !== 19) continue;
      const kept = shown(bench);
      await bench.calculation.again();
      expect([...shown(bench)].filter(([key, value]) => kept.get(key) !== value)).toEqual([]);
    }
    const { results } = await calculate(model);
    const found = shown(bench);
    const different = [...results].flatMap(([key, result]) => {
      const first = Array.isArray(result) ? (result[0]?.[0] ?? "") : result;
      return agree(typeof first === "boolean" ? Number(first) : first, found.get(key) ?? "")
        ? []
        : [`${key}: ${JSON.stringify(first)} and ${JSON.stringify(found.get(key))}`];
    });
    expect(different).toEqual([]);
  }, 300_000);

  it("run a fraction of the formulas, also when the fall moves", async () => {
    const { bench, model } = await openDemo(system);
    const all = await runs(() => bench.calculation.again());
    const fall = named(model, "Fall");
    const before = cellAt(
      model.sheets.find(({ name }) => name === fall.sheet)!,
      fall.top + 1,
      fall.left + 1,
    )?.value;
    await bench.type(fall, Number(before) * 1.05);
    const head = bench.grid.values(named(model, "DesignHead"))[0]?.[0];
    expect(await runs(() => bench.type(fall, Number(before)))).toBeLessThan(all / 3);
    expect(bench.grid.values(named(model, "DesignHead"))[0]?.[0]).toBeLessThan(head as number);
    // Typing the same again changes nothing, so only its own readers run.
    expect(await runs(() => bench.type(fall, Number(before)))).toBeLessThan(all / 50);
  }, 120_000);
});

describe("formulas that a person types", () => {
  /** A sheet of the user's own, with its cells in column A. */
  async function own(...column: readonly (number | string)[]): Promise<(row: number) => CellValue | undefined> {
    const workbook = new Workbook();
    const sheet = workbook.addWorksheet("Mine");
    for (let row = 1; row <= 20; row++) sheet.getCell(row, 1).value = column[row - 1] ?? 0;
    bench = await openInNode(new Uint8Array(await workbook.xlsx.writeBuffer()));
    return (row) => bench?.grid.values(place("Mine", row, 1))[0]?.[0];
  }
  const type = (row: number, content: CellValue): Promise<void> | undefined =>
    bench?.type(place("Mine", row, 1), content);

  it("are calculated, follow edits, and are forgotten when they are typed over", async () => {
    const value = await own(2);
    await type(2, "=A1*10");
    await type(3, "=A2+1");
    expect([value(2), value(3)]).toEqual([20, 21]);
    await type(1, 3);
    expect([value(2), value(3)]).toEqual([30, 31]);
    await type(2, "=A1*100");
    expect([value(2), value(3)]).toEqual([300, 301]);
    await type(1, 2);
    expect([value(2), value(3)]).toEqual([200, 201]);
    await type(2, 7);
    expect([value(2), value(3)]).toEqual([7, 8]);
    await type(1, 3);
    expect([value(2), value(3)]).toEqual([7, 8]);
  });

  it("follow a value that changes its kind, and come back", async () => {
    const value = await own(1);
    await type(2, "=A1>0");
    await type(3, '=IF(A2,"yes","no")');
    await type(4, "=IFERROR(1/A1,0)");
    await type(5, '=IF(ISNUMBER(A1),"number","text")');
    for (const [typed, expected] of [
      [-1, ["no", -1, "number"]],
      [0, ["no", 0, "number"]],
      ["one", ["yes", 0, "text"]],
      [1, ["yes", 1, "number"]],
    ] as const) {
      await type(1, typed);
      expect([value(3), value(4), value(5)], String(typed)).toEqual(expected);
    }
  });

  it("may point at cells that are known only when they run", async () => {
    const value = await own(5, 6, 7, 8, 1);
    await type(11, "=SUM(OFFSET(A1,0,0,A5,1))");
    await type(12, "=A11*2");
    expect([value(11), value(12)]).toEqual([5, 10]);
    await type(5, 3);
    expect([value(11), value(12)]).toEqual([18, 36]);
    await type(3, 70);
    expect([value(11), value(12)]).toEqual([81, 162]);
  });

  it("may read each other in a circle without an end to the others", async () => {
    const value = await own(1);
    await type(2, "=A3+1");
    await type(3, "=A2+1");
    await type(4, "=A1*2");
    await type(1, 4);
    expect(value(4)).toBe(8);
  });
});

it("leaves nothing behind in the engine's index, however often a cell is edited", async () => {
  const { bench, model } = await openDemo("US");
  const index = bench.injector.get(IDependencyManagerService) as unknown as {
    _dependencyRTreeCache: { toJSON(): object };
  };
  const size = (): number => JSON.stringify(index._dependencyRTreeCache.toJSON()).length;
  const fall = named(model, "Fall");
  await bench.type(fall, 2.5);
  const once = size();
  expect(once).toBeGreaterThan(1000);
  for (const value of [2.6, 2.7, 2.8, 2.9, 3]) await bench.type(fall, value);
  await bench.calculation.again();
  await bench.type(fall, 2.5);
  expect(size()).toBe(once);
}, 120_000);
