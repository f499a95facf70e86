import { readFile, stat } from "node:fs/promises";
import { copyMadeAt } from "../workbook/copy/valuesCopy";
import { damaged, FileRefusal, refuseSize, refuseUnreadable } from "../workbook/file/refusal";
import { openWorkbook, UnreadableWorkbook, type OpenedWorkbook } from "../workbook/recalculate";

/** Opens a workbook's file and calculates it; throws a sentence for the user where it is none. */
export async function openWorkbookFile(file: string): Promise<OpenedWorkbook> {
  const bytes = await readWorkbookFile(file);
  refuseUnreadable(file, bytes);
  refuseCopy(file, bytes);
  try {
    return await openWorkbook(bytes);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw damaged(file);
    throw new Error(`${file} cannot be calculated: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

/** A copy of values holds numbers that nothing follows. */
function refuseCopy(file: string, bytes: Uint8Array): void {
  const made = copyMadeAt(bytes);
  if (made === undefined) return;
  throw new FileRefusal(`${file} is a copy of values made ${made}; open the workbook that it was made from.`);
}

/** A file's bytes; throws a sentence for the user where there is none that could be a workbook. */
export async function readWorkbookFile(file: string): Promise<Uint8Array> {
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
