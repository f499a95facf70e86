import { readFile, stat } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { evaluate } from "../job/evaluate";
import { copyMadeAt } from "../workbook/copy/valuesCopy";
import { damaged, FileRefusal, refuseSize, refuseUnreadable } from "../workbook/file/refusal";
import { recalculate, UnreadableWorkbook, type Recalculated } from "../workbook/recalculate";
import { compareReckonings, type Difference } from "../workbook/reckoning/compare";
import { readJob } from "../workbook/reckoning/readJob";
import { unsound } from "../workbook/reckoning/soundness";
import { summarize, summaryText } from "../workbook/summary";

const USAGE = "Usage: npm run estimate -- FILE.xlsx [--json]";

/** What the command prints, and whether both reckonings of the job came to the same. */
export interface Estimate {
  readonly text: string;
  readonly agrees: boolean;
}

/**
 * Recalculates a workbook, reckons its job a second time by functions that share no formula with it, and gives what to
 * print: the text for people, or JSON. Throws a sentence for the user where there is no price that could be trusted.
 */
export async function estimate(args: readonly string[]): Promise<Estimate> {
  const unknown = args.find((argument) => argument.startsWith("-") && argument !== "--json");
  if (unknown !== undefined) throw new Error(`There is no option ${unknown}. ${USAGE}`);
  const [file, ...more] = args.filter((argument) => argument !== "--json");
  if (file === undefined || more.length > 0) throw new Error(USAGE);
  const workbook = await open(file);
  const summary = summarize(workbook);
  if (!summary) throw new Error(`${file} is not a Rillwright estimate: it has no cell named Units that says US or SI.`);
  refuseUnsound(file, unsound(workbook));
  const { used, wrong } = readJob(workbook);
  refuseUnsound(
    file,
    wrong.map(({ cell, shown }) => `${cell} holds "${shown}", which is not what it asks for`),
  );
  const differences = compareReckonings(workbook, evaluate(used), used);
  const agrees = differences.length === 0;
  if (args.includes("--json")) return { text: JSON.stringify({ file, ...summary, differences }, null, 2), agrees };
  return { text: `${summaryText(summary)}\n\n${secondReckoning(differences)}`, agrees };
}

/** How many reasons are listed before the rest is only counted. */
const MOST_REASONS = 12;

function refuseUnsound(file: string, reasons: readonly string[]): void {
  if (reasons.length === 0) return;
  const more = reasons.length - MOST_REASONS;
  const listed = reasons.slice(0, MOST_REASONS).map((reason) => `  ${reason}`);
  throw new Error(
    [`${file} has no price that could be trusted:`, ...listed, ...(more > 0 ? [`  and ${more} more`] : [])].join("\n"),
  );
}

function secondReckoning(differences: readonly Difference[]): string {
  if (differences.length === 0) return "Reckoned a second time by other code: the same in every result and check.";
  const rows = differences.map(
    ({ name, workbook, job }) => `  ${name}: ${shown(workbook)} by the cells, ${shown(job)} by the job`,
  );
  return ["THE TWO RECKONINGS DIFFER: do not use this price before it is known why.", ...rows].join("\n");
}

function shown(value: Difference["job"]): string {
  return value === "" ? "nothing" : String(value);
}

export async function open(file: string): Promise<Recalculated> {
  const bytes = await read(file);
  refuseUnreadable(file, bytes);
  refuseCopy(file, bytes);
  try {
    return await recalculate(bytes);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw damaged(file);
    throw new Error(`${file} cannot be calculated: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

/** A copy of values holds numbers that nothing follows. */
function refuseCopy(file: string, bytes: Uint8Array): void {
  const made = copyMadeAt(bytes);
  if (made !== undefined)
    throw new FileRefusal(`${file} is a copy of values made ${made}; open the workbook that it was made from.`);
}

export async function read(file: string): Promise<Uint8Array> {
  try {
    const facts = await stat(file);
    if (facts.isDirectory()) throw new FileRefusal(`${file} is a folder, not a workbook.`);
    // A device or a pipe may never end.
    if (!facts.isFile()) throw new FileRefusal(`${file} is not a file.`);
    refuseSize(file, facts.size);
    return await readFile(file);
  } catch (error) {
    if (error instanceof FileRefusal) throw error;
    const { code } = error as NodeJS.ErrnoException;
    throw new FileRefusal(
      code === "ENOENT" ? `There is no file ${file}.` : `${file} cannot be read (${code ?? String(error)}).`,
    );
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  estimate(process.argv.slice(2)).then(
    ({ text, agrees }) => {
      console.log(text);
      if (!agrees) process.exitCode = 1;
    },
    (error: unknown) => {
      console.error(error instanceof Error ? error.message : String(error));
      process.exitCode = 1;
    },
  );
}
