import type { FUniver } from "@univerjs/core/facade";
import { areaName, type Area } from "../../xlsx/address";
import type { Selected } from "../../host/port";
import { Listeners } from "./listeners";
import type { GridModel } from "./model";
import { rangeOf } from "../work/rangeOf";
import type { Reasons } from "./reasons";

/** The name box and the sheet tabs select too, and fire no event of their own for it. */
const SELECTS = new Set(["sheet.operation.set-selections", "sheet.operation.set-worksheet-active"]);
const ERROR_CODE = /^#(N\/A|NAME\?|REF!|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)$/;
/** Rows and columns that stay in sight before a place that is gone to. */
const ABOVE = 3;
const BEFORE = 2;

/** The cells that are selected, and going to others. */
export class Selection {
  readonly moved = new Listeners();

  constructor(
    private readonly api: FUniver,
    private readonly model: GridModel,
    private readonly reasons: Reasons,
  ) {
    api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (SELECTS.has(id)) this.moved.tell();
    });
  }

  area(): Area | undefined {
    const workbook = this.api.getActiveWorkbook();
    const range = workbook?.getActiveRange()?.getRange();
    if (!workbook || !range) return undefined;
    const sheet = workbook.getActiveSheet().getSheetName();
    return { sheet, top: range.startRow, left: range.startColumn, bottom: range.endRow, right: range.endColumn };
  }

  /** Brings the sheet so many places on to the front, hidden ones passed over. */
  stepSheet(step: number): void {
    const workbook = this.api.getActiveWorkbook();
    const sheets = workbook?.getSheets().filter((sheet) => !sheet.isSheetHidden()) ?? [];
    const at = sheets.findIndex((sheet) => sheet.getSheetId() === workbook?.getActiveSheet().getSheetId());
    const next = sheets[(at + step + sheets.length) % sheets.length];
    if (next) workbook?.setActiveSheet(next);
  }

  /** Brings a sheet to the front. */
  showSheet(sheet: string): void {
    const workbook = this.api.getActiveWorkbook();
    const worksheet = workbook?.getSheetByName(sheet);
    if (workbook && worksheet && workbook.getActiveSheet().getSheetName() !== sheet) workbook.setActiveSheet(worksheet);
  }

  select(area: Area): void {
    this.api.getActiveWorkbook()?.getSheetByName(area.sheet)?.getRange(rangeOf(area)).activate();
  }

  goTo(area: Area): void {
    const workbook = this.api.getActiveWorkbook();
    const worksheet = workbook?.getSheetByName(area.sheet);
    if (!workbook || !worksheet) return;
    this.showSheet(area.sheet);
    this.select(area);
    worksheet.scrollToCell(Math.max(0, area.top - ABOVE), Math.max(0, area.left - BEFORE));
  }

  /** What is selected, with the value and formula of its first cell, and why that is in error. */
  read(): Selected {
    const area = this.area();
    if (!area) return { sheet: "", address: "", value: "", formula: "" };
    const { sheet, top, left } = area;
    const value = this.model.values({ ...area, bottom: top, right: left })[0]?.[0] ?? "";
    const failed = typeof value === "string" && ERROR_CODE.test(value);
    const id = this.api.getActiveWorkbook()?.getActiveSheet().getSheetId() ?? "";
    const reason = failed ? this.reasons.of(id, top, left) : undefined;
    return { sheet, address: areaName(area), value, formula: this.model.formula(sheet, top, left), reason };
  }
}
