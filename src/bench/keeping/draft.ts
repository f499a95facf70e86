import { Store } from "../../taskpane/store";
import type { Edit } from "../work/work";
import type { Picture } from "../work/picture";
import { noteKept } from "./otherPorts";
import { heldSlots, isSlot, takeSlot } from "./slots";

/** What was done to a file since it was opened. */
export interface Work {
  readonly edits: readonly Edit[];
  readonly pictures: readonly Picture[];
  readonly at: number;
  /** Whether the user has this state in a file of their own. */
  readonly saved: boolean;
}

/** A job as it was left: the file it was opened from and everything changed since. */
export interface Draft extends Work {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** Tells one opening of a file from the next, so that no work is put into another file. */
  readonly opening?: string;
}

/** Work that is kept apart from its file, which is large and does not change. */
interface KeptWork extends Work {
  readonly opening: string;
}

/** Begins the places of jobs that could not be brought back: no page takes them. */
const ASIDE = "aside-";
/** Begins the places of work, behind which the place of its file follows. */
const WORK = "work-";

/** Whether a draft holds work that is in no file of the user's. */
export function holdsWork({ saved, edits, pictures }: Work): boolean {
  return !saved && (edits.length > 0 || pictures.length > 0);
}

/** Keeps this page's job in the browser's storage, apart from the jobs of other open pages. */
export class DraftKeeper {
  private readonly store = new Store();
  private slot: string | undefined;
  /** The opening whose file is kept. */
  private opening: string | undefined;

  /** Takes this page's place, and gives the job that was kept there last, if any. */
  async begin(): Promise<Draft | undefined> {
    const kept = await this.pageDrafts().catch(() => new Map<string, Draft>());
    const newest = [...kept].sort(([, a], [, b]) => b.at - a.at).map(([slot]) => slot);
    this.slot = await takeSlot(newest);
    const draft = kept.get(this.slot);
    this.opening = draft?.opening;
    return draft;
  }

  /** Jobs with unsaved work that no open page shows. */
  async waiting(): Promise<Draft[]> {
    const [kept, held] = await Promise.all([this.pageDrafts(), heldSlots()]);
    return [...kept]
      .filter(([slot, draft]) => slot !== this.slot && !held.has(slot) && holdsWork(draft))
      .map(([, draft]) => draft);
  }

  /** Keeps a job with its file, in place of the one this page kept before. */
  async keepFile(draft: Draft): Promise<void> {
    if (this.slot === undefined) throw new Error("this page has no place in the browser's storage");
    const opening = crypto.randomUUID?.() ?? String(Math.random());
    this.opening = undefined;
    await this.store.put(this.slot, { ...draft, opening }, [WORK + this.slot]);
    this.opening = opening;
    this.note(draft);
  }

  /** Whether the file is kept, so that the work alone need be. */
  get hasFile(): boolean {
    return this.opening !== undefined;
  }

  /** Keeps what was done to the file that is kept already. */
  async keepWork(work: Work): Promise<void> {
    if (this.slot === undefined || this.opening === undefined) throw new Error("no file is kept that work belongs to");
    await this.store.put(WORK + this.slot, { ...work, opening: this.opening } satisfies KeptWork);
    this.note(work);
  }

  private note(work: Work): void {
    if (this.slot !== undefined) noteKept(this.slot, holdsWork(work) ? work.at : undefined);
  }

  /** Puts a job that could not be brought back where no other job takes its place. */
  async setAside(draft: Draft): Promise<void> {
    await this.store.put(`${ASIDE}${draft.at}`, draft);
  }

  /** The jobs that were set aside. */
  async aside(): Promise<Draft[]> {
    return [...(await this.store.all())].filter(([key]) => key.startsWith(ASIDE)).map(([, draft]) => draft as Draft);
  }

  async dropAside({ at }: Draft): Promise<void> {
    await this.store.delete(`${ASIDE}${at}`);
  }

  /** The jobs that pages keep: the file of each, with the work that was done to it last. */
  private async pageDrafts(): Promise<Map<string, Draft>> {
    const records = await this.store.all();
    const drafts = new Map<string, Draft>();
    for (const [slot, record] of records) {
      if (!isSlot(slot)) continue;
      const file = record as Draft;
      const work = records.get(WORK + slot) as KeptWork | undefined;
      drafts.set(slot, work !== undefined && work.opening === file.opening ? { ...file, ...work } : file);
    }
    return drafts;
  }
}

/** The one keeper of this page. */
export const pageKeeper = new DraftKeeper();

let first: Promise<Draft | undefined> | undefined;

/** The job that this page kept last; its place is taken once. */
export function firstDraft(): Promise<Draft | undefined> {
  first ??= pageKeeper.begin().catch(() => undefined);
  return first;
}
