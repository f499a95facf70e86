import type { Edit } from "../grid/edits";
import type { Picture } from "../saving/pictures";

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
const KEY = "current";

function open(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's storage did not open"));
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

/** Keeps the job in the browser's storage, in place of the one kept before. */
export async function keepDraft(draft: Draft): Promise<void> {
  await inStore("readwrite", (store) => store.put(draft, KEY));
}

/** The job kept last, if any. */
export async function keptDraft(): Promise<Draft | undefined> {
  return (await inStore("readonly", (store) => store.get(KEY) as IDBRequest<Draft | undefined>)) ?? undefined;
}

export async function forgetDraft(): Promise<void> {
  await inStore("readwrite", (store) => store.delete(KEY));
}
