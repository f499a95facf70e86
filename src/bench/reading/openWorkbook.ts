import { readXlsx, type Workbook } from "hucre/xlsx";
import { damaged, FileRefusal, refuseUnreadable } from "../../workbook/file/refusal";
import { Package } from "../../xlsx/package";
import { readXml } from "../../xlsx/xml";
import { readColumnLooks } from "./columnLooks";
import { usualSize, type UsualSize } from "./sizes";
import { tooMuchHeld, tooMuchNamed } from "./tooMuch";

/** A workbook as it was opened: the file's own bytes stay, for saving writes into them. */
export interface OpenedWorkbook {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly workbook: Workbook;
  /** How large rows and columns are that say nothing themselves, by sheet; the reading library leaves it out. */
  readonly usual: ReadonlyMap<string, UsualSize>;
}

const reading = new WeakMap<Uint8Array, Promise<OpenedWorkbook>>();

/** Reads a workbook file, or says in a sentence why it cannot be opened here. The same bytes are read once. */
export function openWorkbook(fileName: string, bytes: Uint8Array): Promise<OpenedWorkbook> {
  const read = reading.get(bytes) ?? readWorkbook(fileName, bytes);
  reading.set(bytes, read);
  return read;
}

async function readWorkbook(fileName: string, bytes: Uint8Array): Promise<OpenedWorkbook> {
  refuseUnreadable(fileName, bytes);
  try {
    const file = new Package(bytes);
    refuse(fileName, tooMuchNamed(file));
    const workbook = await readXlsx(bytes, { readStyles: true });
    refuse(fileName, tooMuchHeld(workbook));
    return { fileName, bytes, workbook, usual: readSheets(file, workbook) };
  } catch (error) {
    throw error instanceof FileRefusal ? error : damaged(fileName);
  }
}

function refuse(fileName: string, why: string | undefined): void {
  if (why !== undefined) throw new FileRefusal(`${fileName} ${why}.`);
}

/** What the reading library leaves out: the usual sizes of each sheet's rows and columns, and the looks of its columns. */
function readSheets(file: Package, workbook: Workbook): Map<string, UsualSize> {
  const parts = file.sheets();
  const usual = new Map<string, UsualSize>();
  for (const sheet of workbook.sheets) {
    const xml = file.text(parts.get(sheet.name) ?? "");
    if (xml === "") continue;
    const head = readXml(xml, "sheetData");
    readColumnLooks(xml, head, sheet);
    usual.set(sheet.name, usualSize(head));
  }
  return usual;
}
