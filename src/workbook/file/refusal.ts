import { unzipSync } from "fflate";

/** A file that cannot be opened as a workbook, and why, in a sentence for the user. */
export class FileRefusal extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = "FileRefusal";
  }
}

const MOST_BYTES = 40_000_000;
/** What the parts may unpack to: a hundred times what a job's workbook does. A small file can claim gigabytes. */
const MOST_UNPACKED = 100_000_000;

const SAVE_AS = "save it as .xlsx in your spreadsheet program first";

/** Refuses a file by its size alone, so that it need not be read. */
export function refuseSize(fileName: string, size: number): void {
  if (size === 0) throw new FileRefusal(`${fileName} is empty.`);
  if (size > MOST_BYTES) {
    const [megabytes, most] = [Math.round(size / 1_000_000), MOST_BYTES / 1_000_000];
    throw new FileRefusal(`${fileName} is ${megabytes} MB; workbooks of up to ${most} MB are opened.`);
  }
}

/** Refuses what is no .xlsx workbook, or one that is not safe to unpack; looks only at the first bytes and the list of parts. */
export function refuseUnreadable(fileName: string, bytes: Uint8Array): void {
  refuseSize(fileName, bytes.length);
  const start = String.fromCharCode(...bytes.subarray(0, 5));
  if (start.startsWith("\xd0\xcf")) throw new FileRefusal(`${fileName} ${olderOrProtected(bytes)}.`);
  if (start === "%PDF-")
    throw new FileRefusal(`${fileName} is a PDF, not a workbook; open the workbook it was printed from.`);
  if (!start.startsWith("PK")) throw new FileRefusal(`${fileName} is not an .xlsx workbook; ${SAVE_AS}.`);
  const { names, unpacked } = partsOf(fileName, bytes);
  const has = (part: string): boolean => names.includes(part);
  if (unpacked > MOST_UNPACKED) {
    throw new FileRefusal(`${fileName} unpacks to more than ${MOST_UNPACKED / 1_000_000} MB, more than any job needs.`);
  }
  if (names.some((name) => name.endsWith("vbaProject.bin"))) {
    throw new FileRefusal(
      `${fileName} holds macros, which are never run here; save a copy as .xlsx without macros and open that.`,
    );
  }
  if (has("xl/workbook.bin")) throw new FileRefusal(`${fileName} is a binary workbook (.xlsb); ${SAVE_AS}.`);
  if (has("content.xml") && has("mimetype")) {
    throw new FileRefusal(`${fileName} is an OpenDocument file (.ods); ${SAVE_AS}.`);
  }
  if (!has("[Content_Types].xml") || !names.some((name) => name.startsWith("xl/"))) {
    throw new FileRefusal(`${fileName} is an archive but not an .xlsx workbook.`);
  }
}

/** What to say of a file whose parts cannot be read after all. */
export function damaged(fileName: string): FileRefusal {
  return new FileRefusal(`${fileName} is damaged and cannot be read; open your last good copy.`);
}

/** Password-protected workbooks and those of before 2007 share a container; only the first hold a part of this name (MS-OFFCRYPTO 2.3.4.4). */
function olderOrProtected(bytes: Uint8Array): string {
  const name = [..."EncryptedPackage"].flatMap((letter) => [letter.charCodeAt(0), 0]);
  for (let at = bytes.indexOf(0x45); at >= 0; at = bytes.indexOf(0x45, at + 1)) {
    if (name.every((byte, index) => bytes[at + index] === byte)) {
      return "is protected with a password; save a copy without one first";
    }
  }
  return `is an old .xls file; ${SAVE_AS}`;
}

function partsOf(fileName: string, bytes: Uint8Array): { names: string[]; unpacked: number } {
  const names: string[] = [];
  let unpacked = 0;
  try {
    unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        names.push(name);
        unpacked += originalSize;
        return false;
      },
    });
  } catch {
    throw damaged(fileName);
  }
  return { names, unpacked };
}
