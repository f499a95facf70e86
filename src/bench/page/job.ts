import type { EmbeddedGrid } from "../grid/grid";
import { forgetDraft, keepDraft, keptDraft, type Draft } from "../keeping/draft";
import { openWorkbook } from "../reading/openWorkbook";
import { saveWorkbook } from "../saving/saveWorkbook";

const KEEP_AFTER = 400;

/** The job on the bench: the open file, what was changed, and where it is kept. */
export class Job {
  private saved = true;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private opening = false;

  constructor(
    private readonly grid: EmbeddedGrid,
    /** Told whenever the job was kept, or, with a sentence, that it could not be. */
    private readonly kept: (problem?: string) => void,
  ) {
    grid.onChange(() => this.schedule());
  }

  /** Whether there is work that is in no file of the user's. */
  get unsaved(): boolean {
    return !this.saved && (this.grid.editList().length > 0 || this.grid.hasPictures);
  }

  get fileName(): string {
    return this.grid.opened?.fileName ?? "";
  }

  async open(fileName: string, bytes: Uint8Array): Promise<void> {
    const opened = await openWorkbook(fileName, bytes);
    await this.show(() => this.grid.show(opened));
    this.saved = true;
    await this.keep();
  }

  /** Opens what was kept last; undefined when nothing was, or when it cannot be opened any more. */
  async restore(): Promise<Draft | undefined> {
    const draft = await keptDraft().catch(() => undefined);
    if (!draft) return undefined;
    try {
      const opened = await openWorkbook(draft.fileName, draft.bytes);
      await this.show(() => this.grid.show(opened, draft.edits, draft.pictures));
      this.saved = draft.saved;
      this.kept();
      return draft;
    } catch {
      await forgetDraft();
      return undefined;
    }
  }

  /** The workbook as it stands, as a file. */
  async file(): Promise<Uint8Array> {
    const { opened } = this.grid;
    if (!opened) throw new Error("no workbook is open");
    const pictures = await this.grid.pictureList();
    return saveWorkbook(opened.bytes, { edits: this.grid.editList(), results: this.grid.results(), pictures });
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
      await keepDraft({
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
    if (this.grid.editList().length > 0 || this.grid.hasPictures) this.saved = false;
    void this.keep();
  }
}
