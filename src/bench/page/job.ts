import type { EmbeddedGrid } from "../grid/grid";
import { DraftKeeper, holdsWork, type Draft } from "../keeping/draft";
import { openWorkbook } from "../reading/openWorkbook";
import { saveWorkbook } from "../saving/saveWorkbook";
import type { Say } from "./busy";

const KEEP_AFTER = 400;
/** Steps that opening a workbook tells of. */
export const OPENING_PARTS = 4;
/** Steps that saving one tells of. */
export const SAVING_PARTS = 3;

/** The job on the bench: the open file, what was changed, and where it is kept. */
export class Job {
  private saved = true;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private opening = false;
  readonly keeper = new DraftKeeper();

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

  get fileName(): string {
    return this.grid.opened?.fileName ?? "";
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
    await this.keep();
  }

  /** Opens what was kept last; undefined when nothing was, or when it had to be set aside. */
  async restore(say: Say): Promise<Draft | undefined> {
    const draft = await this.keeper.begin().catch(() => undefined);
    if (!draft) return undefined;
    try {
      await say(`Bringing ${draft.fileName} back`, 0);
      const opened = await openWorkbook(draft.fileName, draft.bytes);
      await this.show(() => this.grid.show({ opened, edits: draft.edits, pictures: draft.pictures }, say));
      this.saved = draft.saved;
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
    const pictures = await this.grid.pictureList();
    const work = { edits: this.grid.editList(), results: this.grid.model.results(), pictures };
    await say(`Writing ${opened.fileName}`, 1);
    const bytes = saveWorkbook(opened.bytes, work);
    await say("Handing it over", 2);
    return bytes;
  }

  markSaved(): void {
    this.saved = true;
    void this.keep();
  }

  /** Keeps the job at once, as when the page is about to go. */
  async keep(): Promise<void> {
    clearTimeout(this.timer);
    this.timer = undefined;
    const { opened } = this.grid;
    if (!opened || this.opening) return;
    try {
      await this.keeper.keep({
        fileName: opened.fileName,
        bytes: opened.bytes,
        edits: this.grid.editList(),
        pictures: await this.grid.pictureList(),
        at: Date.now(),
        saved: this.saved,
      });
      this.kept();
    } catch {
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

  private schedule(): void {
    if (!this.opening && this.timer === undefined) this.timer = setTimeout(() => this.changed(), KEEP_AFTER);
  }

  private changed(): void {
    if (this.grid.changed) this.saved = false;
    void this.keep();
  }
}
