import type { Edit } from "../grid/edits";
import type { Picture } from "../saving/pictures";
import { heldSlots, takeSlot } from "./slots";

/** A job as it was left: the file it was opened from and everything changed since. */
export interface Draft {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly edits: readonly Edit[];
  readonly pictures: readonly Picture[];
  readonly at: number;
  /** Whether the user has this state in a file of their own. */
  readonly saved: boolean;
}

const DATABASE = "rillwright";
const STORE = "drafts";
/** Begins the places of jobs that could not be brought back: no page takes them. */
const ASIDE = "aside-";

/** Whether a draft holds work that is in no file of the user's. */
export function holdsWork({ saved, edits, pictures }: Draft): boolean {
  return !saved && (edits.length > 0 || pictures.length > 0);
}

/** Keeps this page's job in the browser's storage, apart from the jobs of other open pages. */
export class DraftKeeper {
  private slot: string | undefined;

  /** Takes this page's place, and gives the job that was kept there last, if any. */
  async begin(): Promise<Draft | undefined> {
    const kept = await pageDrafts();
    const newest = [...kept].sort(([, a], [, b]) => b.at - a.at).map(([slot]) => slot);
    this.slot = await takeSlot(newest);
    return kept.get(this.slot);
  }

  /** Jobs with unsaved work that no open page shows. */
  async waiting(): Promise<Draft[]> {
    const [kept, held] = await Promise.all([pageDrafts(), heldSlots()]);
    return [...kept]
      .filter(([slot, draft]) => slot !== this.slot && !held.has(slot) && holdsWork(draft))
      .map(([, draft]) => draft);
  }

  /** Keeps the job in place of the one this page kept before. */
  async keep(draft: Draft): Promise<void> {
    await inStore("readwrite", (store) => store.put(draft, this.slot));
  }

  /** Puts a job that could not be brought back where no other job takes its place. */
  async setAside(draft: Draft): Promise<void> {
    await inStore("readwrite", (store) => store.put(draft, `${ASIDE}${draft.at}`));
  }

  /** The jobs that were set aside. */
  async aside(): Promise<Draft[]> {
    return [...(await allDrafts())].filter(([slot]) => slot.startsWith(ASIDE)).map(([, draft]) => draft);
  }

  async dropAside({ at }: Draft): Promise<void> {
    await inStore("readwrite", (store) => store.delete(`${ASIDE}${at}`));
  }
}

/** The jobs that pages keep. */
async function pageDrafts(): Promise<Map<string, Draft>> {
  return new Map([...(await allDrafts())].filter(([slot]) => !slot.startsWith(ASIDE)));
}

async function allDrafts(): Promise<Map<string, Draft>> {
  const keys = await inStore("readonly", (store) => store.getAllKeys());
  const drafts = await inStore("readonly", (store) => store.getAll() as IDBRequest<Draft[]>);
  return new Map(drafts.map((draft, index) => [String(keys[index]), draft]));
}

function open(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's storage did not open"));
    request.onblocked = () => reject(new Error("the browser's storage is held by another page"));
  });
}

async function inStore<T>(mode: IDBTransactionMode, act: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const database = await open();
  try {
    return await new Promise<T>((resolve, reject) => {
      const transaction = database.transaction(STORE, mode);
      const request = act(transaction.objectStore(STORE));
      // Only a finished transaction is safe on disk.
      transaction.oncomplete = () => resolve(request.result);
      transaction.onabort = () => reject(transaction.error ?? new Error("the browser's storage is full or closed"));
    });
  } finally {
    database.close();
  }
}
