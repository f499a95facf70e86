import { resolvePlace } from "../../host/places";
import type { EmbeddedGrid, Shown } from "../grid/grid";
import { firstDraft, holdsWork, pageKeeper, type Draft, type Work } from "../keeping/draft";
import { openWorkbook } from "../reading/openWorkbook";
import { fileNameOf } from "../saving/fileName";
import { yoursName } from "../../workbook/yoursName";
import type { Picture } from "../work/picture";
import { missingIn } from "../saving/readBack";
import { saveWorkbook } from "../saving/saveWorkbook";
import type { Say } from "./busy";

/** After an edit is kept, those that follow at once are kept together, and so is what came of them. */
const KEEP_AFTER = 120;
/** Steps that opening a workbook tells of. */
export const OPENING_PARTS = 4;
/** Steps that saving one tells of. */
export const SAVING_PARTS = 4;

/** The job on the bench: the open file, what was changed, and where it is kept. */
export class Job {
  private saved = true;
  /** What the last written file holds, to tell a change of the job from a result that came in later. */
  private written = "";
  private timer: ReturnType<typeof setTimeout> | undefined;
  private again = false;
  private opening = false;
  /** Whether the last attempt to keep the job failed. */
  private lost = false;
  /** The pictures when they were last looked at; asking for them takes a turn that a closing page does not have. */
  private pictures: readonly Picture[] = [];
  readonly keeper = pageKeeper;

  constructor(
    private readonly grid: EmbeddedGrid,
    /** Told whenever the job was kept, or, with a sentence, that it could not be. */
    private readonly kept: (problem?: string) => void,
  ) {
    grid.changes.add(() => this.schedule());
  }

  /** Whether there is work that is in no file of the user's. */
  get unsaved(): boolean {
    return !this.saved && this.grid.changed;
  }

  /** Whether closing the page would lose work: it is in no file, and the browser keeps nothing. */
  get atRisk(): boolean {
    return this.unsaved && this.lost;
  }

  get fileName(): string {
    const { opened, model } = this.grid;
    if (!opened) return "";
    // What was typed, for the cell that reads it has no result yet when a job has just been brought back.
    const place = resolvePlace(yoursName("JobName"), model.names());
    return fileNameOf(opened.fileName, String((place && model.values(place)[0]?.[0]) ?? ""));
  }

  async open(fileName: string, bytes: Uint8Array, say: Say): Promise<void> {
    await say(`Reading ${fileName}`, 0);
    const opened = await openWorkbook(fileName, bytes);
    const before = this.grid.opened && {
      opened: this.grid.opened,
      edits: this.grid.editList(),
      pictures: await this.grid.pictureList(),
    };
    try {
      await this.show(() => this.grid.show({ opened }, say));
    } catch (error) {
      // Stopped, or too much for the grid, when the workbook before was already put away.
      if (before && this.grid.opened !== before.opened) await this.show(() => this.grid.show(before));
      throw error;
    }
    this.saved = true;
    await this.keepFile();
  }

  /** The job as it stands, to come back to. */
  async snapshot(): Promise<Shown & { readonly saved: boolean }> {
    const { opened } = this.grid;
    if (!opened) throw new Error("no workbook is open");
    return { opened, edits: this.grid.editList(), pictures: await this.grid.pictureList(), saved: this.saved };
  }

  /** Shows the job as it stood. */
  async comeBackTo({ saved, ...shown }: Awaited<ReturnType<Job["snapshot"]>>, say: Say): Promise<void> {
    await this.show(() => this.grid.show(shown, say));
    this.saved = saved;
    this.written = saved ? this.state() : "";
    await this.keepFile();
  }

  /** Opens what was kept last; undefined when nothing was, or when it had to be set aside. */
  async restore(say: Say): Promise<Draft | undefined> {
    const draft = await firstDraft();
    if (!draft) return undefined;
    try {
      await say(`Bringing ${draft.fileName} back`, 0);
      const opened = await openWorkbook(draft.fileName, draft.bytes);
      await this.show(() => this.grid.show({ opened, edits: draft.edits, pictures: draft.pictures }, say));
      this.saved = draft.saved;
      this.pictures = draft.pictures;
      this.written = draft.saved ? this.state() : "";
      this.kept();
      return draft;
    } catch {
      if (holdsWork(draft)) await this.keeper.setAside(draft);
      return undefined;
    }
  }

  /** The newest job with unsaved work that no open page shows. */
  async waiting(): Promise<Draft | undefined> {
    const drafts = await this.keeper.waiting().catch(() => []);
    return drafts.sort((a, b) => b.at - a.at)[0];
  }

  /** The workbook as it stands, as a file. */
  async file(say: Say): Promise<Uint8Array> {
    const { opened } = this.grid;
    if (!opened) throw new Error("no workbook is open");
    await say("Collecting the results", 0);
    await this.grid.calculation.settled();
    const pictures = (this.pictures = await this.grid.pictureList());
    const work = { edits: this.grid.editList(), results: this.grid.model.results(), pictures };
    await say(`Writing ${this.fileName}`, 1);
    const state = this.state();
    const bytes = saveWorkbook(opened.bytes, work);
    await say("Reading it back", 2);
    const [missing] = await missingIn(bytes, work);
    if (missing !== undefined) throw new Error(`the file would lack what you put into ${missing}`);
    await say("Handing it over", 3);
    this.written = state;
    return bytes;
  }

  markSaved(): void {
    this.saved = true;
    void this.keep();
  }

  /** Keeps the job at once, as when the page is about to go. */
  async keep(): Promise<void> {
    const { opened } = this.grid;
    if (!opened || this.opening) return;
    clearTimeout(this.timer);
    this.timer = undefined;
    if (!this.keeper.hasFile) return this.keepFile();
    await this.tried(this.keeper.keepWork(this.work()));
    const before = placesOf(this.pictures);
    this.pictures = await this.grid.pictureList();
    if (placesOf(this.pictures) !== before) await this.tried(this.keeper.keepWork(this.work()));
  }

  private async keepFile(): Promise<void> {
    const { opened } = this.grid;
    if (!opened) return;
    this.pictures = await this.grid.pictureList();
    await this.tried(this.keeper.keepFile({ fileName: opened.fileName, bytes: opened.bytes, ...this.work() }));
  }

  private state(): string {
    return JSON.stringify([this.grid.editList(), placesOf(this.pictures)]);
  }

  private work(): Work {
    return { edits: this.grid.editList(), pictures: this.pictures, at: Date.now(), saved: this.saved };
  }

  private async tried(keeping: Promise<void>): Promise<void> {
    try {
      await keeping;
      this.lost = false;
      this.kept();
      if (this.unsaved) void askToStay();
    } catch {
      this.lost = true;
      this.kept("This browser keeps nothing here; save the file before you leave.");
    }
  }

  private async show(put: () => Promise<void>): Promise<void> {
    this.opening = true;
    try {
      await put();
    } finally {
      this.opening = false;
    }
  }

  /** The first change goes to the storage before the page does anything else: a crash may come at any moment. */
  private schedule(): void {
    if (this.opening) return;
    if (this.saved && this.grid.changed && this.state() !== this.written) this.saved = false;
    if (this.timer !== undefined) {
      this.again = true;
      return;
    }
    void this.keep();
    this.again = false;
    this.timer = setTimeout(() => {
      this.timer = undefined;
      if (this.again) this.schedule();
    }, KEEP_AFTER);
  }
}

/** What tells one set of pictures from another. */
function placesOf(pictures: readonly Picture[]): string {
  return JSON.stringify(pictures.map(({ png, ...place }) => [png.length, place]));
}

/** Asks the browser once to keep what is kept here even when it runs short of room. */
let asked = false;
async function askToStay(): Promise<void> {
  if (asked) return;
  asked = true;
  await navigator.storage?.persist?.().catch(() => false);
}
