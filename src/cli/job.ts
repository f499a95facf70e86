import { readFile, writeFile } from "node:fs/promises";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { saveWorkbook } from "../bench/saving/saveWorkbook";
import { refreshed, type PriceUpdate } from "../job/company/refresh";
import { buildWorkbook } from "../workbook/build";
import { answerCell, newJobFrom } from "../workbook/company/newJob";
import { readBook } from "../workbook/company/readBook";
import type { CellValue } from "../workbook/model";
import { openWorkbook } from "../workbook/recalculate";
import { readJob } from "../workbook/reckoning/readJob";
import { parseArea } from "../xlsx/address";
import { resultsOf } from "./copy";
import { openWorkbookFile } from "./workbookFile";

const USAGE = [
  "Usage: npm run job -- --book BOOK.xlsx --out JOB.xlsx [--answers NAME=VALUE …]",
  "       npm run job -- --book BOOK.xlsx --refresh JOB.xlsx",
].join("\n");

/**
 * Makes a job workbook from a company's book, or says how a job's prices differ from the book of today; gives what to
 * print. A file that is there is never written over.
 */
export async function job(args: readonly string[]): Promise<string> {
  const option = (name: string): string | undefined => {
    const at = args.indexOf(name);
    return at < 0 ? undefined : args[at + 1];
  };
  const [bookFile, out, old] = [option("--book"), option("--out"), option("--refresh")];
  if (bookFile === undefined || (out === undefined) === (old === undefined)) throw new Error(USAGE);
  const { book, problems } = await readBook(basename(bookFile), await readFile(bookFile));
  const told = problems.map(({ sentence }) => `  ${sentence}`);
  const warned = told.length > 0 ? [`${basename(bookFile)} has something to look at:`, ...told] : [];
  if (old !== undefined) {
    const { job: held } = readJob((await openWorkbookFile(old)).recalculate());
    return [...warned, ...differences(refreshed(held.prices, book))].join("\n");
  }
  const target = out ?? "";
  const blank = await buildWorkbook(book.system, "blank");
  const opened = await openWorkbook(blank);
  const { cells, notes } = newJobFrom(book, opened.recalculate());
  const typed = new Map<string, CellValue>([...cells, ...answersOf(args, opened.names)]);
  const results = resultsOf(opened.recalculate(typed));
  const edits = [...typed].flatMap(([key, content]) => {
    const at = key.lastIndexOf("!");
    const area = parseArea(key.slice(at + 1), key.slice(0, at));
    return area ? [{ sheet: area.sheet, row: area.top, column: area.left, content }] : [];
  });
  const over = new Set(edits.map(({ sheet, row, column }) => `${sheet}!${row},${column}`));
  const kept = results.filter(({ sheet, row, column }) => !over.has(`${sheet}!${row},${column}`));
  await writeFile(target, saveWorkbook(blank, { edits, results: kept, pictures: [] }), { flag: "wx" });
  const made = `${target} is a new job with ${book.products.length} products of ${basename(bookFile)}.`;
  return [...warned, made, ...notes].join("\n");
}

/** What follows --answers: the names of facts and what is typed for them. */
function answersOf(args: readonly string[], names: ReadonlyMap<string, string>): Map<string, CellValue> {
  const from = args.indexOf("--answers");
  const answers = new Map<string, CellValue>();
  if (from < 0) return answers;
  for (const answer of args.slice(from + 1)) {
    if (answer.startsWith("--")) break;
    const [, name = "", value = ""] = /^(\w+)=(.*)$/s.exec(answer) ?? [];
    const cell = answerCell(name, names);
    if (cell === undefined) throw new Error(`"${answer}" names no fact of a job; write NAME=VALUE, such as Run=31.`);
    const number = Number(value);
    answers.set(cell, value.trim() !== "" && Number.isFinite(number) ? number : value);
  }
  return answers;
}

function differences(updates: readonly PriceUpdate[]): string[] {
  if (updates.length === 0) return ["The job's prices are those of the book."];
  const shown = (value: unknown): string => (value === undefined || value === "" ? "nothing" : String(value));
  return [
    `${updates.length} ${updates.length === 1 ? "line differs" : "lines differ"} from the book; nothing was changed:`,
    ...updates.map(({ code, changes }) => {
      const said = changes.map(({ field, from, to }) => `${field} ${shown(from)} → ${shown(to)}`);
      return `  ${code}: ${said.join(", ")}`;
    }),
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  job(process.argv.slice(2)).then(
    (said) => console.log(said),
    (error: unknown) => {
      console.error(error instanceof Error ? error.message : String(error));
      process.exitCode = 1;
    },
  );
}
