import { cellAddress } from "../layout/address";
import { eachCell, isIn, isOneCell, LAST_COLUMN, LAST_ROW, meet, type Block } from "./block";
import type { Formula } from "./formula";
import { placeKey, type SheetCells } from "./sheetCells";
import { sameHeld, type Held } from "./values";

const NO_VALUE: Held = { error: "#N/A" };

/** Told of each cell that comes to show something else by a formula. */
type Touched = (sheet: SheetCells, row: number, column: number, by: Formula) => void;

/** Puts results into their cells, and keeps them out of cells that hold something else. */
export class Placing {
  /** Formulas that cannot spill, with the block they need. */
  private readonly blocked = new Map<Formula, Block>();

  constructor(
    private readonly touched: Touched,
    private readonly explain: (formula: Formula, reason: string) => void,
  ) {}

  place(sheet: SheetCells, formula: Formula, rows: readonly (readonly Held[])[]): void {
    const { row, column, filled: before } = formula;
    let result = rows;
    let block = blockOf(formula, rows);
    this.blocked.delete(formula);
    const inTheWay = formula.spilling === "free" ? this.inTheWay(sheet, formula, block) : undefined;
    if (inTheWay !== undefined) {
      this.blocked.set(formula, block);
      this.explain(formula, inTheWay);
      result = [[{ error: "#SPILL!" }]];
      block = ownBlock(formula);
    }
    formula.filled = isOneCell(block) ? undefined : block;
    if (before) {
      eachCell(before, (r, c) => {
        if (isIn(block, r, c) || sheet.at(r, c)?.from !== formula) return;
        sheet.put(r, c, undefined);
        this.touched(sheet, r, c, formula);
      });
    }
    const single = result.length === 1 && result[0]?.length === 1;
    eachCell(block, (r, c) => {
      const value = (single ? result[0]?.[0] : result[r - row]?.[c - column]) ?? NO_VALUE;
      const cell = sheet.at(r, c);
      if (cell?.from === formula && sameHeld(cell.value, value)) return;
      sheet.put(r, c, value, formula);
      this.touched(sheet, r, c, formula);
    });
  }

  /** Formulas that may have room now that a cell was changed. */
  waitingFor(sheet: SheetCells, row: number, column: number): Formula[] {
    return [...this.blocked]
      .filter(([formula, block]) => formula.sheet === sheet.name && isIn(block, row, column))
      .map(([formula]) => formula);
  }

  forget(formula: Formula): void {
    this.blocked.delete(formula);
  }

  /** What keeps a formula from filling a block, in a sentence. */
  private inTheWay(sheet: SheetCells, formula: Formula, block: Block): string | undefined {
    if (isOneCell(block)) return undefined;
    if (block.bottom > LAST_ROW || block.right > LAST_COLUMN)
      return "The result would go beyond the end of the sheet; let the formula give less.";
    if (sheet.merged.some((merged) => meet(merged, block)))
      return "A merged cell stands where the result would go; put the formula elsewhere.";
    let found: string | undefined;
    eachCell(block, (row, column) => {
      if (found || (row === formula.row && column === formula.column)) return;
      const cell = sheet.at(row, column);
      if ((cell && cell.from !== formula) || sheet.formulas.has(placeKey(row, column)))
        found = cellAddress(row, column);
    });
    return found && `The result needs room, and ${found} is not empty; clear it, and the result appears.`;
  }
}

export function ownBlock({ row, column }: Formula): Block {
  return { top: row, left: column, bottom: row, right: column };
}

function blockOf(formula: Formula, rows: readonly (readonly Held[])[]): Block {
  const { spilling, row, column } = formula;
  if (typeof spilling === "object") return spilling;
  if (spilling === undefined) return ownBlock(formula);
  return { top: row, left: column, bottom: row + rows.length - 1, right: column + (rows[0]?.length ?? 1) - 1 };
}
