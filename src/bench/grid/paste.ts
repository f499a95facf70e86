import { ISheetClipboardService } from "@univerjs/preset-sheets-core";
import { areaName, type Area } from "../../host/address";
import type { Write } from "../../host/bench/benchGrid";
import type { Grid } from "../../host/port";
import type { EmbeddedGrid } from "./grid";
import { pastedRows, spread } from "./pasted";
import { writeCells } from "./write";

/** What the browser's clipboard holds. */
export interface Clipboard {
  readonly htmlContent?: string;
  readonly textContent?: string;
}

/** What was copied here, with what has to go when it was cut. */
interface Copied {
  readonly rows: Grid;
  readonly cut: Area | undefined;
  /** What was cut is pasted once. */
  pasted(): void;
}

/**
 * Puts copied cells in as values, as if they were typed: their looks and formulas stay where they are. The library's own
 * pasting would bring looks along, which are not saved, and leave a formula standing under the pasted value.
 */
export function paste(grid: EmbeddedGrid, clipboard: Clipboard): void {
  const selected = grid.selection.area();
  const copied = copiedHere(grid, clipboard.htmlContent ?? "");
  const rows = copied?.rows ?? pastedRows(clipboard.textContent ?? "");
  if (!selected || rows.length === 0) return;
  const { area, values } = spread(rows, grid.model.merged(selected) ? firstCell(selected) : selected);
  const size = grid.model.size(area.sheet);
  if (area.bottom >= size.rows || area.right >= size.columns) {
    grid.page.refused(`Nothing was pasted: ${areaName(area)} would go beyond the end of the sheet.`);
    return;
  }
  const writes: Write[] = [
    ...(copied?.cut ? [{ area: copied.cut, values: copied.rows.map((row) => row.map(() => "")) }] : []),
    { area, values },
  ];
  const locked = writes.map((write) => grid.locks.firstLocked(write.area)).find(Boolean);
  if (locked) {
    grid.page.refused(`Nothing was pasted: ${areaName(locked)} is worked out from other cells and is protected.`);
    return;
  }
  writeCells(grid.univer, grid.model, writes);
  copied?.pasted();
  grid.selection.select(area);
}

/** Cells that were copied in the bench, as they stand now: exact, where the copied text is rounded as shown. */
function copiedHere(grid: EmbeddedGrid, html: string): Copied | undefined {
  const clipboard = grid.univer.__getInjector().get(ISheetClipboardService);
  const id = /data-copy-id="([^\s"]+)"/.exec(html)?.[1];
  const copied = id === undefined ? undefined : clipboard.copyContentCache().get(id);
  if (!id || !copied?.range) return undefined;
  const sheet = grid.model.sheetName(copied.subUnitId);
  const { rows, cols } = copied.range;
  const [top = 0, left = 0, bottom = top, right = left] = [rows[0], cols[0], rows.at(-1), cols.at(-1)];
  const area = { sheet, top, left, bottom, right };
  if (!grid.model.hasSheet(sheet)) return undefined;
  const cut = copied.copyType === "CUT" ? area : undefined;
  return {
    rows: grid.model.values(area),
    cut,
    pasted: () => cut && clipboard.copyContentCache().del(id),
  };
}

function firstCell({ sheet, top, left }: Area): Area {
  return { sheet, top, left, bottom: top, right: left };
}
