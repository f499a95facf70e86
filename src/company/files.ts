import type { Book, Logo } from "../book/types";
import { readPumpList, type PumpListFile, type ReadPumpsAs } from "../csv/readPumpList";
import { bookNews } from "../workbook/company/bookNews";
import { cellsToTake } from "../workbook/company/bookRows";
import { jobSystem, type Compared, type Difference } from "../workbook/company/difference";
import { newJobFrom } from "../workbook/company/newJob";
import { priceUpdates } from "../workbook/company/priceUpdates";
import { pumpListNews } from "../workbook/company/pumpNews";
import { readBook, type BookRead } from "../workbook/company/readBook";
import { damaged, FileRefusal, refuseUnreadable } from "../workbook/file/refusal";
import { bookWithLogo, jobWithLogo, NoLogo, readLogo } from "../workbook/logo";
import type { CellValue } from "../workbook/model";
import { jobInCurrency } from "../workbook/moneyDigits";
import { openWorkbook, UnreadableWorkbook, type OpenedWorkbook, type Recalculated } from "../workbook/recalculate";
import type { Names } from "../workbook/jobCells/places";
import { typedFile } from "./typedFile";

/** A file by its name. */
export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A job that was made from a book, and what to tell of it. */
export interface MadeJob {
  readonly bytes: Uint8Array;
  readonly notes: readonly string[];
}

/**
 * A new job from a company's book.
 *
 * @param blank the blank job of the book's unit system
 * @param answers what else is typed, by cell
 */
export async function madeJob(
  book: Book,
  blank: Uint8Array,
  answers: (names: Names) => ReadonlyMap<string, CellValue> = () => new Map(),
): Promise<MadeJob> {
  const opened = await openWorkbook(blank);
  const { cells, notes } = newJobFrom(book, opened.recalculate());
  const { currency, logo } = book.company;
  const bytes = jobInCurrency(typedFile(blank, opened, new Map([...cells, ...answers(opened.names)])), currency);
  return { bytes: logo ? jobWithLogo(bytes, logo) : bytes, notes };
}

/** How the prices of a job differ from the book of today, as cells of the job. */
export async function comparedPrices(book: NamedFile, job: NamedFile): Promise<Compared & { readonly read: BookRead }> {
  const { read, calculated } = await both(book, job);
  return { read, ...priceUpdates(read.book, calculated) };
}

/** What a job knows that the book does not, as cells of the book. */
export async function comparedNews(book: NamedFile, job: NamedFile): Promise<Compared & { readonly read: BookRead }> {
  const { read, calculated } = await both(book, job);
  return { read, ...bookNews(read.book, read.workbook, calculated) };
}

/** What a maker's list of pumps would change, as cells of the book. */
export async function comparedPumps(
  book: NamedFile,
  list: Uint8Array,
  as: ReadPumpsAs,
): Promise<Compared & { readonly read: BookRead; readonly file: PumpListFile }> {
  const file = readPumpList(list, as);
  const read = await readBook(book.name, book.bytes);
  return { read, file, ...pumpListNews(read.book, read.workbook, file.pumps) };
}

/** A file with the differences that were taken. */
export async function fileWith({ name, bytes }: NamedFile, taken: readonly Difference[]): Promise<Uint8Array> {
  return typedFile(bytes, await open(name, bytes), cellsToTake(taken));
}

/**
 * A book with this logo in place of the one before.
 *
 * @param png the logo as a PNG, for programs that show no SVG
 */
export function withLogo({ bytes }: NamedFile, logo: NamedFile, png?: Uint8Array): Uint8Array {
  return bookWithLogo(bytes, { ...logoIn(logo), ...(png ? { png } : {}) });
}

/** The logo that a file holds. */
export function logoIn({ name, bytes }: NamedFile): Logo {
  try {
    return readLogo(bytes);
  } catch (error) {
    throw error instanceof NoLogo ? new FileRefusal(`${name} ${error.message}.`) : error;
  }
}

/** The job first: its unit system is the one that the book must have. */
async function both(book: NamedFile, job: NamedFile): Promise<{ read: BookRead; calculated: Recalculated }> {
  const calculated = (await open(job.name, job.bytes)).recalculate();
  const system = jobSystem(job.name, calculated);
  return { read: await readBook(book.name, book.bytes, system), calculated };
}

async function open(name: string, bytes: Uint8Array): Promise<OpenedWorkbook> {
  refuseUnreadable(name, bytes);
  try {
    return await openWorkbook(bytes);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw damaged(name);
    throw error;
  }
}
