import type { Sheet, Workbook } from "hucre";
import { cellArea, type Area } from "../../xlsx/address";

/** Cells of a protected sheet that may be changed, and columns that give this to cells the file does not hold yet. */
interface Unlocked {
  readonly cells: ReadonlySet<string>;
  readonly columns: ReadonlySet<number>;
  readonly sheet: Sheet;
}

/** Which cells a person may not change: all of a protected sheet but the ones its file unlocks. */
export class Locks {
  private readonly unlocked = new Map<string, Unlocked>();

  constructor(workbook: Workbook) {
    for (const sheet of workbook.sheets) {
      if (isProtected(sheet)) this.unlocked.set(sheet.name, unlockedOf(sheet));
    }
  }

  isLocked(area: Area): boolean {
    return this.firstLocked(area) !== undefined;
  }

  /** The first cell of an area that may not be changed. */
  firstLocked({ sheet, top, left, bottom, right }: Area): Area | undefined {
    const free = this.unlocked.get(sheet);
    if (!free) return undefined;
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) {
        if (!isFree(free, row, column)) return cellArea(sheet, row, column);
      }
    }
    return undefined;
  }

  isProtectedSheet(sheet: string): boolean {
    return this.unlocked.has(sheet);
  }
}

function isFree({ cells, columns, sheet }: Unlocked, row: number, column: number): boolean {
  const key = `${row},${column}`;
  return cells.has(key) || (columns.has(column) && !sheet.cells?.has(key));
}

function isProtected(sheet: Sheet): boolean {
  return sheet.protection !== undefined && sheet.protection.sheet !== false;
}

function unlockedOf(sheet: Sheet): Unlocked {
  const cells = new Set<string>();
  for (const [key, cell] of sheet.cells ?? []) if (cell.style?.protection?.locked === false) cells.add(key);
  const columns = new Set<number>();
  sheet.columns?.forEach(({ style }, column) => {
    if (style?.protection?.locked === false) columns.add(column);
  });
  return { cells, columns, sheet };
}
