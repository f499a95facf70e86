import type { Area } from "../model";
import { cellAddress } from "./address";
import type { Page } from "./page";
import { COLOR } from "./style";

/** A formula, with or without its "=". */
export function bare(formula: string): string {
  return formula.startsWith("=") ? formula.slice(1) : formula;
}

/** TRUE while one of the needed cells or ranges holds no number. */
export function anyBlank(needs: readonly string[]): string {
  const counts = needs.map((need) => `COUNT(${need})`).join(",");
  return needs.length === 1 ? `${counts}=0` : `MIN(${counts})=0`;
}

/** The formula, or nothing while what it needs is still blank. */
export function whenFilled(formula: string, needs: readonly string[] | undefined, otherwise = '""'): string {
  return needs === undefined || needs.length === 0
    ? `=${bare(formula)}`
    : `=IF(${anyBlank(needs)},${otherwise},${bare(formula)})`;
}

/**
 * Rows that are kept for more than there is draw nothing while their first cell is blank: white lines and ground hide those of
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
