import type { Block } from "./block";
import type { Formula, Spilling } from "./formula";
import { scopedNameKey, type DefinedNameSnapshot, type WorkbookSnapshot } from "./library";
import { SheetCells } from "./sheetCells";
import type { Held } from "./values";

/** A cell of a file; rows and columns counted from 1. */
export interface SourceCell {
  readonly row: number;
  readonly column: number;
  /** What it holds, or what its formula came to. */
  readonly value: Held | undefined;
  /** As a person types it, without "=". */
  readonly formula?: string;
  /** How far the formula was copied from where it is written: rows down and columns across. */
  readonly by?: readonly [down: number, across: number];
  readonly spilling?: Spilling;
}

/** What the engine needs of a workbook. */
export interface Source {
  readonly sheets: readonly {
    readonly name: string;
    readonly cells: readonly SourceCell[];
    /** What formulas filled when the file was saved; each begins with the formula's cell. */
    readonly filled: readonly Block[];
    readonly merged: readonly Block[];
    readonly hiddenRows: readonly number[];
  }[];
  readonly names: readonly { readonly name: string; readonly formula: string; readonly scope?: string }[];
  readonly date1904: boolean;
}

/** The sheets of a workbook with their cells, and its names, as the calculating library reads them. */
export class Book {
  readonly sheets: readonly SheetCells[];
  readonly snapshot: WorkbookSnapshot;
  private readonly byName: ReadonlyMap<string, SheetCells>;
  /** Whether a sheet holds cells below those that long areas are read to. */
  private grown = true;

  constructor({ sheets, names, date1904 }: Source) {
    this.sheets = sheets.map(
      ({ name, hiddenRows, merged }, index) =>
        new SheetCells(name, index, { hiddenRows: new Set(hiddenRows), merged, grew: () => (this.grown = true) }),
    );
    this.byName = new Map(this.sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
    const definedNames = new Map<string, DefinedNameSnapshot>();
    for (const { name, formula, scope } of names) {
      const key = scope === undefined ? name.toUpperCase() : scopedNameKey(scope, name);
      definedNames.set(key, { name, ranges: [formula], ...(scope === undefined ? {} : { scope }) });
    }
    const worksheets = this.sheets.map(({ snapshot }) => snapshot);
    this.snapshot = {
      worksheets,
      worksheetsByName: new Map(worksheets.map((one) => [one.name.toLowerCase(), one])),
      worksheetsById: new Map(worksheets.map((one) => [one.id, one])),
      definedNames,
      tablesByName: new Map(),
      calcProperties: {},
      properties: { date1904 },
    };
  }

  sheet(name: string): SheetCells {
    const sheet = this.find(name);
    if (!sheet) throw new Error(`no sheet ${name}`);
    return sheet;
  }

  find(name: string): SheetCells | undefined {
    return this.byName.get(name.toLowerCase());
  }

  /** Every formula that stands in a cell, sheet by sheet and row by row. */
  formulas(): Formula[] {
    return this.sheets.flatMap(({ formulas }) =>
      [...formulas.values()].sort((a, b) => a.row - b.row || a.column - b.column),
    );
  }

  /**
   * Below the last cell of its sheet an area is blank, and the library takes its time over every blank cell. Areas of one formula
   * keep as many rows as each other, so that lists of equal length stay so.
   */
  shortenAreas(formulas: readonly Formula[]): void {
    if (!this.grown) return;
    this.grown = false;
    for (const { long } of formulas) {
      const below = long.map(({ area, end }) => (this.find(area.sheet)?.lastRow ?? end) - area.top);
      const rows = Math.max(0, ...below);
      for (const { area, end } of long) area.bottom = Math.min(end, area.top + rows);
    }
  }

  /** New formulas may read long areas. */
  formulasChanged(): void {
    this.grown = true;
  }
}
