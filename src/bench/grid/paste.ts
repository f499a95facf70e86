import { ISheetClipboardService } from "@univerjs/preset-sheets-core";
import { areaName, cellArea, type Area } from "../../xlsx/address";
import type { Write } from "../../host/bench/benchGrid";
import type { CellValue } from "../../host/port";
import type { Spreadsheet } from "./spreadsheet";
import { copiedFormula, cutFormula } from "./movedFormula";
import { matchHeadings, type ByHeadings } from "./byHeadings";
import { pastedTexts, spread } from "./pasted";
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
  const table = copied ? undefined : tableFor(grid, pastedTexts(clipboard.textContent ?? ""), place);
  if (table) return void offer(grid, clipboard, place, table);
  put(grid, clipboard, place, copied);
}

/** A pasted table that may go in by its headings. */
interface Offered {
  readonly found: ByHeadings;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Columns to the right that are looked at for headings. */
const MOST_COLUMNS = 40;
/** Rows above that are looked at for them. */
const MOST_ROWS_ABOVE = 400;

/** Whether the first pasted row names columns of the table that the place lies in. */
function tableFor({ model, locks }: Spreadsheet, texts: readonly string[][], place: Area): Offered | undefined {
  const [first, ...rows] = texts;
  if (!first || first.length < 2 || rows.length === 0) return undefined;
  const { sheet, top } = place;
  const right = Math.min(MOST_COLUMNS, model.size(sheet).columns) - 1;
  // The nearest row above that cannot be typed into and names what was pasted.
  for (let row = top - 1; row >= Math.max(0, top - MOST_ROWS_ABOVE); row--) {
    const area = { sheet, top: row, left: 0, bottom: row, right };
    const headings = (model.values(area)[0] ?? []).map((value, column) =>
      typeof value === "string" && locks.isLocked(cellArea(sheet, row, column)) ? value : "",
    );
    const found = matchHeadings(first, headings);
    if (found) return { found, headings, rows };
  }
  return undefined;
}

/** Asks whether a table goes in by its headings, and does so; what is worked out here stays as it is. */
async function offer(
  grid: Spreadsheet,
  clipboard: Clipboard,
  place: Area,
  { found, headings, rows }: Offered,
): Promise<void> {
  const { sheet, top } = place;
  const free = (column: number): boolean =>
    rows.every((_, down) => !grid.locks.isLocked(cellArea(sheet, top + down, column)));
  const columns = found.from.flatMap((from, column) => (from !== undefined && free(column) ? [{ from, column }] : []));
  const goes = columns.map(({ column }) => headings[column]).join(", ");
  const worked = found.from.flatMap((from, column) =>
    from !== undefined && !free(column) ? [headings[column] ?? ""] : [],
  );
  const out = [...found.leftOut, ...worked.map((heading) => `${heading} (worked out here)`)];
  const question =
    `The first row you pasted names columns. Put each under its own heading here (${goes})?` +
    (out.length > 0 ? ` Left out: ${out.join(", ")}.` : "");
  const answers = ["By the headings", "As it stands", "Cancel"];
  const answer = await grid.page.choose(question, answers);
  if (answer === 1) put(grid, clipboard, place, undefined);
  if (answer !== 0) return;
  const refused: string[] = [];
  const writes = columns.map(({ from, column }): Write => ({
    area: { sheet, top, left: column, bottom: top + rows.length - 1, right: column },
    values: rows.map((row, down) => [landing(grid, row[from] ?? "", sheet, refused)(top + down, column)]),
  }));
  if (refused[0] !== undefined) return grid.page.refused(`Nothing was pasted. ${refused[0]}`);
  writeCells(grid.univer, grid.model, writes);
}

function put(grid: Spreadsheet, clipboard: Clipboard, place: Area, copied: Copied | undefined): void {
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
    grid.page.refused(
      `Nothing was pasted: ${areaName(locked)} is protected. Where columns stand in another order, copy their headings along; each can then go under its own.`,
    );
    return;
  }
  writeCells(grid.univer, grid.model, writes);
  copied?.pasted();
  grid.selection.select(area);
}

/** Copied text, each piece read as if it were typed where it comes to; what cannot be taken there is noted. */
function landingTexts(grid: Spreadsheet, text: string, sheet: string, refused: string[]): Landing[][] {
  return pastedTexts(text).map((row) => row.map((typed) => landing(grid, typed, sheet, refused)));
}

function landing({ typing }: Spreadsheet, typed: string, sheet: string, refused: string[]): Landing {
  return (row, column) => {
    const taken = typing.taken({ sheet, row, column }, typed);
    if ("value" in taken) return taken.value;
    refused.push(`${areaName(cellArea(sheet, row, column))}: ${taken.refused}`);
    return typed;
  };
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
