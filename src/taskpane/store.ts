const DATABASE = "rillwright";
const STORE = "drafts";

/** The one table of records in the browser's storage, which all open pages share. */
export class Store {
  private database: Promise<IDBDatabase> | undefined;
  /** Once it is open: what is kept through it is on its way before the page does anything else. */
  private opened: IDBDatabase | undefined;

  /** Puts a record in place, whole or not at all; the others named are taken away in the same step. */
  async put(key: string, record: unknown, away: readonly string[] = []): Promise<void> {
    const database = this.opened ?? (await this.open());
    await finished(database, "readwrite", (store) => {
      store.put(record, key);
      for (const one of away) store.delete(one);
    });
  }

  async delete(...keys: readonly string[]): Promise<void> {
    await finished(await this.open(), "readwrite", (store) => keys.forEach((key) => store.delete(key)));
  }

  async all(): Promise<Map<string, unknown>> {
    let keys: IDBRequest<IDBValidKey[]> | undefined;
    let records: IDBRequest<unknown[]> | undefined;
    await finished(await this.open(), "readonly", (store) => {
      keys = store.getAllKeys();
      records = store.getAll();
    });
    return new Map(keys?.result.map((key, index) => [String(key), records?.result[index]]));
  }

  private open(): Promise<IDBDatabase> {
    this.database ??= openDatabase(() => {
      this.database = undefined;
      this.opened = undefined;
    }).then(
      (database) => (this.opened = database),
      (error: unknown) => {
        this.database = undefined;
        throw error;
      },
    );
    return this.database;
  }
}

function openDatabase(gone: () => void): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => {
      const database = request.result;
      // A page of a later build must not wait for this one, and a browser may close what it needs the room of.
      database.onversionchange = () => {
        database.close();
        gone();
      };
      database.onclose = gone;
      resolve(database);
    };
    request.onerror = () => reject(request.error ?? new Error("the browser's storage did not open"));
    request.onblocked = () => reject(new Error("the browser's storage is held by another page"));
  });
}

function finished(
  database: IDBDatabase,
  mode: IDBTransactionMode,
  act: (store: IDBObjectStore) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(STORE, mode);
    // Only a finished transaction is safe on disk.
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error("the browser's storage is full or closed"));
    act(transaction.objectStore(STORE));
    // Without it the browser would end the transaction only after whatever the page is busy with.
    transaction.commit?.();
  });
}
