import { HostRefusal, type Progress, type WorkbookFile } from "../port";

/** Bytes to a piece; the most that Excel hands over at once (Office.Document.getFileAsync). */
const PIECE = 4_194_304;

/** The workbook as Excel would save it now, piece by piece. */
export async function workbookFile(progress?: Progress): Promise<WorkbookFile> {
  const { document } = Office.context;
  const file = await asked<Office.File>((done) =>
    document.getFileAsync(Office.FileType.Compressed, { sliceSize: PIECE }, done),
  );
  try {
    const bytes = new Uint8Array(file.size);
    let filled = 0;
    for (let index = 0; index < file.sliceCount; index++) {
      const slice = await asked<Office.Slice>((done) => file.getSliceAsync(index, done));
      const piece = slice.data as ArrayLike<number>;
      bytes.set(piece, filled);
      filled += piece.length;
      progress?.(index + 1, file.sliceCount);
    }
    if (filled !== file.size) throw new HostRefusal("Excel handed over only a part of the workbook; try again.");
    return { name: nameIn(document.url), bytes };
  } finally {
    // Excel keeps two files open at most.
    await new Promise<void>((resolve) => file.closeAsync(() => resolve()));
  }
}

function asked<T>(ask: (done: (result: Office.AsyncResult<T>) => void) => void): Promise<T> {
  return new Promise((resolve, reject) =>
    ask((result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve(result.value);
      else
        reject(
          new HostRefusal(
            `Excel did not hand over the workbook: ${result.error.message} Leave the cell you are editing, then try again.`,
          ),
        );
    }),
  );
}

/** The workbook's own name, from where it is kept; one that was never saved has none. */
function nameIn(url: string | undefined): string {
  const last =
    (url ?? "")
      .split(/[\\/]/)
      .pop()
      ?.replace(/[?#].*$/, "") ?? "";
  const name = /^https?:/i.test(url ?? "") ? decoded(last) : last;
  return /\.xls[xm]$/i.test(name) ? name.replace(/\.xlsm$/i, ".xlsx") : "Job.xlsx";
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
