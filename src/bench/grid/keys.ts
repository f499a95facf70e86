import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, type Univer } from "@univerjs/core";
import { IEditorBridgeService } from "@univerjs/preset-sheets-core";
import { cellArea } from "../../xlsx/address";
import type { Spreadsheet } from "./spreadsheet";

interface Place {
  readonly row: number;
  readonly column: number;
}

/** Rows that paging leaves in sight of the page before. */
const KEPT = 2;

/** Keys of spreadsheet programs that the library does not know: to the row's begin, to the sheet's, to its end, by pages. */
export function keys(grid: Spreadsheet): void {
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.shiftKey || event.altKey || event.metaKey || !inCells(grid.univer)) return;
      const area = grid.selection.area();
      const place = area && leadsTo(event, { row: area.top, column: area.left }, grid);
      if (!place) return;
      event.preventDefault();
      event.stopPropagation();
      grid.selection.goTo(cellArea(area.sheet, Math.max(0, place.row), place.column));
    },
    { capture: true },
  );
}

/** Whether keys go to the cells: not into an open cell, the name box or the formula bar. */
function inCells(univer: Univer): boolean {
  if (!document.activeElement?.id.endsWith(DOCS_NORMAL_EDITOR_UNIT_ID_KEY)) return false;
  return !univer.__getInjector().get(IEditorBridgeService).isVisible().visible;
}

function leadsTo(
  { key, ctrlKey }: KeyboardEvent,
  { row, column }: Place,
  { api, model }: Spreadsheet,
): Place | undefined {
  const sheet = api.getActiveWorkbook()?.getActiveSheet();
  if (!sheet) return undefined;
  if (key === "Home") return ctrlKey ? { row: 0, column: 0 } : { row, column: 0 };
  if (key === "End") return ctrlKey ? { row: sheet.getLastRow(), column: sheet.getLastColumn() } : undefined;
  if (ctrlKey || (key !== "PageDown" && key !== "PageUp")) return undefined;
  const seen = sheet.getVisibleRange();
  const page = Math.max(1, seen ? seen.endRow - seen.startRow - KEPT : 1);
  const last = model.size(sheet.getSheetName()).rows - 1;
  return { row: key === "PageUp" ? row - page : Math.min(last, row + page), column };
}
