import { HostRefusal, type Host, type Task } from "../../host/port";
import { Store } from "../store";
import { download, WORKBOOK } from "../download";
import { askWorker } from "./askWorker";
import type { AboutBook, NamedFile } from "./messages";

/** Its place in the browser's storage, apart from the jobs. */
const PLACE = "company book";

/** The book that this machine remembers, with what it holds and whether a file of the person's holds all of it. */
export interface KeptBook extends NamedFile {
  readonly about: AboutBook;
  readonly at: number;
  /** News was taken in since it came from a file or was saved as one. */
  readonly changed: boolean;
}

/** The company's book as the pane has it: taken from a file, remembered on this machine, handed out as a file again. */
export class CompanyBook {
  private held: KeptBook | undefined;
  private readonly store = new Store();
  private readonly listeners: (() => void)[] = [];
  private looked: Promise<void> | undefined;
  /** Whether the browser keeps it beyond this page. */
  remembered = true;

  constructor(private readonly host: Host) {}

  get kept(): KeptBook | undefined {
    return this.held;
  }

  /** Called whenever another book, or none, is there. */
  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  /** Brings the remembered book back, once; a browser that refuses its storage has none. */
  look(): Promise<void> {
    this.looked ??= this.store
      .all()
      .then((records) => {
        const record = records.get(PLACE);
        if (!this.held && isKept(record)) this.set(record);
      })
      .catch(() => undefined);
    return this.looked;
  }

  /** Takes a book from a file; one that cannot be read leaves the one that is there. */
  async take(file: NamedFile, task: Task): Promise<string> {
    const about = await askWorker({ ask: "about", book: file }, task);
    await this.keep({ ...file, about, at: Date.now(), changed: false });
    return `${file.name} is the company book here${this.remembered ? ", and is remembered on this machine" : ""}.`;
  }

  /** Takes the workbook that is open in the host. */
  async takeOpen(task: Task): Promise<string> {
    return this.take(await this.host.file(task.progress), task);
  }

  /** Puts the book with its news in place of the one before. */
  async replace(bytes: Uint8Array, about: AboutBook): Promise<void> {
    await this.keep({ ...this.need(), bytes, about, at: Date.now(), changed: true });
  }

  /** Hands the book out as a file. */
  async save(): Promise<string> {
    const { name, bytes } = this.need();
    download(name, bytes as BlobPart, WORKBOOK);
    await this.keep({ ...this.need(), changed: false });
    return `${name} is in your downloads.`;
  }

  async forget(): Promise<string> {
    const { name } = this.need();
    await this.store.delete(PLACE).catch(() => undefined);
    this.set(undefined);
    return `${name} is forgotten here; your own file of it stays.`;
  }

  need(): KeptBook {
    if (!this.held) throw new HostRefusal("Choose your company book first.");
    return this.held;
  }

  private async keep(book: KeptBook): Promise<void> {
    // A write that is refused, in a private window or on a full disk, costs the memory and not the book.
    this.remembered = await this.store.put(PLACE, book).then(
      () => true,
      () => false,
    );
    this.set(book);
  }

  private set(book: KeptBook | undefined): void {
    this.held = book;
    for (const listener of this.listeners) listener();
  }
}

/** Whether a record is a book as this build keeps it; one of another build is asked for again. */
function isKept(record: unknown): record is KeptBook {
  const book = record as Partial<KeptBook> | undefined;
  return typeof book?.name === "string" && book.bytes instanceof Uint8Array && Array.isArray(book.about?.problems);
}
