import type { Sheet, Workbook } from "hucre";
import type { Area } from "../../host/address";

/** Which cells a person may not change: all of a protected sheet but the ones its file unlocks. */
export class Locks {
  private readonly unlocked = new Map<string, Set<string>>();

  constructor(workbook: Workbook) {
    for (const sheet of workbook.sheets) {
      if (isProtected(sheet)) this.unlocked.set(sheet.name, unlockedCells(sheet));
    }
  }

  isLocked({ sheet, top, left, bottom, right }: Area): boolean {
    const free = this.unlocked.get(sheet);
    if (!free) return false;
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) if (!free.has(`${row},${column}`)) return true;
    }
    return false;
  }

  isProtectedSheet(sheet: string): boolean {
    return this.unlocked.has(sheet);
  }
}

function isProtected(sheet: Sheet): boolean {
  return sheet.protection !== undefined && sheet.protection.sheet !== false;
}

function unlockedCells(sheet: Sheet): Set<string> {
  const keys = new Set<string>();
  for (const [key, cell] of sheet.cells ?? []) if (cell.style?.protection?.locked === false) keys.add(key);
  return keys;
}
