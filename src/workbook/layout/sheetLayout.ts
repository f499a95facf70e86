import type { Ref } from "./address";
import { blankInputs } from "./blankInputs";
import { addChart } from "./charts";
import type { ChartSpec } from "./chartSpec";
import { addChecks } from "./checks";
import { addResult, addResults, type ResultRow, type ResultSpec } from "./forms";
import type { InputSpec } from "./inputSpec";
import { addInput } from "./inputs";
import type { Both, CheckSpec, Job, RateLine, TakeoffLine } from "./job";
import { Page } from "./page";
import { lastPrintedColumn, pageBreaks } from "./paging";
import { addSignposts, columnsFor } from "./signposts";
import { addSpill, type SpillRef, type SpillSpec } from "./spills";
import { STYLE } from "./style";
import type { TableRef } from "./tableRef";
import { addTable, type TableSpec } from "./tables";

export interface PrintSpec {
  readonly landscape?: boolean;
  /** Fit into this many pages in height; otherwise as many as it takes. */
  readonly pagesHigh?: number;
  /** Rows repeated at the top of every page. */
  readonly titleRows?: readonly [number, number];
  /** The page has a letterhead of its own: no running head. */
  readonly plain?: boolean;
  /** The last column to print; those right of it are for the screen. */
  readonly lastColumn?: number;
}

/** Height of the row between sections, in points. */
const GAP = 9;

/** What a sheet's `build` is given. Helpers write at `s.row` and move it down. */
export class SheetLayout extends Page {
  private readonly ownChecks: CheckSpec[] = [];
  private readonly sectionRows: number[] = [];
  private checked = false;
  /** The last column of the title; a sheet with a letterhead has none. */
  private titleEnd?: number;

  constructor(name: string, job: Job) {
    super(name, job);
  }

  /** Columns of the sheet, in characters; call it first. Column 1 is labels, 2 values, 3 units. */
  widths(widths: readonly number[]): void {
    this.sheet.widths.splice(0, this.sheet.widths.length, ...widths);
  }

  /**
   * The sheet's heading, with one sentence that says what to do here; freezes the heading. A sheet of many amounts says
   * here in which money they are, as a statement of accounts does, and none of them says it again.
   */
  title(text: string, subtitle: string, { amounts = false } = {}): void {
    this.purpose = subtitle;
    this.saysCurrency = amounts;
    // No wider than its words: the links stand beside it.
    this.titleEnd = columnsFor(this.sheet, 1, text, STYLE.title);
    this.put(this.row, 1, { value: text, style: "title", across: this.titleEnd });
    this.sheet.heights.set(this.row, 26);
    if (amounts) this.subtitleWithCurrency(`${subtitle} Amounts are in `);
    else this.textAcross(this.row + 1, 1, this.lastColumn, subtitle, "subtitle");
    this.sheet.heights.set(this.row + 2, GAP);
    this.row += 3;
    if (this.sheet.freeze.rows === 0) this.sheet.freeze.rows = 2;
  }

  private subtitleWithCurrency(text: string): void {
    const [row, across] = [this.row + 1, this.lastColumn];
    this.fitHeight(row, `${text}USD.`, this.charactersAcross(1, across));
    this.put(row, 1, { formula: `="${text}"&Currency&"."`, style: "subtitle", across });
  }

  /** A heading over a group of rows. */
  section(text: string): void {
    if (this.row > 4) this.sheet.heights.set(this.row++, GAP);
    this.sectionRows.push(this.row);
    this.sectionTitle = text;
    this.put(this.row, 1, { value: text, style: "section", across: this.lastColumn });
    this.sheet.heights.set(this.row, 19);
    this.row++;
  }

  /** Lays out within the sheet's first columns, so that something else may stand beside it. */
  within(columns: number, build: () => void): void {
    this.blockEnd = columns;
    build();
    this.blockEnd = undefined;
  }

  /** A remark in plain text. */
  note(text: string): void {
    this.textAcross(this.row, 1, this.lastColumn, text, "note");
    this.row++;
  }

  /** What can kill or maim, set where the number is read. The words of the two ranks are those of ANSI Z535.6 (from memory). */
  caution(text: string): void {
    this.textAcross(this.row, 1, this.lastColumn, `WARNING: ${text}`, "caution");
    this.row++;
  }

  /** What costs money or work, in a box without the red of the other rank. */
  notice(text: string): void {
    this.textAcross(this.row, 1, this.lastColumn, `NOTICE: ${text}`, "notice");
    this.row++;
  }

  input(spec: InputSpec): Ref {
    return addInput(this, spec);
  }

  result(spec: ResultSpec): Ref {
    return addResult(this, spec);
  }

  /** Results below each other that one formula gives. */
  results(formula: string, rows: readonly ResultRow[], source?: Both<string>): Ref[] {
    return addResults(this, formula, rows, source);
  }

  table(spec: TableSpec): TableRef {
    return addTable(this, spec);
  }

  spill(spec: SpillSpec): SpillRef {
    return addSpill(this, spec);
  }

  skip(rows = 1): void {
    this.row += rows;
  }

  /** Contributes a check; all of a sheet's checks are laid out at its end, and listed on Start. */
  check(spec: CheckSpec): void {
    this.ownChecks.push(spec);
  }

  /** Contributes a line to Takeoff. */
  takeoff(line: TakeoffLine): void {
    this.job.takeoffLines.push({ ...line, sheet: this.name });
  }

  /** Contributes a line to Rates. */
  rate(line: RateLine): void {
    this.job.rateLines.push(line);
  }

  /** A row that leads to another place when clicked. */
  link(text: string, target: string): void {
    this.put(this.row, 1, { value: text, style: "link", link: target });
    this.row++;
  }

  /** Links to Start and to the next sheet. The builder of the workbook calls it. */
  signposts(toStart: boolean, next: string | undefined): void {
    addSignposts(this, this.titleEnd, [
      ...(toStart ? [["Start", "Start"] as const] : []),
      ...(next === undefined ? [] : [[`Next: ${next}`, next] as const]),
    ]);
  }

  chart(spec: ChartSpec): void {
    addChart(this, spec);
  }

  print(spec: PrintSpec): void {
    this.sheet.print = {
      ...this.sheet.print,
      landscape: spec.landscape ?? false,
      pagesHigh: spec.pagesHigh ?? 0,
      ...(spec.titleRows ? { titleRows: spec.titleRows } : {}),
      ...(spec.plain ? { plain: true } : {}),
      ...(spec.lastColumn ? { lastColumn: spec.lastColumn } : {}),
    };
  }

  freeze(rows: number, columns = 0): void {
    this.sheet.freeze.rows = rows;
    this.sheet.freeze.columns = columns;
  }

  /** Lets a person filter a list by its headings, which stand in this row. */
  filter(head: number, left: number, bottom: number, right: number): void {
    this.sheet.filter = { top: head, left, bottom, right };
  }

  /** Lets a person put pictures here: what the protection of a sheet keeps safe is not in their way. */
  takesPictures(): void {
    this.sheet.pictures = true;
  }

  /** A new page begins here. */
  pageBreak(): void {
    this.sheet.print = { ...this.sheet.print, breaks: [...this.sheet.print.breaks, this.row - 1] };
  }

  /** What follows is for formulas and charts to read: it stands on the sheet and is not printed. */
  notPrinted(): void {
    this.sheet.print = { ...this.sheet.print, lastRow: this.row - 1 };
  }

  /** What follows is for charts alone: nothing is priced from it. */
  forCharts(): void {
    this.pricedRows = this.row - 1;
  }

  /** Lays out the checks here, the one for blank inputs among them; a sheet that ends with a growing table calls it before. */
  checksHere(): void {
    this.checked = true;
    const checks = [...blankInputs(this), ...this.ownChecks];
    if (checks.length === 0) return;
    this.section(`Checks of ${this.name}`);
    addChecks(this, checks);
  }

  /** Columns beside the paper get their widths once all is laid out: what spans the page ends where it did. */
  private addBesidePaper(): void {
    if (this.besidePaper.size === 0) return;
    this.sheet.print = { ...this.sheet.print, lastColumn: lastPrintedColumn(this.sheet) };
    for (const [column, width] of this.besidePaper) this.sheet.widths[column - 1] ??= width;
  }

  /** Lays out the checks where that is still to do, and plans the pages. The builder of the workbook calls it. */
  finish(): void {
    if (!this.checked) this.checksHere();
    this.addBesidePaper();
    this.sheet.print = { ...this.sheet.print, breaks: pageBreaks(this.sheet, this.sectionRows) };
  }
}
