import { IUndoRedoService, type Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { areaName, parseArea, type Area } from "../../host/address";
import type { BenchGrid } from "../../host/bench/benchGrid";
import { resolvePlace } from "../../host/places";
import type { Grid, NamedCells, Selected, Template } from "../../host/port";
import { contentOf } from "../reading/contents";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import { picturesOf, sizeOf } from "../reading/pictures";
import { storedSpills } from "../reading/cellSets";
import { sheetId } from "../reading/sheetId";
import { toGrid } from "../reading/toGrid";
import type { Picture } from "../saving/pictures";
import { Calculation } from "./calculation";
import { asCell } from "./content";
import { Edits, type Edit } from "./edits";
import { guard } from "./guard";
import { Locks } from "./locks";
import { GridModel, UNIT, type Result } from "./model";
import { PictureLayer } from "./pictureLayer";
import { Reasons } from "./reasons";
import { Signposts } from "./signposts";
import { keepWhatIsTyped, startUniver } from "./univer";

const SELECTS = new Set(["sheet.operation.set-selections", "sheet.operation.set-worksheet-active"]);
const ERROR_CODE = /^#(N\/A|NAME\?|REF!|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)$/;

/** What the page does for the grid. */
export interface GridPage {
  /** Opens a template with the care that unsaved work asks for. */
  open(template: Template): Promise<void>;
  refused(sentence: string): void;
}

/** The embedded spreadsheet with a workbook in it. */
export class EmbeddedGrid implements BenchGrid {
  private readonly univer: Univer;
  private readonly api: FUniver;
  private readonly model: GridModel;
  private readonly calculation: Calculation;
  private readonly pictures: PictureLayer;
  private readonly reasons = new Reasons();
  private readonly changeListeners = new Set<() => void>();
  private readonly selectListeners = new Set<() => void>();
  private locks = new Locks({ sheets: [] });
  private signposts = new Signposts({ sheets: [] });
  private edits = new Edits(
    () => "",
    () => "",
  );
  private current: OpenedWorkbook | undefined;
  /** Whether widths or heights were changed, which are not saved. */
  resized = false;

  constructor(
    private readonly container: HTMLElement,
    private readonly page: GridPage,
  ) {
    const { univer, api } = startUniver(container, this.reasons);
    this.univer = univer;
    this.api = api;
    this.model = new GridModel(univer, api);
    this.calculation = new Calculation(univer, api, this.model, () => this.changed());
    this.pictures = new PictureLayer(api);
    guard({
      api,
      sheetName: (id) => this.model.sheetName(id),
      isLocked: (area) => this.locks.isLocked(area),
      touched: (sheet, row, column) => {
        this.edits.touch(sheet, row, column);
        this.changed();
      },
      refused: page.refused,
      resized: () => (this.resized = true),
    });
    // The name box and the sheet tabs select too, and fire no event of their own for it.
    api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (SELECTS.has(id)) this.selectListeners.forEach((listener) => listener());
    });
    api.addEvent(api.Event.CellClicked, ({ worksheet, row, column }) => {
      const place = this.signposts.link(worksheet.getSheetName(), row, column);
      const area = place && resolvePlace(place, this.names());
      if (area) this.select(area);
    });
  }

  /** Shows a workbook in place of the one that is open, with `edits` and `pictures` already in it. */
  async show(opened: OpenedWorkbook, edits: readonly Edit[] = [], pictures: readonly Picture[] = []): Promise<void> {
    const data = toGrid(opened, this.container.clientWidth);
    const indexOf = (sheet: string): number => opened.workbook.sheets.findIndex(({ name }) => name === sheet);
    const dates1904 = opened.workbook.dateSystem === "1904";
    this.edits = new Edits(
      (sheet, row, column) => this.model.content(sheet, row, column),
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
    this.resized = false;
    this.locks = new Locks(opened.workbook);
    this.signposts = new Signposts(opened.workbook);
    this.calculation.begin(storedSpills(opened.workbook));
    this.api.createWorkbook(data);
    if (first) {
      this.calculation.listen();
      keepWhatIsTyped(this.univer);
    }
    await this.calculation.opened();
    this.pictures.clear();
    for (const picture of picturesOf(opened.workbook)) await this.pictures.show(picture, true);
    for (const picture of pictures) await this.pictures.show(picture);
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

  /** Pictures a person placed since the file was opened. */
  pictureList(): Promise<Picture[]> {
    return this.pictures.list();
  }

  get hasPictures(): boolean {
    return this.pictures.any;
  }

  results(): Result[] {
    return this.model.results();
  }

  names(): readonly NamedCells[] {
    return this.model.names();
  }

  hasSheet(sheet: string): boolean {
    return this.model.hasSheet(sheet);
  }

  values(area: Area): Grid {
    return this.model.values(area);
  }

  shown(area: Area): string[][] {
    return this.model.shown(area);
  }

  locked(area: Area): boolean {
    return this.locks.isLocked(area);
  }

  async write(changes: readonly { readonly area: Area; readonly values: Grid }[]): Promise<void> {
    const oneStep = this.univer.__getInjector().get(IUndoRedoService).__tempBatchingUndoRedo(UNIT);
    try {
      for (const { area, values } of changes) {
        const range = this.api.getActiveWorkbook()?.getSheetByName(area.sheet)?.getRange(rangeOf(area));
        range?.setValues(values.map((row) => row.map(asCell)));
      }
    } finally {
      oneStep.dispose();
    }
    await this.calculation.settled();
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
    const area = this.selectedArea();
    if (!area) return { sheet: "", address: "", value: "", formula: "" };
    const { sheet, top, left } = area;
    const value = this.values({ ...area, bottom: top, right: left })[0]?.[0] ?? "";
    const failed = typeof value === "string" && ERROR_CODE.test(value);
    const id = this.api.getActiveWorkbook()?.getActiveSheet().getSheetId() ?? "";
    const reason = failed ? this.reasons.of(id, top, left) : undefined;
    return { sheet, address: areaName(area), value, formula: this.model.formula(sheet, top, left), reason };
  }

  /** What belongs into the selected cell, as the file says it. */
  hint(): string | undefined {
    const area = parseArea(this.selected().address);
    return area && this.signposts.hint(area.sheet, area.top, area.left);
  }

  open(template: Template): Promise<void> {
    return this.page.open(template);
  }

  async placePicture(png: Uint8Array, title: string): Promise<string> {
    const { sheet, top: row, left: column } = this.selectedArea() ?? { sheet: "", top: 0, left: 0 };
    const { width, height } = await sizeOf(png);
    await this.pictures.show({ sheet, row, column, title, png, width, height });
    this.changed();
    return sheet;
  }

  recalculate(): Promise<void> {
    return this.calculation.again();
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

  private selectedArea(): Area | undefined {
    const workbook = this.api.getActiveWorkbook();
    const range = workbook?.getActiveRange()?.getRange();
    if (!workbook || !range) return undefined;
    const sheet = workbook.getActiveSheet().getSheetName();
    return { sheet, top: range.startRow, left: range.startColumn, bottom: range.endRow, right: range.endColumn };
  }

  private changed(): void {
    this.changeListeners.forEach((listener) => listener());
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
