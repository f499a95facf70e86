import type { Sheet, Workbook } from "hucre";
import { format } from "numfmt";
import { columnLetters } from "../../xlsx/address";
import { coveredCells } from "../reading/cellSets";
import { storedValue } from "../work/fileContent";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import { columnPixels, fittingZoom, rowHeights, USUAL } from "../reading/sizes";
import { StyleTable } from "../reading/styles";
import { lookLike } from "./cellLook";
import { columnWidths } from "./columnWidths";

/** Rows and columns that are drawn; nobody reads further before the grid stands. */
const MOST_ROWS = 160;
const MOST_COLUMNS = 26;

/** A sheet with its stored values as a plain table, for the time until the grid stands. */
export function sheetPicture({ workbook, usual }: OpenedWorkbook, sheet: Sheet, room: number): HTMLTableElement {
  const styles = new StyleTable(workbook.themeColors);
  const size = usual.get(sheet.name) ?? USUAL;
  const heights = rowHeights(sheet, size.row);
  const covered = coveredCells(sheet);
  const columns = Math.min(MOST_COLUMNS, Math.max(...sheet.rows.map(({ length }) => length), 1) + 2);
  const rows = Math.min(MOST_ROWS, sheet.rows.length + 2);
  const widths = Array.from({ length: columns }, (_, column) => {
    const { width, hidden } = sheet.columns?.[column] ?? {};
    return hidden ? 0 : width ? columnPixels(width) : size.column;
  });
  const table = document.createElement("table");
  table.style.zoom = String(fittingZoom(sheet, room));
  table.style.width = `${widths.reduce((sum, width) => sum + width, HEAD)}px`;
  table.append(columnWidths([HEAD, ...widths]), columnHeads(widths));
  const body = table.createTBody();
  for (let row = 0; row < rows; row++) {
    const line = body.insertRow();
    line.style.height = `${heights[row]?.h ?? size.row}px`;
    line.hidden = heights[row]?.hd === 1;
    line.append(head(String(row + 1)));
    for (let column = 0; column < columns; column++) {
      if (covered.has(`${row},${column}`)) continue;
      line.append(cellAt(workbook, sheet, { row, column }, styles));
    }
  }
  return table;
}

/** Row numbers are as wide as the grid's, in pixels. */
const HEAD = 46;

function columnHeads(widths: readonly number[]): HTMLElement {
  const group = document.createElement("thead");
  const line = document.createElement("tr");
  line.append(head(""), ...widths.map((_, column) => head(columnLetters(column))));
  group.append(line);
  return group;
}

function head(text: string): HTMLElement {
  const element = document.createElement("th");
  element.textContent = text;
  return element;
}

function cellAt(
  { dateSystem }: Workbook,
  sheet: Sheet,
  { row, column }: { readonly row: number; readonly column: number },
  styles: StyleTable,
): HTMLElement {
  const element = document.createElement("td");
  const key = `${row},${column}`;
  const cell = sheet.cells?.get(key);
  const value = storedValue(cell, sheet.rows[row]?.[column], dateSystem === "1904");
  const look = styles.convert(cell?.style ?? {});
  element.textContent = shownAs(value, look.n?.pattern);
  element.dataset.cell = key;
  lookLike(element, look, typeof value === "number");
  const merge = sheet.merges?.find(({ startRow, startCol }) => startRow === row && startCol === column);
  if (merge) {
    element.setAttribute("rowspan", String(merge.endRow - merge.startRow + 1));
    element.setAttribute("colspan", String(merge.endCol - merge.startCol + 1));
  }
  return element;
}

function shownAs(value: string | number | boolean, pattern: string | null | undefined): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string" || !pattern) {
    return typeof value === "number" ? String(Number(value.toPrecision(11))) : value;
  }
  return format(pattern, value, { throws: false });
}
