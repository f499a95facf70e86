import type { Style } from "../model";
import { bare } from "./conditions";
import type { Page } from "./page";
import { FONT_SIZE } from "./style";
import type { ColumnSpec } from "./tableColumns";

/** Title and unit over a column; a currency is taken from the job. */
export function head(
  page: Page,
  row: number,
  at: number,
  column: Pick<ColumnSpec, "title" | "kind" | "unit" | "across">,
): void {
  const unit = page.unitOf(column.kind, column.unit);
  const style = column.kind === "text" ? "headText" : "head";
  const across = column.across ?? 1;
  const text = unit && !unit.startsWith("=") ? `${column.title} (${unit})` : column.title;
  page.fitHeight(row, unit.startsWith("=") ? `${text} ($)` : text, page.charactersAcross(at, across), FONT_SIZE, true);
  const look = besideNumbers(column.kind === "text" && at > 1);
  if (unit.startsWith("="))
    page.put(row, at, { formula: `="${column.title} ("&${bare(unit)}&")"`, style, look, across });
  else page.put(row, at, { value: text, style, look, across });
}

/** Text that stands right of a number keeps a little room from it. */
export function besideNumbers(needed: boolean): Style {
  return needed ? { indent: 1 } : {};
}
