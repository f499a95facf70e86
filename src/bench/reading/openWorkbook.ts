import { unzipSync } from "fflate";
import { readXlsx, type Workbook } from "hucre/xlsx";
import { FileRefusal } from "./refusal";

/** A workbook as it was opened: the file's own bytes stay, for saving writes into them. */
export interface OpenedWorkbook {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly workbook: Workbook;
}

const MOST_BYTES = 40_000_000;
const MOST_CELLS = 300_000;
/** What the parts may unpack to; a small file can claim gigabytes. */
const MOST_UNPACKED = 400_000_000;

/** Reads a workbook file, or says in a sentence why it cannot be opened here. */
export async function openWorkbook(fileName: string, bytes: Uint8Array): Promise<OpenedWorkbook> {
  refuseByLooks(fileName, bytes);
  refuseByContents(fileName, bytes);
  const workbook = await readXlsx(bytes, { readStyles: true }).catch(() => {
    throw new FileRefusal(`${fileName} is damaged and cannot be read; open your last good copy.`);
  });
  const cells = workbook.sheets.reduce((sum, sheet) => sum + (sheet.cells?.size ?? 0), 0);
  if (cells > MOST_CELLS) {
    throw new FileRefusal(
      `${fileName} holds ${cells.toLocaleString("en")} cells; the bench opens up to ${MOST_CELLS.toLocaleString("en")}.`,
    );
  }
  return { fileName, bytes, workbook };
}

/** Refuses by size, name and first bytes. */
function refuseByLooks(fileName: string, bytes: Uint8Array): void {
  if (bytes.length === 0) throw new FileRefusal(`${fileName} is empty.`);
  if (bytes.length > MOST_BYTES) {
    const size = Math.round(bytes.length / 1_000_000);
    throw new FileRefusal(`${fileName} is ${size} MB; the bench opens workbooks up to ${MOST_BYTES / 1_000_000} MB.`);
  }
  const [first, second] = bytes;
  if (first === 0xd0 && second === 0xcf) {
    throw new FileRefusal(
      `${fileName} is protected with a password or is an old .xls file; save it as an .xlsx workbook without a password first.`,
    );
  }
  if (first !== 0x50 || second !== 0x4b) {
    throw new FileRefusal(`${fileName} is not an .xlsx workbook; save it as .xlsx in your spreadsheet program first.`);
  }
}

/** Looks at the list of parts without unpacking any of them. */
function refuseByContents(fileName: string, bytes: Uint8Array): void {
  const parts: string[] = [];
  let unpacked = 0;
  try {
    unzipSync(bytes, {
      filter: (part) => {
        parts.push(part.name);
        unpacked += part.originalSize;
        return false;
      },
    });
  } catch {
    throw new FileRefusal(`${fileName} is damaged and cannot be read; open your last good copy.`);
  }
  if (unpacked > MOST_UNPACKED) throw new FileRefusal(`${fileName} unpacks to more than the bench can hold.`);
  if (parts.some((part) => part.endsWith("vbaProject.bin"))) {
    throw new FileRefusal(
      `${fileName} holds macros, which the bench never runs; save a copy as .xlsx without macros and open that.`,
    );
  }
  if (!parts.includes("[Content_Types].xml") || !parts.some((part) => part.startsWith("xl/"))) {
    throw new FileRefusal(`${fileName} is an archive but not an .xlsx workbook.`);
  }
}
