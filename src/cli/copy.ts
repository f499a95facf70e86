import { writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { saveWorkbook } from "../bench/saving/saveWorkbook";
import { resultsOf } from "../company/typedFile";
import { copyFileName, valuesCopy } from "../workbook/copy/valuesCopy";
import { runCommand } from "./runCommand";
import { openWorkbookFile, readWorkbookFile } from "./workbookFile";

const USAGE = "Usage: npm run copy -- FILE.xlsx";

/**
 * Calculates a workbook afresh and writes its values beside it, without formulas, for those who have no add-in; gives the
 * sentence to print. A file of that name is never written over.
 */
export async function copyValues(args: readonly string[], made = new Date()): Promise<string> {
  const [file, ...more] = args;
  if (file === undefined || more.length > 0 || file.startsWith("-")) throw new Error(USAGE);
  const calculated = (await openWorkbookFile(file)).recalculate();
  const current = saveWorkbook(await readWorkbookFile(file), {
    edits: [],
    results: resultsOf(calculated),
    pictures: [],
  });
  const copy = valuesCopy(current, { made, from: basename(file) });
  const target = join(dirname(file), copyFileName(basename(file), made));
  try {
    await writeFile(target, copy, { flag: "wx" });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw new Error(
      code === "EEXIST" ? `${target} is there already.` : `${target} cannot be written (${code ?? String(error)}).`,
    );
  }
  return `${target} holds the values of ${basename(file)}, without formulas.`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await runCommand(USAGE, copyValues);
