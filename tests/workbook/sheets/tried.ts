import { assemble } from "../../../src/workbook/assemble";
import type { SheetDefinition } from "../../../src/workbook/layout";
import {
  cellAt,
  type CellValue,
  type NameModel,
  type SheetModel,
  type WorkbookModel,
} from "../../../src/workbook/model";
import { calculate } from "../calculated";
import { cellToType } from "../typing";

/** What a test types: a value, or rows of values from the first cell of a name on; "" empties a cell, undefined leaves it. */
export type Typed = Readonly<Record<string, CellValue | readonly (readonly (CellValue | undefined)[])[]>>;

/** The verdict of the check on some sheets whose label begins so. */
export function verdictIn(sheets: readonly SheetModel[], label: string): unknown {
  for (const { rows } of sheets) {
    // One formula gives the verdicts of a sheet, from its first check down.
    const [first, found] = [...rows].find(([, cells]) => cells.get(5)?.formula?.includes('"OK"')) ?? [];
    const result = found?.get(5)?.result;
    const verdicts = Array.isArray(result) ? result : [[result]];
    for (const [row, cells] of rows)
      if (first !== undefined && row >= first && row < first + verdicts.length)
        if (String(cells.get(1)?.value).startsWith(label)) return verdicts[row - first]?.[0];
  }
  throw new Error(`${sheets.map(({ name }) => name).join(", ")}: no check "${label}"`);
}

/** What a calculated sheet shows in a cell, by its own formula or by one above or left of it that fills it. */
export function shownIn(sheet: SheetModel, row: number, column: number): CellValue {
  const cell = cellAt(sheet, row, column);
  if (cell?.result !== undefined && !Array.isArray(cell.result)) return cell.result;
  for (const [top, cells] of sheet.rows) {
    for (const [left, { result }] of cells) {
      if (!Array.isArray(result) || row < top || column < left) continue;
      const value = result[row - top]?.[column - left];
      if (value !== undefined) return value;
    }
  }
  return cell?.value ?? "";
}

/** A workbook of some sheets in which a test has typed something, recalculated. */
export class Tried {
  private constructor(private readonly model: WorkbookModel) {}

  static async of(
    sheets: readonly SheetDefinition[],
    system: "US" | "SI",
    filled: "demo" | "blank",
    typed: Typed = {},
  ): Promise<Tried> {
    const tried = new Tried(assemble(sheets, system, filled));
    for (const [name, value] of Object.entries(typed)) tried.type(name, Array.isArray(value) ? value : [[value]]);
    await calculate(tried.model);
    return tried;
  }

  /** What the first cell of a name, or another one of it, holds or shows. */
  value(name: string, row = 1, column = 1): unknown {
    const { sheet, area } = this.named(name);
    return shownIn(this.sheet(sheet), area.top + row - 1, area.left + column - 1);
  }

  number(name: string, row = 1, column = 1): number {
    const value = this.value(name, row, column);
    if (typeof value !== "number") throw new Error(`${name} shows ${JSON.stringify(value)}`);
    return value;
  }

  /** The verdict of the check whose label begins so. */
  verdict(sheetName: string, label: string): unknown {
    return verdictIn([this.sheet(sheetName)], label);
  }

  /** The points of each series of a sheet's only chart, by the series' title. */
  points(sheetName: string): ReadonlyMap<string, readonly (readonly [x: unknown, y: unknown])[]> {
    const [chart] = this.sheet(sheetName).charts;
    if (!chart) throw new Error(`${sheetName} has no chart`);
    const read = (address: string): unknown[] => {
      const [, letters = "", from = "", to = from] = /\$([A-Z]+)\$(\d+)(?::\$[A-Z]+\$(\d+))?$/.exec(address) ?? [];
      const column = letters.charCodeAt(0) - 64;
      const rows = Array.from({ length: Number(to) - Number(from) + 1 }, (_, index) => Number(from) + index);
      return rows.map((row) => shownIn(this.sheet(sheetName), row, column));
    };
    return new Map(
      chart.series.map(({ title, x, y }) => {
        const levels = read(y);
        return [title, read(x).map((distance, index) => [distance, levels[index]] as const)];
      }),
    );
  }

  /** Every number and every text that a sheet shows, from top to bottom. */
  numbers(sheetName: string): number[] {
    return this.shown(sheetName).filter((value) => typeof value === "number");
  }

  texts(sheetName: string): string[] {
    return this.shown(sheetName).filter((value) => typeof value === "string");
  }

  private shown(sheetName: string): CellValue[] {
    const rows = [...this.sheet(sheetName).rows].sort(([a], [b]) => a - b);
    return rows.flatMap(([, cells]) =>
      [...cells.values()].flatMap(({ value, result }) => [result ?? value ?? ""].flat(2)),
    );
  }

  /** Cells of a sheet that show an error. */
  errors(sheetName: string): string[] {
    return [...this.sheet(sheetName).rows].flatMap(([row, cells]) =>
      [...cells].flatMap(([column, { result }]) =>
        [result]
          .flat(2)
          .filter((one) => typeof one === "string" && /^#|^ERROR$|^error$/.test(one))
          .map((one) => `${row},${column}: ${String(one)}`),
      ),
    );
  }

  private type(name: string, rows: readonly (readonly (CellValue | undefined)[])[]): void {
    const { sheet, area } = this.named(name);
    rows.forEach((row, down) =>
      row.forEach((value, across) => {
        if (value === undefined) return;
        const cell = cellToType(this.sheet(sheet), area.top + down, area.left + across);
        if (!cell) throw new Error(`${name} is smaller than that`);
        delete cell.formula;
        if (value === "") delete cell.value;
        else cell.value = value;
      }),
    );
  }

  private named(name: string): NameModel {
    const found = this.model.names.find((one) => one.name === name);
    if (!found) throw new Error(`no name ${name}`);
    return found;
  }

  private sheet(name: string): WorkbookModel["sheets"][number] {
    const found = this.model.sheets.find((one) => one.name === name);
    if (!found) throw new Error(`no sheet ${name}`);
    return found;
  }
}
