import { ISheetClipboardService } from "@univerjs/preset-sheets-core";
import { areaName, cellArea, type Area } from "../../xlsx/address";
import type { Write } from "../../host/bench/benchGrid";
import type { CellValue } from "../../host/port";
import type { Spreadsheet } from "./spreadsheet";
import { copiedFormula, cutFormula } from "./movedFormula";
import { asTyped, pastedTexts, spread } from "./pasted";
import { writeCells } from "./write";

/** What the browser's clipboard holds. */
export interface Clipboard {
  readonly htmlContent?: string;
  readonly textContent?: string;
}

/** What a cell that is pasted holds in the place it comes to. */
type Landing = (row: number, column: number) => CellValue;

/** What was copied here, with what has to go when it was cut. */
interface Copied {
  readonly rows: readonly (readonly Landing[])[];
  readonly cut: Area | undefined;
  /** What was cut is pasted once. */
  pasted(): void;
}

/**
 * Puts copied cells in as if they were typed: formulas that a person may change as formulas, everything else as values,
 * and all without their looks. The library's own pasting would bring looks along, which are not saved, and leave a
 * formula standing under the pasted value.
 */
export function paste(grid: Spreadsheet, clipboard: Clipboard): void {
  const selected = grid.selection.area();
  if (!selected) return;
  const place = grid.model.merged(selected) ? cellArea(selected.sheet, selected.top, selected.left) : selected;
  const copied = copiedHere(grid, clipboard.htmlContent ?? "", place.sheet);
  const refused: string[] = [];
  const rows = copied?.rows ?? landingTexts(grid, clipboard.textContent ?? "", place.sheet, refused);
  if (rows.length === 0) return;
  const { area, values: cells } = spread(rows, place);
  const values = cells.map((row, down) => row.map((land, across) => land(area.top + down, area.left + across)));
  const size = grid.model.size(area.sheet);
  if (area.bottom >= size.rows || area.right >= size.columns) {
    grid.page.refused(`Nothing was pasted: ${areaName(area)} would go beyond the end of the sheet.`);
    return;
  }
  const writes: Write[] = [
    ...(copied?.cut ? [{ area: copied.cut, values: copied.rows.map((row) => row.map(() => "")) }] : []),
    { area, values },
  ];
  if (refused[0] !== undefined) {
    grid.page.refused(`Nothing was pasted. ${refused[0]}`);
    return;
  }
  const locked = writes.map((write) => grid.locks.firstLocked(write.area)).find(Boolean);
  if (locked) {
    grid.page.refused(`Nothing was pasted: ${areaName(locked)} is worked out from other cells and is protected.`);
    return;
  }
  writeCells(grid.univer, grid.model, writes);
  copied?.pasted();
  grid.selection.select(area);
}

/** Copied text, each piece read as if it were typed where it comes to; what cannot be taken there is noted. */
function landingTexts({ typing }: Spreadsheet, text: string, sheet: string, refused: string[]): Landing[][] {
  return pastedTexts(text).map((row) =>
    row.map((typed): Landing => (toRow, toColumn) => {
      const entry = typing.read({ sheet, row: toRow, column: toColumn }, typed);
      if (entry && "refused" in entry) refused.push(`${areaName(cellArea(sheet, toRow, toColumn))}: ${entry.refused}`);
      return entry && "value" in entry ? entry.value : asTyped(typed);
    }),
  );
}

/**
 * Cells that were copied in the bench, as they stand now, for a place on the sheet `onto`: exact, where the copied text
 * is rounded as shown.
 */
function copiedHere(grid: Spreadsheet, html: string, onto: string): Copied | undefined {
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
    rows: landings(grid, area, cut !== undefined, onto),
    cut,
    pasted: () => cut && clipboard.copyContentCache().del(id),
  };
}

function landings({ model, locks }: Spreadsheet, area: Area, cut: boolean, onto: string): Landing[][] {
  const { sheet, top, left } = area;
  const spilled = new Set<string>();
  const rows = model.values(area).map((values, down) =>
    values.map((value, across): Landing => {
      const [row, column] = [top + down, left + across];
      const formula = model.formula(sheet, row, column);
      if (formula === "" || locks.isLocked(cellArea(sheet, row, column))) return () => value;
      for (const key of model.spilledFrom(sheet, row, column)) spilled.add(key);
      if (!cut) return (toRow, toColumn) => copiedFormula(formula, toRow - row, toColumn - column);
      return () => (sheet === onto ? formula : cutFormula(formula, sheet));
    }),
  );
  // What a formula spills comes with it, and would stand in its way as values.
  return rows.map((cells, down) =>
    cells.map((land, across) => (spilled.has(`${top + down},${left + across}`) ? () => "" : land)),
  );
}
