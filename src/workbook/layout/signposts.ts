import type { SheetModel, Style } from "../model";
import type { Page } from "./page";
import { lastPrintedColumn } from "./paging";
import { STYLE } from "./style";
import { columnRoom, textWidth } from "./textRoom";

/** Width of a column of links beside a page that others get, in characters. */
const BESIDE = 18;

/** The columns, from one on, that a text takes on one line; all that are left where it is longer. */
export function columnsFor({ widths }: SheetModel, from: number, text: string, { size, bold }: Style): number {
  const room = textWidth(text, size, bold);
  for (let across = 1, used = 0; from + across - 1 <= widths.length; across++) {
    used += widths[from + across - 2] ?? 0;
    if (columnRoom(used) >= room) return across;
  }
  return Math.max(1, widths.length - from + 1);
}

/**
 * Sets links beside the title, where they stay in sight; they are links of the file, so that there is nothing to calculate.
 * What a client or a crew gets has no title of ours: there they stand one below the other, right of what is printed.
 */
export function addSignposts(
  s: Page,
  titleEnd: number | undefined,
  links: readonly (readonly [text: string, sheet: string])[],
): void {
  const look: Style = { lines: {}, wrap: false };
  if (titleEnd === undefined) {
    const column = lastPrintedColumn(s.sheet) + 1;
    s.sheet.print = { ...s.sheet.print, lastColumn: column - 1 };
    s.sheet.widths[column - 1] = Math.max(BESIDE, s.sheet.widths[column - 1] ?? 0);
    links.forEach(([value, sheet], index) =>
      s.put(1 + index, column, { value, style: "link", look, link: `${sheet}!A1` }),
    );
    return;
  }
  let column = titleEnd + 1;
  for (const [value, sheet] of links) {
    const across = columnsFor(s.sheet, column, value, STYLE.link);
    s.put(1, column, { value, style: "link", look, link: `${sheet}!A1`, across });
    column += across;
  }
}
