import { readFile, stat } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { damaged, FileRefusal, refuseSize, refuseUnreadable } from "../workbook/file/refusal";
import { recalculate, UnreadableWorkbook, type Recalculated } from "../workbook/recalculate";
import { summarize, summaryText } from "../workbook/summary";

const USAGE = "Usage: npm run estimate -- FILE.xlsx [--json]";

/** Recalculates a workbook and gives what to print: the text for people, or JSON; throws a sentence for the user. */
export async function estimate(args: readonly string[]): Promise<string> {
  const unknown = args.find((argument) => argument.startsWith("-") && argument !== "--json");
  if (unknown !== undefined) throw new Error(`There is no option ${unknown}. ${USAGE}`);
  const [file, ...more] = args.filter((argument) => argument !== "--json");
  if (file === undefined || more.length > 0) throw new Error(USAGE);
  const summary = summarize(await open(file));
  if (!summary) throw new Error(`${file} is not a Rillwright estimate: it has no cell named Units that says US or SI.`);
  return args.includes("--json") ? JSON.stringify({ file, ...summary }, null, 2) : summaryText(summary);
}

async function open(file: string): Promise<Recalculated> {
  const bytes = await read(file);
  refuseUnreadable(file, bytes);
  try {
    return await recalculate(bytes);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw damaged(file);
    throw new Error(`${file} cannot be calculated: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

async function read(file: string): Promise<Uint8Array> {
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
    (text) => console.log(text),
    (error: unknown) => {
      console.error(error instanceof Error ? error.message : String(error));
      process.exitCode = 1;
    },
  );
}
