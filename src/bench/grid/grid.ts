import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, IUniverInstanceService, type Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { ILayoutService, IRenderManagerService } from "@univerjs/preset-sheets-core";
import { parseArea } from "../../xlsx/address";
import { resolvePlace } from "../../host/places";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import { picturesOf } from "../reading/pictures";
import { toGrid } from "../reading/toGrid";
import type { Picture } from "../work/picture";
import { linkWorker } from "../calculation/link";
import { takeLook } from "../firstLook/begin";
import { Calculation } from "./calculation";
import type { Edit } from "../work/work";
import { Edits } from "./edits";
import { FreeCells } from "./freeCells";
import { guard } from "./guard";
import { keys } from "./keys";
import { Listeners } from "./listeners";
import { Locks } from "../reading/locks";
import { GridModel, UNIT } from "./model";
import { paste } from "./paste";
import { PictureLayer } from "./pictureLayer";
import { Reasons } from "./reasons";
import { Selection } from "./selection";
import { Signposts } from "./signposts";
import type { GridPage, Spreadsheet } from "./spreadsheet";
import { drawn, takeOver } from "./takeOver";
import { Typing } from "./typing";
import { checkFilledCells, forgetSheetsPutAway, keepWhatIsTyped, startUniver, takeDaysAsShown } from "./univer";
import { withEdits } from "./workingCopy";

/** What is shown: a file, and what was done to it since. */
export interface Shown {
  readonly opened: OpenedWorkbook;
  readonly edits?: readonly Edit[];
  readonly pictures?: readonly Picture[];
}

/** Told how far the showing is; may throw to stop it there. */
export type Stage = (words: string, part: number) => Promise<void>;

/** The embedded spreadsheet with a workbook in it. */
export class EmbeddedGrid implements Spreadsheet {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly model: GridModel;
  readonly calculation: Calculation;
  readonly pictures: PictureLayer;
  readonly selection: Selection;
  readonly typing: Typing;
  /** Told when a person changed something. */
  readonly changes = new Listeners();
  /** Told when what cells show is as it follows from the last change. */
  readonly results = new Listeners();
  locks = new Locks({ sheets: [] });
  private readonly freeCells = new FreeCells();
  private signposts = new Signposts({ sheets: [] });
  private edits = new Edits(
    () => "",
    () => "",
    () => undefined,
  );
  private current: OpenedWorkbook | undefined;
  /** Whether widths or heights were changed, which are not saved. */
  private resized = false;

  constructor(
    private readonly container: HTMLElement,
    readonly page: GridPage,
  ) {
    const reasons = new Reasons();
    // The library empties the element it is given, and something may stand there meanwhile.
    const inside = document.createElement("div");
    inside.className = "grid";
    container.append(inside);
    const { univer, api } = startUniver(inside);
    this.univer = univer;
    this.api = api;
    this.model = new GridModel(univer, api);
    this.calculation = new Calculation(
      univer,
      api,
      this.model,
      reasons,
      {
        finished: () => this.results.tell(),
        circles: page.circles,
        failed: (problem) => page.refused(`Results may be missing: ${problem}.`),
      },
      linkWorker,
    );
    this.typing = new Typing(univer, this.model);
    this.pictures = new PictureLayer(api);
    this.selection = new Selection(api, this.model, reasons);
    guard({
      api,
      sheetName: (id) => this.model.sheetName(id),
      isLocked: (area) => this.locks.isLocked(area),
      isBlank: (area) =>
        this.model
          .values(area)
          .flat()
          .every((value) => value === ""),
      touched: (sheet, cells) => {
        for (const { row, column } of cells) this.edits.touch(sheet, row, column);
        this.changes.tell();
      },
      refused: page.refused,
      paste: (clipboard) => paste(this, clipboard),
      resized: () => (this.resized = true),
    });
    keys(this);
    api.addEvent(api.Event.CellClicked, ({ worksheet, row, column }) => {
      const sheet = worksheet.getSheetName();
      const shown = (): string =>
        this.model.shown({ sheet, top: row, left: column, bottom: row, right: column })[0]?.[0] ?? "";
      const place = this.signposts.link(sheet, row, column, shown);
      const area = place && resolvePlace(place, this.model.names());
      if (area) this.selection.goTo(area);
    });
  }

  /** Shows a workbook in place of the one that is open, with what was done to it already in it. */
  async show({ opened, edits = [], pictures = [] }: Shown, stage: Stage = () => Promise.resolve()): Promise<void> {
    await stage("Laying out the sheets", 1);
    const data = toGrid(opened, this.container.clientWidth);
    await stage("Showing the sheets", 2);
    this.calculation.open(opened.bytes, edits);
    this.edits = withEdits(data, opened, edits, this.model);
    const first = this.current === undefined;
    if (!first) this.api.disposeUnit(UNIT);
    this.current = opened;
    this.resized = false;
    this.locks = new Locks(opened.workbook);
    this.signposts = new Signposts(opened.workbook);
    this.freeCells.begin(opened.workbook, data);
    this.typing.begin(opened.workbook);
    this.api.createWorkbook(data);
    this.calculation.showStored(opened.workbook);
    // Keys and the stack of undos go to the workbook that has the focus.
    this.univer.__getInjector().get(IUniverInstanceService).focusUnit(UNIT);
    if (first) {
      this.calculation.listen();
      this.typing.listen();
      this.freeCells.listen(this.univer);
      keepWhatIsTyped(this.univer);
      forgetSheetsPutAway(this.univer);
      checkFilledCells(this.univer);
      takeDaysAsShown(this.univer);
    }
    await stage("Placing the pictures", 3);
    this.pictures.clear();
    for (const picture of picturesOf(opened.workbook)) await this.pictures.show(picture, true);
    for (const picture of pictures) await this.pictures.show(picture);
    if (first) {
      await drawn(this);
      await takeOver(this, await takeLook());
    }
    this.changes.tell();
    this.results.tell();
    this.selection.moved.tell();
  }

  /** The file under the edits. */
  get opened(): OpenedWorkbook | undefined {
    return this.current;
  }

  /** What a person changed since the file was opened. */
  editList(): Edit[] {
    return this.edits.list();
  }

  /** Whether there is work that is not in the file. */
  get changed(): boolean {
    return this.edits.any || this.pictures.any;
  }

  /** Pictures a person placed since the file was opened. */
  pictureList(): Promise<Picture[]> {
    return this.pictures.list();
  }

  /** What a person did here that the saved file will not hold, in words. */
  async notSaved(): Promise<string[]> {
    return [
      ...(this.resized ? ["widths and heights changed here"] : []),
      ...((await this.pictures.fileTouched()) ? ["pictures of the file that were moved, resized or removed here"] : []),
    ];
  }

  /** How many formulas of the file are shown by their stored results, because the engine cannot work them out. */
  get unworkableCount(): number {
    return this.calculation.unworkableCount;
  }

  /** What belongs into the selected cell, as the file says it. */
  hint(): string | undefined {
    const area = parseArea(this.selection.read().address);
    return area && this.signposts.hint(area.sheet, area.top, area.left);
  }

  /** Takes the keyboard, at the selected cell. */
  focus(): void {
    const injector = this.univer.__getInjector();
    // The library gives the keyboard to the editor it used last, and to none before the first.
    injector.get(IUniverInstanceService).setCurrentUnitForType(DOCS_NORMAL_EDITOR_UNIT_ID_KEY);
    injector.get(ILayoutService).focus();
  }

  /** Whether the editor of cells is there, which comes some frames after the cells. */
  get takesKeys(): boolean {
    const render = this.univer.__getInjector().get(IRenderManagerService);
    return Boolean(render.getRenderById(DOCS_NORMAL_EDITOR_UNIT_ID_KEY));
  }

  undo(): void {
    void this.api.undo();
  }

  redo(): void {
    void this.api.redo();
  }
}
