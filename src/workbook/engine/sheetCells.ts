import { isIn, isOneCell, LAST_COLUMN, type Block } from "./block";
import type { CellSnapshot, WorksheetSnapshot } from "./library";
import type { Formula } from "./formula";
import type { Held } from "./values";

/** A cell as the calculating library reads it, and what put its value there: a formula, or nobody but a person. */
export interface HeldCell {
  readonly row: number;
  readonly col: number;
  readonly formulaKind: CellSnapshot["formulaKind"];
  readonly formula?: string;
  value: Held;
  readonly from: Formula | undefined;
}

/** One number for a place on a sheet. */
export function placeKey(row: number, column: number): number {
  return row * LAST_COLUMN + column;
}

/** What is known of a sheet beside its cells. */
export interface SheetFacts {
  readonly hiddenRows: ReadonlySet<number>;
  readonly merged: readonly Block[];
  /** Told when a cell stands below all others. */
  readonly grew: () => void;
}

/** The cells of one sheet: what they hold, which formulas stand in them, and who reads them. */
export class SheetCells {
  readonly cells = new Map<string, HeldCell>();
  readonly formulas = new Map<number, Formula>();
  readonly merged: readonly Block[];
  /** Formulas that read one cell. */
  private readonly cellReaders = new Map<number, Set<Formula>>();
  /** Formulas that read an area, each area once. */
  private readonly areaReaders = new Map<string, { readonly block: Block; readonly readers: Set<Formula> }>();
  /** Rows of each column whose cells a formula fills, by its own result or by spilling; sorted when asked for. */
  private filledRows: Map<number, number[]> | undefined;
  readonly snapshot: WorksheetSnapshot;
  private readonly grew: () => void;
  private readonly size = { top: 1, left: 1, bottom: 1, right: 1 };

  constructor(
    readonly name: string,
    index: number,
    { hiddenRows, merged, grew }: SheetFacts,
  ) {
    this.merged = merged;
    this.grew = grew;
    this.snapshot = {
      id: index + 1,
      name,
      dimensions: this.size,
      cells: this.cells as unknown as WorksheetSnapshot["cells"],
      hiddenRows,
      tables: [],
      mergedRegions: [],
    };
  }

  get lastRow(): number {
    return this.size.bottom;
  }

  at(row: number, column: number): HeldCell | undefined {
    return this.cells.get(`${row}:${column}`);
  }

  /** Puts a value into a cell, or takes it out. */
  put(row: number, column: number, value: Held | undefined, from?: Formula): void {
    const key = `${row}:${column}`;
    const before = this.cells.get(key);
    if (before?.from !== from || (value === undefined) !== (before === undefined)) this.filledRows = undefined;
    if (value === undefined) {
      this.cells.delete(key);
      return;
    }
    if (before && before.from === from) before.value = value;
    else {
      const own = from?.row === row && from.column === column;
      this.cells.set(key, {
        row,
        col: column,
        value,
        from,
        ...(own ? { formulaKind: "normal", formula: from.text } : { formulaKind: "none" }),
      });
    }
    if (row > this.size.bottom) {
      this.size.bottom = row;
      this.grew();
    }
    this.size.right = Math.max(this.size.right, column);
  }

  read(by: Formula, block: Block): void {
    if (isOneCell(block)) {
      addTo(this.cellReaders, placeKey(block.top, block.left), by);
      return;
    }
    const key = `${block.top},${block.left},${block.bottom},${block.right}`;
    const known = this.areaReaders.get(key);
    if (known) known.readers.add(by);
    else this.areaReaders.set(key, { block, readers: new Set([by]) });
  }

  forget(by: Formula, block: Block): void {
    if (isOneCell(block)) {
      this.cellReaders.get(placeKey(block.top, block.left))?.delete(by);
      return;
    }
    const key = `${block.top},${block.left},${block.bottom},${block.right}`;
    const known = this.areaReaders.get(key);
    known?.readers.delete(by);
    if (known?.readers.size === 0) this.areaReaders.delete(key);
  }

  /** Calls with every formula that reads a cell. */
  readersOf(row: number, column: number, call: (reader: Formula) => void): void {
    this.cellReaders.get(placeKey(row, column))?.forEach(call);
    for (const { block, readers } of this.areaReaders.values()) {
      if (isIn(block, row, column)) readers.forEach(call);
    }
  }

  /** Calls with every formula that fills a cell of a block. */
  formulasIn(block: Block, call: (formula: Formula) => void): void {
    const { top, left, bottom, right } = block;
    if (isOneCell(block)) {
      const from = this.formulas.get(placeKey(top, left)) ?? this.at(top, left)?.from;
      if (from) call(from);
      return;
    }
    const columns = (this.filledRows ??= this.findFilled());
    for (const [column, rows] of columns) {
      if (column < left || column > right) continue;
      for (let index = firstFrom(rows, top); index < rows.length && (rows[index] ?? Infinity) <= bottom; index++) {
        const row = rows[index] ?? 0;
        const from = this.formulas.get(placeKey(row, column)) ?? this.at(row, column)?.from;
        if (from) call(from);
      }
    }
  }

  private findFilled(): Map<number, number[]> {
    const columns = new Map<number, Set<number>>();
    const add = (row: number, column: number): void => {
      const rows = columns.get(column);
      if (rows) rows.add(row);
      else columns.set(column, new Set([row]));
    };
    for (const { row, column } of this.formulas.values()) add(row, column);
    for (const { row, col, from } of this.cells.values()) if (from) add(row, col);
    return new Map([...columns].map(([column, rows]) => [column, [...rows].sort((a, b) => a - b)]));
  }
}

function addTo(readers: Map<number, Set<Formula>>, key: number, by: Formula): void {
  const known = readers.get(key);
  if (known) known.add(by);
  else readers.set(key, new Set([by]));
}

/** The first index of sorted numbers that is not below `least`. */
function firstFrom(sorted: readonly number[], least: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
