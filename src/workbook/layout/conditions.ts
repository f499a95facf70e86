import type { Area, Conditional } from "../model";
import { cellAddress, type Ref } from "./address";
import type { Page } from "./page";
import { COLOR } from "./style";

/** A formula, with or without its "=". */
export function bare(formula: string): string {
  return formula.startsWith("=") ? formula.slice(1) : formula;
}

/** TRUE while an area holds nothing; an error in it travels. */
export function allBlank(area: string): string {
  return `SUMPRODUCT((${area}<>"")*1)=0`;
}

/**
 * TRUE while one of the needed cells or ranges holds nothing. An error in one travels: it is no blank. Whether a name stands
 * for a cell or a range is known once all sheets are laid out: `settleBlanks` writes the question out then.
 */
export function anyBlank(needs: readonly string[]): string {
  const each = needs.map((need) => `«${need}»`);
  return each.length === 1 ? (each[0] ?? "") : `OR(${each.join(",")})`;
}

/**
 * A row of a named column, so that formulas below each other are the same from row to row. Where the name lies is known once
 * all sheets are laid out: `settleRows` writes its address then.
 */
export function rowOf(name: string, row: number | "[#]", column = 1): string {
  return `‹${name},${row},${column}›`;
}

/** The list, below each other, of what several expressions give. */
export function listOf(each: readonly string[]): string {
  return `CHOOSE({${each.map((_, index) => index + 1).join(";")}},${each.join(",")})`;
}

/** Writes out what `rowOf` left open. */
export function settleRows(formula: string, places: ReadonlyMap<string, Ref>): string {
  return formula.replace(/‹(\w+),(\d+),(\d+)›/g, (_, name: string, row: string, column: string) => {
    const place = places.get(name);
    if (!place) throw new Error(`there is no name ${name}`);
    const { sheet, top, left } = place.cell(Number(row), Number(column));
    return `${sheet}!${cellAddress(top, left)}`;
  });
}

/** What is known of places once all sheets are laid out. */
export interface Places {
  /** Whether a name stands for more than a cell. */
  isRange(name: string): boolean;
  /** The cell at the head of the table that holds a name or an address, where a function fills it. */
  headOf(need: string): string | undefined;
}

/** Writes out what `anyBlank` left open. */
export function settleBlanks(formula: string, { isRange, headOf }: Places): string {
  return formula.replace(/«([^»]*)»/g, (_, need: string) => {
    const range = /:/.test(need) || /^INDEX\([^,]+,0,/.test(need) || isRange(need);
    const head = headOf(need);
    // A table in error has its error in its head, and nothing below.
    if (range) return head === undefined ? allBlank(need) : `SUMPRODUCT((${need}<>"")*1)+N(${head})=0`;
    return head === undefined ? `${need}=""` : `OR(${need}="",N(${head})>0)`;
  });
}

/** The formula, or nothing while what it needs is still blank. */
export function whenFilled(formula: string, needs: readonly string[] | undefined, otherwise = '""'): string {
  return needs === undefined || needs.length === 0
    ? `=${bare(formula)}`
    : `=IF(${anyBlank(needs)},${otherwise},${bare(formula)})`;
}

/**
 * Cells of a table that a function fills, by lists of their rows and columns; blank while they are. An error of the table,
 * which stands in its head, travels.
 */
export function readFrom(table: string, rows: string, columns: string | number): string {
  const cells = `INDEX(${table},${rows},${columns})`;
  return `=IF((${cells}="")+N(${rowOf(table, 0)}),"",${cells})`;
}

/**
 * Rows that are kept for more than there is draw nothing while their first cell is blank: white lines and fill hide those of
 * the cells. Inputs among them lose their box as well.
 */
export function hideBlankRows(page: Page, area: Area, isInput: (column: number) => boolean = () => false): void {
  const { top, bottom } = area;
  const first = `$${cellAddress(top, area.left)}`;
  const white = { lineColor: COLOR.white };
  for (let column = area.left; column <= area.right; column++) {
    const style = isInput(column)
      ? { ...white, fill: COLOR.white, lines: { left: "hair", right: "hair", bottom: "hair" } as const }
      : { ...white, lines: { bottom: "hair" } as const };
    page.sheet.conditionals.push({
      area: { top, left: column, bottom, right: column },
      formula: `=${first}=""`,
      style,
    });
  }
}

/** What is used is slanted while it is not what was typed, and its reason stands out where what was typed is wrong. */
export function markUsed(page: Page, row: number, columns: { yours: number; used: number; reason: number }): void {
  const used = `$${cellAddress(row, columns.used)}`;
  markRow(page, row, columns.used, `=$${cellAddress(row, columns.yours)}=""`, { italic: true });
  markRow(page, row, columns.reason, `=ISERROR(${used})`, { bold: true, color: COLOR.warn });
}

/** A rule for a cell, which reaches on down where the row above has the same one. */
function markRow(page: Page, row: number, column: number, formula: string, style: Conditional["style"]): void {
  const { conditionals } = page.sheet;
  const shape = (text: string, at: number): string => text.replace(new RegExp(`(?<=[A-Z])${at}(?!\\d)`, "g"), "#");
  const index = conditionals.findIndex(
    ({ area, formula: other }) =>
      area.left === column && area.bottom === row - 1 && shape(other, area.top) === shape(formula, row),
  );
  const above = conditionals[index];
  if (above) conditionals[index] = { ...above, area: { ...above.area, bottom: row } };
  else conditionals.push({ area: { top: row, left: column, bottom: row, right: column }, formula, style });
}
