import { readXlsx } from "hucre/xlsx";
import { loadLater } from "../functions/catalogue";
import { parseArea, type Area } from "../xlsx/address";
import { Engine, type Put } from "./engine/engine";
import { nameOf } from "./engine/formula";
import { sourceOf } from "./engine/source";
import type { CellValue } from "./model";

/** What a formula gives: one value, or rows of them where it spills. */
export type Calculated = CellValue | CellValue[][];

/** The outcome of a recalculation. */
export interface Recalculated {
  readonly sheets: readonly string[];
  /** Results of formula cells by "Sheet!B7"; rows of values where the formula spills. */
  readonly results: ReadonlyMap<string, Calculated>;
  /** What each formula cell says, as a person types it without "=", by "Sheet!B7". */
  readonly formulas: ReadonlyMap<string, string>;
  /** Why a cell is in error, in a sentence, by "Sheet!B7". */
  readonly reasons: ReadonlyMap<string, string>;
  /** Defined names and their areas: "Site!$B$5". */
  readonly names: ReadonlyMap<string, string>;
  /** What the cells of a defined name hold or show; undefined where there is no such name. */
  named(name: string): CellValue[][] | undefined;
  /** What the cells of "Quote!A1:F60" hold or show, down to the sheet's last row; undefined where there is no such sheet. */
  cells(address: string): CellValue[][] | undefined;
  /** The last row of a sheet that holds anything, from 1. */
  lastRow(sheet: string): number;
}

/** Opens an .xlsx and calculates every formula afresh, by the engine that the bench runs too. */
export async function recalculate(bytes: Uint8Array): Promise<Recalculated> {
  return (await openWorkbook(bytes)).recalculate();
}

/** What is typed into cells, by "Sheet!B7"; "" empties a cell. */
export type TypedCells = ReadonlyMap<string, CellValue>;

/** A workbook that is opened once and calculated with one set of inputs after the other. */
export interface OpenedWorkbook {
  /** Defined names and their areas: "Site!$B$5". */
  readonly names: ReadonlyMap<string, string>;
  /** Calculates the file as it was opened, with these cells typed over; the outcome holds until the next calculation. */
  recalculate(typed?: TypedCells): Recalculated;
}

/** The file is damaged, or no workbook at all. */
export class UnreadableWorkbook extends Error {}

export async function openWorkbook(bytes: Uint8Array): Promise<OpenedWorkbook> {
  const workbook = await readXlsx(bytes, { readStyles: true }).catch((error: unknown) => {
    throw new UnreadableWorkbook(error instanceof Error ? error.message : String(error));
  });
  // Functions answer at once here; their code cannot come when a cell asks for it.
  await loadLater();
  const engine = new Engine(sourceOf(workbook));
  engine.runAll();
  const sheets = workbook.sheets.map(({ name }) => name);
  const names = new Map((workbook.namedRanges ?? []).map(({ name, range }) => [name, range]));
  let before = new Map<string, Put>();

  const cells = (address: string): CellValue[][] | undefined => {
    const area = parseArea(address);
    if (!area || !sheets.includes(area.sheet)) return undefined;
    // Of tables that grow, no more than the sheet holds.
    return rowsIn(engine, { ...area, bottom: Math.min(area.bottom, engine.lastRow(area.sheet) - 1) });
  };

  /** Takes back what was typed the last time, and types what is to be typed now. */
  const type = (typed: TypedCells): void => {
    for (const [key, content] of before) engine.set(...placeOf(key), content);
    before = new Map([...typed].map(([key]) => [key, engine.content(...placeOf(key))]));
    for (const [key, value] of typed) engine.set(...placeOf(key), value === "" ? undefined : value);
    engine.run();
  };

  return {
    names,
    recalculate(typed = new Map()) {
      type(typed);
      const results = new Map<string, Calculated>();
      const formulas = new Map<string, string>();
      for (const formula of engine.formulas()) {
        const { sheet, row, column, filled, text } = formula;
        const key = nameOf(formula);
        formulas.set(key, text);
        results.set(key, filled ? rowsIn(engine, areaOf(sheet, filled)) : engine.value(sheet, row, column));
      }
      return {
        sheets,
        results,
        formulas,
        reasons: engine.reasons,
        names,
        lastRow: (sheet) => engine.lastRow(sheet),
        named: (name) => cells(names.get(name) ?? ""),
        cells,
      };
    },
  };
}

function placeOf(key: string): [sheet: string, row: number, column: number] {
  const end = key.lastIndexOf("!");
  const area = parseArea(key.slice(end + 1), key.slice(0, end));
  if (!area) throw new Error(`the workbook has no cell ${key}`);
  return [area.sheet, area.top + 1, area.left + 1];
}

function areaOf(sheet: string, { top, left, bottom, right }: Omit<Area, "sheet">): Area {
  return { sheet, top: top - 1, left: left - 1, bottom: bottom - 1, right: right - 1 };
}

/** The first row always. */
function rowsIn(engine: Engine, { sheet, top, left, bottom, right }: Area): CellValue[][] {
  return Array.from({ length: Math.max(1, bottom - top + 1) }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across) => engine.value(sheet, top + down + 1, left + across + 1)),
  );
}
