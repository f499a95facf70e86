import type { Cell, Workbook, Worksheet } from "@cj-tech-master/excelts";
import type { CellValue } from "../model";

/** What a formula gives: one value, or rows of them where it spills. */
export type Calculated = CellValue | CellValue[][];

interface FormulaValue {
  readonly formula?: string;
  readonly isDynamicArray?: boolean;
  readonly ref?: string;
}

interface Corner {
  readonly row: number;
  readonly column: number;
}

/** Every cell that holds something, with its sheet. */
function cellsOf(workbook: Workbook): [Worksheet, Cell][] {
  const cells: [Worksheet, Cell][] = [];
  for (const sheet of workbook.worksheets) {
    sheet.eachRow((row) => row.eachCell((cell) => cells.push([sheet, cell])));
  }
  return cells;
}

function isFormula(cell: Cell): boolean {
  return cell.formula !== undefined && cell.formula !== null;
}

function arrayOf(cell: Cell): FormulaValue | undefined {
  const value = cell.value as FormulaValue | null;
  return typeof value === "object" && value?.isDynamicArray === true ? value : undefined;
}

function keyOf(sheet: Worksheet, cell: Cell): string {
  return `${sheet.name}!${cell.address}`;
}

function corner(address: string): Corner {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address.replace(/\$/g, "")) ?? [];
  return { row: Number(digits), column: [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0) };
}

/** The rows of cell positions an address such as "B7:D9" covers, down to a last row; the first row always. */
export function positionsIn(address: string, lastRow = Infinity): Corner[][] {
  const [from = "", to = from] = address.split(":");
  const first = corner(from);
  const last = corner(to);
  const bottom = Math.max(first.row, Math.min(last.row, lastRow));
  return Array.from({ length: bottom - first.row + 1 }, (_, down) =>
    Array.from({ length: last.column - first.column + 1 }, (__, across) => ({
      row: first.row + down,
      column: first.column + across,
    })),
  );
}

/** A formula of the file: where it stands, what it says, and the cells it filled when the file was saved. */
export interface FormulaCell {
  readonly key: string;
  readonly sheet: Worksheet;
  readonly cell: Cell;
  readonly formula: string;
  /** Set where the formula may spill. */
  readonly spill?: Size;
}

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** Takes every formula out of the workbook, with its stored results and what it had spilled into other cells. */
export function takeFormulas(workbook: Workbook): FormulaCell[] {
  const formulas = cellsOf(workbook)
    .filter(([, cell]) => isFormula(cell))
    // All are read before any is taken out: a shared formula is read off another cell's.
    .map(([sheet, cell]): FormulaCell => {
      const ref = arrayOf(cell)?.ref;
      const area = ref === undefined ? [] : positionsIn(ref);
      const spill = ref === undefined ? {} : { spill: { rows: area.length, columns: area[0]?.length ?? 1 } };
      return { key: keyOf(sheet, cell), sheet, cell, formula: cell.formula ?? "", ...spill };
    });
  for (const { cell, sheet } of formulas) {
    const ref = arrayOf(cell)?.ref ?? cell.address;
    for (const { row, column } of positionsIn(ref).flat()) sheet.getCell(row, column).value = null;
  }
  return formulas;
}

/** Puts a formula into its cell. */
export function enterFormula({ cell, spill }: FormulaCell, formula: string): void {
  const dynamic = spill ? { ref: cell.address, shareType: "array", isDynamicArray: true } : {};
  cell.value = { formula, ...dynamic } as Cell["value"];
}

/** Addresses of every cell that holds something. */
export function filledCells(workbook: Workbook): Set<string> {
  return new Set(cellsOf(workbook).map(([sheet, cell]) => keyOf(sheet, cell)));
}

/** What a formula gives after a calculation; `filled` are the cells that held something before it. */
export function resultOf({ sheet, cell, spill }: FormulaCell, filled: ReadonlySet<string>): Calculated {
  return spill ? spilled(sheet, cell, filled) : shownIn(cell);
}

/** What a cell holds or shows; errors as their text. */
export function shownIn(cell: Cell): CellValue {
  const shown: unknown = isFormula(cell) ? cell.result : cell.value;
  if (shown === null || shown === undefined) return "";
  if (shown instanceof Date) return shown.getTime() / 86_400_000 + 25_569;
  if (typeof shown !== "object") return shown as CellValue;
  if ("error" in shown) return String(shown.error);
  return "text" in shown ? String(shown.text) : "";
}

function spilled(sheet: Worksheet, anchor: Cell, filled: ReadonlySet<string>): Calculated {
  const { row, column } = corner(anchor.address);
  const isSpilled = (down: number, across: number): boolean => {
    const cell = sheet.getCell(row + down, column + across);
    return cell.value !== null && cell.value !== undefined && !filled.has(keyOf(sheet, cell));
  };
  let width = 1;
  while (isSpilled(0, width)) width++;
  let height = 1;
  while (isSpilled(height, 0)) height++;
  if (width === 1 && height === 1) return shownIn(anchor);
  return Array.from({ length: height }, (_, down) =>
    Array.from({ length: width }, (__, across) => shownIn(sheet.getCell(row + down, column + across))),
  );
}
