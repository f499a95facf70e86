import { existsSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { isWrongCode } from "../calc/money/currency";
import {
  comparedNews,
  comparedPrices,
  comparedPumps,
  fileWith,
  logoIn,
  madeJob,
  type NamedFile,
} from "../company/files";
import type { PumpListFile, ReadPumpsAs } from "../csv/readPumpList";
import { buildWorkbook } from "../workbook/build";
import type { Compared, Difference } from "../workbook/company/difference";
import { readBook, type BookRead } from "../workbook/company/readBook";
import type { CellValue } from "../workbook/model";
import { recalculate } from "../workbook/recalculate";
import { readJob } from "../workbook/jobCells/readJob";
import type { Names } from "../workbook/jobCells/places";
import { runCommand } from "./runCommand";
import { readWorkbookFile } from "./workbookFile";
import { answerCell } from "../workbook/yoursName";

const USAGE = [
  "Usage: npm run job -- --book BOOK.xlsx --out JOB.xlsx [--answers NAME=VALUE …] [--logo FILE]",
  "       npm run job -- --book BOOK.xlsx --refresh JOB.xlsx [--only NAME …] [--out NEW-JOB.xlsx]",
  "       npm run job -- --book BOOK.xlsx --news JOB.xlsx [--only NAME …] [--out NEW-BOOK.xlsx]",
  "       npm run job -- --book BOOK.xlsx --pumps LIST.csv [--flow gpm] [--head ft] [--decimal .] [--out NEW-BOOK.xlsx]",
].join("\n");
const OPTIONS = [
  "book",
  "out",
  "answers",
  "logo",
  "refresh",
  "news",
  "pumps",
  "only",
  "flow",
  "head",
  "decimal",
] as const;
type Option = (typeof OPTIONS)[number];
type Options = ReadonlyMap<Option, readonly string[]>;

/**
 * Makes a job workbook from a company's book; says how a job's prices differ from the book of today, what a finished job
 * has for the book, or what a maker's list of pumps has for it, and with --out writes what was said into a new file.
 * Gives what to print. A file that is there is never written over.
 */
export async function job(args: readonly string[]): Promise<string> {
  const options = optionsOf(args);
  const one = (option: Option): string | undefined => options.get(option)?.[0];
  const [bookFile, out] = [one("book"), one("out")];
  const compared = (["refresh", "news", "pumps"] as const).filter((option) => one(option) !== undefined);
  const [way] = compared;
  if (bookFile === undefined || compared.length > 1 || (way === undefined && out === undefined)) throw new Error(USAGE);
  if (out !== undefined && existsSync(out)) throw new Error(`${out} is there already.`);
  const book = await fileOf(bookFile);
  if (way === undefined) return newJob(book, out ?? "", options);
  const other = await fileOf(one(way) ?? "");
  if (way === "refresh") return told(await comparedPrices(book, other), way, options, other);
  if (way === "news") return told(await comparedNews(book, other), way, options, book);
  const found = await comparedPumps(book, other.bytes, pumpsAs(one));
  return [howRead(other.name, found.file), await told(found, way, options, book)].join("\n");
}

async function fileOf(file: string): Promise<NamedFile> {
  return { name: basename(file), bytes: await readWorkbookFile(file) };
}

function optionsOf(args: readonly string[]): Options {
  const options = new Map<Option, string[]>();
  let values: string[] | undefined;
  for (const argument of args) {
    const option = OPTIONS.find((name) => argument === `--${name}`);
    if (option !== undefined) options.set(option, (values = []));
    else if (argument.startsWith("--") || !values) throw new Error(`There is no option ${argument}.\n${USAGE}`);
    else values.push(argument);
  }
  const empty = [...options].find(([, given]) => given.length === 0);
  if (empty) throw new Error(`--${empty[0]} needs something behind it.\n${USAGE}`);
  return options;
}

function warningsOf(name: string, { problems }: BookRead): string[] {
  const told = problems.map(({ sentence }) => `  ${sentence}`);
  return told.length > 0 ? [`${name} has something to look at:`, ...told] : [];
}

async function newJob(book: NamedFile, out: string, options: Options): Promise<string> {
  const read = await readBook(book.name, book.bytes);
  const blank = await buildWorkbook(read.book.system, "blank");
  const answers = options.get("answers") ?? [];
  const logo = options.get("logo")?.[0];
  const company = { ...read.book.company, ...(logo === undefined ? {} : { logo: logoIn(await fileOf(logo)) }) };
  const { bytes, notes } = await madeJob({ ...read.book, company }, blank, (names) => answersOf(answers, names));
  await writeNew(out, bytes);
  const made = `${out} is a new job with ${read.book.products.length} products of ${book.name}.`;
  return [...warningsOf(book.name, read), made, ...notes, ...(answers.length > 0 ? await wrongIn(bytes) : [])].join(
    "\n",
  );
}

/** What was answered and is nothing that its cell takes. */
async function wrongIn(job: Uint8Array): Promise<string[]> {
  const { wrong, used } = readJob(await recalculate(job));
  const { currency = "" } = used;
  return [
    ...wrong.map(({ cell, shown, question }) => `${cell} holds "${shown}", which does not answer: ${question}`),
    ...(isWrongCode(currency) ? [`The currency ${currency} is not an ISO 4217 code; check it on Site.`] : []),
  ];
}

/** The names of facts and what is typed for them. */
function answersOf(answers: readonly string[], names: Names): Map<string, CellValue> {
  return new Map(
    answers.map((answer) => {
      const [, name = "", value = ""] = /^(\w+)=(.*)$/s.exec(answer) ?? [];
      const cell = answerCell(name, names);
      if (cell === undefined) throw new Error(`"${answer}" names no fact of a job; write NAME=VALUE, such as Run=31.`);
      const number = Number(value);
      return [cell, value.trim() !== "" && Number.isFinite(number) ? number : value] as const;
    }),
  );
}

const SAID = {
  refresh: {
    none: "The job's prices are those of the book.",
    some: ["line differs", "lines differ"],
    from: "from the book",
  },
  news: { none: "The job has nothing that the book lacks.", some: ["row is", "rows are"], from: "news for the book" },
  pumps: {
    none: "The book holds every pump of the list as it is.",
    some: ["pump is", "pumps are"],
    from: "news for the book",
  },
} as const;

/** Says every difference; with --out writes those that are wanted into a copy of the file they would change. */
async function told(
  { read, differences, left }: Compared & { readonly read: BookRead },
  way: keyof typeof SAID,
  options: Options,
  file: NamedFile,
): Promise<string> {
  const out = options.get("out")?.[0];
  const taken = wanted(differences, options.get("only"));
  const { none, some, from } = SAID[way];
  if (out !== undefined && taken.length > 0) await writeNew(out, await fileWith(file, taken));
  const did = out === undefined || taken.length === 0 ? "nothing was changed" : `taken into ${out}`;
  const count = `${taken.length} ${some[taken.length === 1 ? 0 : 1]} ${from}; ${did}:`;
  return [
    ...warningsOf(options.get("book")?.[0] ?? "", read),
    ...(taken.length === 0 ? [none] : [count, ...taken.map(({ name, words }) => `  ${name}: ${words}`)]),
    ...left.map((sentence) => `Left as it is: ${sentence}`),
  ].join("\n");
}

function wanted(differences: readonly Difference[], only: readonly string[] | undefined): readonly Difference[] {
  if (!only) return differences;
  const missing = only.find((name) => !differences.some((one) => one.name.toLowerCase() === name.toLowerCase()));
  if (missing !== undefined) throw new Error(`Nothing differs in "${missing}"; leave --only out to see what does.`);
  return differences.filter((one) => only.some((name) => name.toLowerCase() === one.name.toLowerCase()));
}

function pumpsAs(one: (option: Option) => string | undefined): ReadPumpsAs {
  const [flow, head, decimal] = [one("flow"), one("head"), one("decimal")];
  if (decimal !== undefined && decimal !== "." && decimal !== ",") throw new Error("--decimal is . or ,");
  return {
    ...(flow === undefined ? {} : { flow }),
    ...(head === undefined ? {} : { head }),
    ...(decimal === undefined ? {} : { decimal }),
  };
}

/** How the list was read, for the person to check. */
function howRead(name: string, { pumps, refused, headings, columns, customs }: PumpListFile): string {
  const taken = headings.filter((_, index) => columns[index] !== undefined).map((heading) => heading.trim());
  const mark = customs.decimal === "," ? "comma" : "point";
  return [
    `${name}: ${pumps.length} pumps read, decimal ${mark}, from the columns ${taken.join(", ")}.`,
    ...refused.map(({ row, problem }) => `Left out: row ${row} ${problem}.`),
  ].join("\n");
}

async function writeNew(file: string, bytes: Uint8Array): Promise<void> {
  try {
    await writeFile(file, bytes, { flag: "wx" });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw new Error(
      code === "EEXIST" ? `${file} is there already.` : `${file} cannot be written (${code ?? String(error)}).`,
    );
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await runCommand(USAGE, job);
