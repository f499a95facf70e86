import {
  IUniverInstanceService,
  UniverInstanceType,
  type ICellData,
  type Nullable,
  type Univer,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area } from "../../xlsx/address";
import { namedCells } from "../../host/places";
import type { CellValue, Grid, NamedCells } from "../../host/port";
import { shownValue, type Content } from "../work/content";
import type { Result } from "../work/work";

/** The form of numbers that have none. */
export const GENERAL = "General";

/** The id of the one workbook the grid holds. */
export const UNIT = "bench";

/** Reads the workbook in the embedded spreadsheet: typed cells, results, and what spills over from others. */
export class GridModel {
  private lastSheet: Worksheet | undefined;

  constructor(
    private readonly univer: Univer,
    private readonly api: FUniver,
  ) {}

  names(): readonly NamedCells[] {
    const names = this.api.getActiveWorkbook()?.getDefinedNames() ?? [];
    return names.map((name) => namedCells(name.getName(), name.getFormulaOrRefString()));
  }

  hasSheet(sheet: string): boolean {
    return Boolean(this.book.getSheetBySheetName(sheet));
  }

  sheetId(name: string): string {
    return this.sheet(name).getSheetId();
  }

  sheetName(id: string): string {
    return this.book.getSheetBySheetId(id)?.getName() ?? "";
  }

  values({ sheet, top, left, bottom, right }: Area): Grid {
    const worksheet = this.sheet(sheet);
    const spilled = this.formulas.getArrayFormulaCellData()[UNIT]?.[worksheet.getSheetId()];
    const rows: CellValue[][] = [];
    for (let row = top; row <= bottom; row++) {
      const cells: CellValue[] = [];
      for (let column = left; column <= right; column++) {
        const own = shownValue(worksheet.getCellRaw(row, column));
        cells.push(own === "" ? shownValue(spilled?.[row]?.[column]) : own);
      }
      rows.push(cells);
    }
    return rows;
  }

  size(sheet: string): { readonly rows: number; readonly columns: number } {
    const worksheet = this.sheet(sheet);
    return { rows: worksheet.getRowCount(), columns: worksheet.getColumnCount() };
  }

  /** Whether the cells are one that is laid over all of them. */
  merged({ sheet, top, left, bottom, right }: Area): boolean {
    const one = this.sheet(sheet).getMergedCell(top, left);
    return one?.startRow === top && one.startColumn === left && one.endRow === bottom && one.endColumn === right;
  }

  /** What the cells show, as text in their own format. */
  shown({ sheet, top, left, bottom, right }: Area): string[][] {
    const range = { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
    return this.api.getActiveWorkbook()?.getSheetByName(sheet)?.getRange(range).getDisplayValues() ?? [];
  }

  /** What a person put into a cell: its formula, or its value. */
  content(sheet: string, row: number, column: number): Content {
    return this.formula(sheet, row, column) || shownValue(this.sheet(sheet).getCellRaw(row, column));
  }

  /** The form of numbers or days of a cell, where it has one of its own. */
  form(sheet: string, row: number, column: number): string | undefined {
    const pattern = this.book.getStyles().getStyleByCell(this.sheet(sheet).getCellRaw(row, column))?.n?.pattern;
    return pattern === GENERAL ? undefined : pattern;
  }

  /** The formula of a cell with its "=", or "". */
  formula(sheet: string, row: number, column: number): string {
    const worksheet = this.sheet(sheet);
    return this.formulaOf(worksheet, row, column, worksheet.getCellRaw(row, column));
  }

  /** The formulas of an area's cells, "" where a cell holds none of its own. */
  formulasIn({ sheet, top, left, bottom, right }: Area): string[][] {
    return Array.from({ length: bottom - top + 1 }, (_, down) =>
      Array.from({ length: right - left + 1 }, (_, across) => this.formula(sheet, top + down, left + across)),
    );
  }

  /** Every formula's result. */
  results(): Result[] {
    const results: Result[] = [];
    const spills = this.formulas.getArrayFormulaRange()[UNIT];
    for (const worksheet of this.book.getSheets()) {
      const sheet = worksheet.getName();
      const spilled = spills?.[worksheet.getSheetId()];
      worksheet.getCellMatrix().forValue((row, column, cell) => {
        const formula = this.formulaOf(worksheet, row, column, cell);
        if (formula === "") return;
        const area = spilled?.[row]?.[column];
        const bottom = area?.endRow ?? row;
        const right = area?.endColumn ?? column;
        const values = this.values({ sheet, top: row, left: column, bottom, right });
        results.push({ sheet, row, column, formula, values });
      });
    }
    return results;
  }

  /** The cells, as "row,column", that the formula of a cell spills over, without its own. */
  spilledFrom(sheet: string, row: number, column: number): string[] {
    const area = this.formulas.getArrayFormulaRange()[UNIT]?.[this.sheetId(sheet)]?.[row]?.[column];
    if (!area) return [];
    const keys: string[] = [];
    for (let r = area.startRow; r <= area.endRow; r++) {
      for (let c = area.startColumn; c <= area.endColumn; c++) if (r !== row || c !== column) keys.push(`${r},${c}`);
    }
    return keys;
  }

  /** Asked for once for every cell that is read, so not by way of the facade, which makes a new one each time. */
  private get book(): Workbook {
    const workbook = this.univer
      .__getInjector()
      .get(IUniverInstanceService)
      .getUnit<Workbook>(UNIT, UniverInstanceType.UNIVER_SHEET);
    if (!workbook) throw new Error("no workbook is open");
    return workbook;
  }

  private get formulas(): FormulaDataModel {
    return this.univer.__getInjector().get(FormulaDataModel);
  }

  /** Asked for once for every cell that is read, too; the library looks through all sheets for a name. */
  private sheet(name: string): Worksheet {
    const { book } = this;
    const last = this.lastSheet;
    if (last?.getName() === name && book.getSheetBySheetId(last.getSheetId()) === last) return last;
    const worksheet = book.getSheetBySheetName(name);
    if (!worksheet) throw new Error(`no sheet ${name}`);
    this.lastSheet = worksheet;
    return worksheet;
  }

  private formulaOf(worksheet: Worksheet, row: number, column: number, cell: Nullable<ICellData>): string {
    if (!cell?.f && !cell?.si) return "";
    return this.formulas.getFormulaStringByCell(row, column, worksheet.getSheetId(), UNIT) ?? cell.f ?? "";
  }
}
