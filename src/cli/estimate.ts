import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { recalculate, UnreadableWorkbook, type Recalculated } from "../workbook/recalculate";
import { summarize, summaryText } from "../workbook/summary";

const USAGE = "Usage: npm run estimate -- FILE.xlsx [--json]";

/** Recalculates a workbook and gives what to print: the text for people, or JSON; throws a sentence for the user. */
export async function estimate(args: readonly string[]): Promise<string> {
  const [file, ...more] = args.filter((argument) => argument !== "--json");
  if (file === undefined || more.length > 0) throw new Error(USAGE);
  const unknown = file.startsWith("-") ? file : undefined;
  if (unknown) throw new Error(`There is no option ${unknown}. ${USAGE}`);
  const summary = summarize(await open(file));
  if (!summary) throw new Error(`${file} is not a Rillwright estimate: it has no cell named Units that says US or SI.`);
  return args.includes("--json") ? JSON.stringify({ file, ...summary }, null, 2) : summaryText(summary);
}

async function open(file: string): Promise<Recalculated> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "ENOENT") throw new Error(`There is no file ${file}.`);
    if (code === "EISDIR") throw new Error(`${file} is a folder, not a workbook.`);
    throw new Error(`${file} cannot be read (${code ?? String(error)}).`);
  }
  try {
    return await recalculate(bytes);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) {
      throw new Error(`${file} is damaged, or not an .xlsx workbook (${error.message}).`);
    }
    throw error;
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
