import { HostRefusal, type WorkbookFile } from "../../host/port";
import { download, WORKBOOK } from "../../taskpane/download";
import { COPY_NAME } from "../../workbook/copy/copySheet";
import { FileRefusal, refuseSize } from "../../workbook/file/refusal";
import type { EmbeddedGrid } from "../grid/grid";
import { Listeners } from "../grid/listeners";
import { commitEntry } from "../grid/openEntry";
import { listed, unseenParts } from "../reading/unseen";
import { busy, Stopped } from "./busy";
import { OPENING_PARTS, SAVING_PARTS, type Job } from "./job";
import { ask, closeJobNotices, jobNotice, notice, refusal } from "./notices";

const SAVED_SECONDS = 6;

/** Opening and saving as a person asks for them: with care for what would be lost, progress, and a way to stop. */
export class Files {
  /** Told when another file was opened. */
  readonly opened = new Listeners();
  /** Makes a new job from a company book; there once the pane is. */
  newJobFrom: ((book: { readonly name: string; readonly bytes: Uint8Array }) => void) | undefined;

  constructor(
    private readonly grid: EmbeddedGrid,
    private readonly job: Job,
  ) {}

  /** Opens a file a person picked or dropped. */
  async openFile(file: File): Promise<void> {
    let bytes: Uint8Array;
    try {
      refuseSize(file.name, file.size);
      bytes = new Uint8Array(await file.arrayBuffer());
    } catch (error) {
      // The browser gives no reason: a folder was dropped, or the file is gone or locked by another program.
      const gone = `${file.name} cannot be read; if it is a folder, open the workbook in it.`;
      return refusal(error instanceof FileRefusal ? error.message : gone);
    }
    if (this.newJobFrom && (await isBook(bytes))) {
      const answers = ["New job from it", "Open the book itself", "Cancel"];
      const answer = await ask(`${file.name} is a company book.`, answers);
      if (answer === 0) return this.newJobFrom({ name: file.name, bytes });
      if (answer !== 1) return;
    }
    await this.openCarefully(file.name, bytes);
  }

  /** Opens after asking what becomes of changes that are in no file yet. */
  async openCarefully(fileName: string, bytes: Uint8Array): Promise<void> {
    if (!(await this.takeEntry())) return;
    if (this.job.unsaved) {
      const answers = ["Save it, then open", "Open without saving", "Cancel"];
      const answer = await ask(`${this.job.fileName} has changes that are in no file of yours yet.`, answers);
      if (answer < 0 || answer === 2) return;
      if (answer === 0 && !(await this.save())) return;
    }
    await this.openBytes(fileName, bytes);
  }

  /** Opens, and says what is wrong or unseen. */
  async openBytes(fileName: string, bytes: Uint8Array): Promise<void> {
    const first = this.grid.opened === undefined;
    try {
      await busy(OPENING_PARTS, (say) => this.job.open(fileName, bytes, say), !first);
    } catch (error) {
      if (error instanceof Stopped) return refusal(`${fileName} was not opened; ${this.job.fileName} is as it was.`);
      const why = error instanceof Error ? error.message : String(error);
      return refusal(error instanceof FileRefusal ? why : `${fileName} cannot be shown here: ${why}`);
    }
    closeJobNotices();
    this.opened.tell();
    void this.sayUnseen();
  }

  /**
   * Puts what is being typed into its cell before anything else is done with the job; false, and said, where the cell's
   * rule does not take it.
   */
  async takeEntry(): Promise<boolean> {
    const refused = await commitEntry(this.grid);
    if (refused !== undefined)
      refusal(`${refused} does not accept what you typed there. Correct it or press Esc, then go on.`);
    return refused === undefined;
  }

  /** Shows the job as it stood before its changes were dropped, after asking what becomes of newer ones. */
  async comeBackTo(before: Awaited<ReturnType<Job["snapshot"]>>): Promise<void> {
    if (this.job.unsaved) {
      const answers = ["Bring the dropped ones back", "Cancel"];
      const question = "What you changed since would go: the dropped changes come back in its place.";
      if ((await ask(question, answers)) !== 0) return;
    }
    await busy(OPENING_PARTS, (say) => this.job.comeBackTo(before, say), false);
    closeJobNotices();
  }

  /** The workbook as it stands, with what is being typed. */
  async current(): Promise<WorkbookFile> {
    if (!(await this.takeEntry())) throw new HostRefusal("Correct the entry first, then try again.");
    const bytes = await busy(SAVING_PARTS, (say) => this.job.file(say));
    return { name: this.job.fileName, bytes };
  }

  /** Saves to the downloads; false when it was not. */
  async save(): Promise<boolean> {
    const { job } = this;
    try {
      if (!(await this.takeEntry())) return false;
      const lost = await this.grid.notSaved();
      if (lost.length > 0) {
        const question = `The saved file will not hold ${listed(lost)}. Everything else is kept.`;
        if ((await ask(question, ["Save without them", "Cancel"])) !== 0) return false;
      }
      const bytes = await busy(SAVING_PARTS, (say) => job.file(say));
      download(job.fileName, bytes as BlobPart, WORKBOOK);
    } catch (error) {
      const why = error instanceof Stopped ? "you stopped it" : error instanceof Error ? error.message : String(error);
      refusal(`${job.fileName} was not saved: ${why}. Your work is still here.`);
      return false;
    }
    job.markSaved();
    notice(`${job.fileName} was saved to your downloads.`, [], SAVED_SECONDS);
    return true;
  }

  /** Prints the sheet in sight, under the job's name. */
  async print(): Promise<void> {
    if (!(await this.takeEntry())) return;
    const { printSheet } = await import("../printing/printSheet");
    await printSheet(this.grid, this.job.fileName.replace(/\.xlsx$/i, ""));
  }

  /** What a file of a person's own holds that the bench keeps and does not show. */
  private async sayUnseen(): Promise<void> {
    const { opened } = this.grid;
    if (!opened) return;
    const names = new Set(this.grid.model.names().map(({ name }) => name));
    if (names.has(COPY_NAME)) {
      const { copyMadeAt } = await import("../../workbook/copy/valuesCopy");
      const made = copyMadeAt(opened.bytes);
      if (this.grid.opened === opened && made !== undefined)
        jobNotice(`This is a copy of values made ${made}: it holds no formulas, so nothing in it follows a change.`);
      return;
    }
    if (names.has("Checks")) return;
    // What cannot be worked out comes with the first results.
    await this.grid.calculation.settled();
    if (this.grid.opened !== opened) return;
    const unseen = unseenParts(opened.bytes);
    const unknown = this.grid.unworkableCount;
    const sentences = [
      unseen.length > 0 ? `Kept in the file, but not shown here: ${listed(unseen)}.` : "",
      unknown > 0
        ? `${unknown} formulas use what the bench cannot work out; they show their results from the file, and changes do not reach them.`
        : "",
    ].filter(Boolean);
    if (sentences.length > 0) jobNotice(sentences.join(" "));
  }
}

async function isBook(bytes: Uint8Array): Promise<boolean> {
  const { isCompanyBook } = await import("../../workbook/company/isBook");
  return isCompanyBook(bytes);
}
