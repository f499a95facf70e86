import {
  IUndoRedoService,
  type ICellData,
  type Nullable,
  type Univer,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { areaName, type Area } from "../../host/address";
import type { BenchGrid } from "../../host/bench/benchGrid";
import { namedCells } from "../../host/places";
import type { Grid, NamedCells, Selected, Template } from "../../host/port";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import { contentOf } from "../reading/contents";
import { sheetId, toGrid } from "../reading/toGrid";
import { asCell, shownValue, type Content } from "./content";
import { Edits, type Edit } from "./edits";
import { guard } from "./guard";
import { Locks } from "./locks";
import { Reasons } from "./reasons";
import { startUniver } from "./univer";

/** What a formula cell came to, for saving: the stored result, and the cells it spills over. */
export interface Result {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  /** One cell, or the rows of a spill. */
  readonly values: Grid;
}

const UNIT = "bench";
const SELECTS = new Set(["sheet.operation.set-selections", "sheet.operation.set-worksheet-active"]);
const ERROR_CODE = /^#(N\/A|NAME\?|REF!|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)$/;

/** The embedded spreadsheet with a workbook in it. */
export class EmbeddedGrid implements BenchGrid {
  private readonly univer: Univer;
  private readonly api: FUniver;
  private readonly reasons = new Reasons();
  private readonly changeListeners = new Set<() => void>();
  private readonly selectListeners = new Set<() => void>();
  private locks = new Locks({ sheets: [] });
  private edits = new Edits(
    () => "",
    () => "",
  );
  private current: OpenedWorkbook | undefined;

  /** How a template is opened; the page keeps the job and asks about unsaved work. */
  openAs: (fileName: string, bytes: Uint8Array) => Promise<void> = () => Promise.resolve();

  constructor(
    container: HTMLElement,
    private readonly pictures: { add(png: Uint8Array, title: string, at: Area): Promise<void> },
    refused: (sentence: string) => void,
  ) {
    const { univer, api } = startUniver(container, this.reasons);
    this.univer = univer;
    this.api = api;
    guard({
      api,
      sheetName: (id) => this.book.getSheetBySheetId(id)?.getName() ?? "",
      isLocked: (area) => this.locks.isLocked(area),
      touched: (sheet, row, column) => {
        this.edits.touch(sheet, row, column);
        this.changed();
      },
      refused,
    });
    // The name box and the sheet tabs select too, and fire no event of their own for it.
    api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (SELECTS.has(id)) this.selectListeners.forEach((listener) => listener());
    });
  }

  /** Shows a workbook in place of the one that is open, with `edits` already typed into it. */
  async show(opened: OpenedWorkbook, edits: readonly Edit[] = []): Promise<void> {
    const data = toGrid(opened);
    const indexOf = (sheet: string): number => opened.workbook.sheets.findIndex(({ name }) => name === sheet);
    const dates1904 = opened.workbook.dateSystem === "1904";
    this.edits = new Edits(
      (sheet, row, column) => this.content(sheet, row, column),
      (sheet, row, column) => contentOf(opened.workbook.sheets[indexOf(sheet)], row, column, dates1904),
    );
    for (const { sheet, row, column, content } of edits) {
      const rows = data.sheets[sheetId(indexOf(sheet))]?.cellData;
      if (!rows) continue;
      const cells = (rows[row] ??= {});
      cells[column] = { ...cells[column], ...asCell(content) };
      this.edits.touch(sheet, row, column);
    }
    const first = this.current === undefined;
    if (!first) this.api.disposeUnit(UNIT);
    this.current = opened;
    this.locks = new Locks(opened.workbook);
    this.api.createWorkbook(data);
    // The engine can be listened to only once it has had a workbook.
    if (first) this.api.getFormula().calculationResultApplied(() => this.changed());
    await this.settled();
    this.changed();
    this.selectListeners.forEach((listener) => listener());
  }

  /** The file under the edits. */
  get opened(): OpenedWorkbook | undefined {
    return this.current;
  }

  /** What a person changed since the file was opened. */
  editList(): Edit[] {
    return this.edits.list();
  }

  /** Every formula's result. */
  results(): Result[] {
    const results: Result[] = [];
    const spills = this.univer.__getInjector().get(FormulaDataModel).getArrayFormulaRange()[UNIT] ?? {};
    for (const worksheet of this.book.getSheets()) {
      const sheet = worksheet.getName();
      const spilled = spills[worksheet.getSheetId()];
      worksheet.getCellMatrix().forValue((row, column, cell) => {
        const formula = this.formulaOf(worksheet, row, column, cell);
        if (formula === "") return;
        const area = spilled?.[row]?.[column];
        const values = this.values({
          sheet,
          top: row,
          left: column,
          bottom: area?.endRow ?? row,
          right: area?.endColumn ?? column,
        });
        results.push({ sheet, row, column, formula, values });
      });
    }
    return results;
  }

  names(): readonly NamedCells[] {
    return (this.api.getActiveWorkbook()?.getDefinedNames() ?? []).map((name) =>
      namedCells(name.getName(), name.getFormulaOrRefString()),
    );
  }

  hasSheet(sheet: string): boolean {
    return this.book.getSheetBySheetName(sheet) !== null;
  }

  values({ sheet, top, left, bottom, right }: Area): Grid {
    const worksheet = this.sheet(sheet);
    const spilled = this.univer.__getInjector().get(FormulaDataModel).getArrayFormulaCellData()[UNIT]?.[
      worksheet.getSheetId()
    ];
    const rows: (string | number | boolean)[][] = [];
    for (let row = top; row <= bottom; row++) {
      const cells: (string | number | boolean)[] = [];
      for (let column = left; column <= right; column++) {
        const own = shownValue(worksheet.getCellRaw(row, column));
        cells.push(own === "" ? shownValue(spilled?.[row]?.[column]) : own);
      }
      rows.push(cells);
    }
    return rows;
  }

  locked(area: Area): boolean {
    return this.locks.isLocked(area);
  }

  async write(changes: readonly { readonly area: Area; readonly values: Grid }[]): Promise<void> {
    const batch = this.univer.__getInjector().get(IUndoRedoService).__tempBatchingUndoRedo(UNIT);
    try {
      for (const { area, values } of changes) {
        const range = this.api.getActiveWorkbook()?.getSheetByName(area.sheet)?.getRange(rangeOf(area));
        range?.setValues(values.map((row) => row.map(asCell)));
      }
    } finally {
      batch.dispose();
    }
    await this.settled();
  }

  select(area: Area): void {
    const workbook = this.api.getActiveWorkbook();
    const worksheet = workbook?.getSheetByName(area.sheet);
    if (!workbook || !worksheet) return;
    if (workbook.getActiveSheet().getSheetName() !== area.sheet) workbook.setActiveSheet(worksheet);
    worksheet.getRange(rangeOf(area)).activate();
    worksheet.scrollToCell(Math.max(0, area.top - 3), Math.max(0, area.left - 2));
  }

  selected(): Selected {
    const workbook = this.api.getActiveWorkbook();
    const range = workbook?.getActiveRange()?.getRange();
    const worksheet = workbook?.getActiveSheet();
    if (!range || !worksheet) return { sheet: "", address: "", value: "", formula: "" };
    const sheet = worksheet.getSheetName();
    const area = { sheet, top: range.startRow, left: range.startColumn, bottom: range.endRow, right: range.endColumn };
    const value = this.values({ ...area, bottom: area.top, right: area.left })[0]?.[0] ?? "";
    const formula = this.formulaOf(
      this.sheet(sheet),
      area.top,
      area.left,
      this.sheet(sheet).getCellRaw(area.top, area.left),
    );
    const failed = typeof value === "string" && ERROR_CODE.test(value);
    const reason = failed ? this.reasons.of(worksheet.getSheetId(), area.top, area.left) : undefined;
    return { sheet, address: areaName(area), value, formula, reason };
  }

  open({ file, bytes }: Template): Promise<void> {
    return this.openAs(file, bytes);
  }

  async placePicture(png: Uint8Array, title: string): Promise<string> {
    const { sheet } = this.selected();
    const range = this.api.getActiveWorkbook()?.getActiveRange()?.getRange();
    const top = range?.startRow ?? 0;
    const left = range?.startColumn ?? 0;
    await this.pictures.add(png, title, { sheet, top, left, bottom: top, right: left });
    return sheet;
  }

  async recalculate(): Promise<void> {
    this.api.getFormula().executeCalculation();
    await this.settled();
  }

  undo(): void {
    void this.api.undo();
  }

  redo(): void {
    void this.api.redo();
  }

  dark(): boolean {
    return matchMedia("(prefers-color-scheme: dark)").matches;
  }

  onChange(listener: () => void): () => void {
    this.changeListeners.add(listener);
    return () => this.changeListeners.delete(listener);
  }

  onSelect(listener: () => void): () => void {
    this.selectListeners.add(listener);
    return () => this.selectListeners.delete(listener);
  }

  private get book(): Workbook {
    const workbook = this.api.getActiveWorkbook()?.getWorkbook();
    if (!workbook) throw new Error("no workbook is open");
    return workbook;
  }

  private sheet(name: string): Worksheet {
    const worksheet = this.book.getSheetBySheetName(name);
    if (!worksheet) throw new Error(`no sheet ${name}`);
    return worksheet;
  }

  private content(sheet: string, row: number, column: number): Content {
    const worksheet = this.sheet(sheet);
    const cell = worksheet.getCellRaw(row, column);
    return this.formulaOf(worksheet, row, column, cell) || shownValue(cell);
  }

  private formulaOf(worksheet: Worksheet, row: number, column: number, cell: Nullable<ICellData>): string {
    if (!cell?.f && !cell?.si) return "";
    const model = this.univer.__getInjector().get(FormulaDataModel);
    return model.getFormulaStringByCell(row, column, worksheet.getSheetId(), UNIT) ?? cell.f ?? "";
  }

  private changed(): void {
    this.changeListeners.forEach((listener) => listener());
  }

  private settled(): Promise<void> {
    return this.api.getFormula().onCalculationResultApplied();
  }
}

function rangeOf({ top, left, bottom, right }: Area): {
  startRow: number;
  startColumn: number;
  endRow: number;
  endColumn: number;
} {
  return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
}
