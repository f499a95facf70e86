import type { Worksheet } from "@univerjs/core";
import type { Sheet } from "hucre";
import { lookLike } from "../firstLook/cellLook";
import { columnWidths } from "../firstLook/columnWidths";
import type { EmbeddedGrid } from "../grid/grid";
import { USUAL } from "../reading/sizes";
import { planPages, type PagePlan } from "./pageSetup";

/** A sheet on its way to paper. */
interface Printed {
  readonly grid: EmbeddedGrid;
  readonly worksheet: Worksheet;
  readonly sheet: Sheet;
  readonly plan: PagePlan;
  /** In pixels; 0 for a hidden row. */
  heightOf(row: number): number;
}

/** Prints the sheet in sight by the browser's own print: its print area, page breaks and titles, under the job's name. */
export async function printSheet(grid: EmbeddedGrid, title: string): Promise<void> {
  const worksheet = grid.api.getActiveWorkbook()?.getActiveSheet().getSheet();
  const sheet = grid.opened?.workbook.sheets.find(({ name }) => name === worksheet?.getName());
  if (!worksheet || !sheet) return;
  await grid.calculation.settled();
  // As the file has them: the grid grows rows in ways of its own, and what would not fit grows on paper anyway.
  const usual = (grid.opened?.usual.get(sheet.name) ?? USUAL).row;
  const heightOf = (row: number): number => {
    const { height, hidden } = sheet.rowDefs?.get(row) ?? {};
    return hidden ? 0 : height ? (height * 96) / 72 : usual;
  };
  const plan = planPages(sheet, filledArea(worksheet), (area) => ({
    wide: sum(area.left, area.right, (column) => worksheet.getColumnWidth(column)),
    high: sum(area.top, area.bottom, (row) => heightOf(row)),
  }));
  const paper = document.createElement("div");
  paper.className = "paper";
  paper.append(...tablesOf({ grid, worksheet, sheet, plan, heightOf }));
  const style = document.createElement("style");
  const [top, right, bottom, left] = plan.margins;
  style.textContent = `@page { size: ${plan.paper} ${plan.landscape ? "landscape" : "portrait"}; margin: ${top}in ${right}in ${bottom}in ${left}in; }`;
  const before = document.title;
  document.title = title;
  document.body.append(paper, style);
  document.body.classList.add("printing");
  const done = new Promise<void>((resolve) => window.addEventListener("afterprint", () => resolve(), { once: true }));
  try {
    window.print();
    await done;
  } finally {
    document.body.classList.remove("printing");
    paper.remove();
    style.remove();
    document.title = before;
  }
}

function sum(from: number, to: number, of: (index: number) => number): number {
  let all = 0;
  for (let index = from; index <= to; index++) all += of(index);
  return all;
}

/** What a sheet without a print area holds. */
function filledArea(worksheet: Worksheet): PagePlan["area"] {
  let [bottom, right] = [0, 0];
  worksheet.getCellMatrix().forValue((row, column) => {
    const { v } = worksheet.getCell(row, column) ?? {};
    if (v === undefined || v === null || v === "") return;
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  });
  return { top: 0, left: 0, bottom, right };
}

/** The rows before those that head every page, and the rest under them. */
function tablesOf(printed: Printed): HTMLTableElement[] {
  const { grid, worksheet, sheet, plan, heightOf } = printed;
  const { area, titles } = plan;
  const shown = grid.model.shown({ sheet: sheet.name, ...area });
  const widths = Array.from({ length: area.right - area.left + 1 }, (_, across) =>
    worksheet.getColumnWidth(area.left + across),
  );
  const rowAt = (row: number): HTMLTableRowElement => rowOf(printed, row, shown[row - area.top] ?? []);
  const table = (heads: readonly number[], from: number, to: number): HTMLTableElement => {
    const element = document.createElement("table");
    element.style.zoom = String(plan.scale);
    element.style.width = `${widths.reduce((all, width) => all + width, 0)}px`;
    element.append(columnWidths(widths));
    if (heads.length > 0) element.createTHead().append(...heads.map(rowAt));
    const body = element.createTBody();
    for (let row = from; row <= to; row++) if (heightOf(row) > 0) body.append(rowAt(row));
    return element;
  };
  if (!titles || titles.first < area.top || titles.last >= area.bottom) return [table([], area.top, area.bottom)];
  const heads = Array.from({ length: titles.last - titles.first + 1 }, (_, index) => titles.first + index);
  const rest = table(heads, titles.last + 1, area.bottom);
  if (titles.first === area.top) return [rest];
  if (plan.breaks.has(titles.first)) rest.style.breakBefore = "page";
  return [table([], area.top, titles.first - 1), rest];
}

function rowOf({ worksheet, plan, heightOf }: Printed, row: number, texts: readonly string[]): HTMLTableRowElement {
  const { area, breaks } = plan;
  const line = document.createElement("tr");
  line.style.height = `${heightOf(row)}px`;
  if (breaks.has(row) && row > area.top) line.style.breakBefore = "page";
  for (let column = area.left; column <= area.right; column++) {
    const merged = worksheet.getMergedCell(row, column);
    if (merged && (merged.startRow !== row || merged.startColumn !== column)) continue;
    const cell = document.createElement("td");
    // As it is drawn: with the looks that rules give it.
    const held = worksheet.getCell(row, column);
    const look = worksheet.getComposedCellStyleByCellData(row, column, held);
    cell.textContent = texts[column - area.left] ?? "";
    lookLike(cell, look, typeof held?.v === "number");
    if (merged) {
      cell.rowSpan = merged.endRow - merged.startRow + 1;
      cell.colSpan = Math.min(merged.endColumn, area.right) - merged.startColumn + 1;
    }
    line.append(cell);
  }
  return line;
}
