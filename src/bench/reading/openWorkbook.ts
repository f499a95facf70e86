import { readXlsx, type Workbook } from "hucre/xlsx";
import { damaged, FileRefusal, refuseUnreadable } from "../../workbook/file/refusal";
import { Package } from "../../xlsx/package";
import { readXml } from "../../xlsx/xml";
import { readColumnLooks } from "./columnLooks";
import { usualSize, type UsualSize } from "./sizes";

/** A workbook as it was opened: the file's own bytes stay, for saving writes into them. */
export interface OpenedWorkbook {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly workbook: Workbook;
  /** How large rows and columns are that say nothing themselves, by sheet; the reading library leaves it out. */
  readonly usual: ReadonlyMap<string, UsualSize>;
}

const MOST_CELLS = 300_000;

/** Reads a workbook file, or says in a sentence why it cannot be opened here. */
export async function openWorkbook(fileName: string, bytes: Uint8Array): Promise<OpenedWorkbook> {
  refuseUnreadable(fileName, bytes);
  const workbook = await readXlsx(bytes, { readStyles: true }).catch(() => {
    throw damaged(fileName);
  });
  const cells = workbook.sheets.reduce((sum, sheet) => sum + (sheet.cells?.size ?? 0), 0);
  if (cells > MOST_CELLS) {
    throw new FileRefusal(
      `${fileName} holds ${cells.toLocaleString("en")} cells; the bench opens up to ${MOST_CELLS.toLocaleString("en")}.`,
    );
  }
  const file = new Package(bytes);
  const parts = file.sheets();
  const usual = new Map<string, UsualSize>();
  for (const sheet of workbook.sheets) {
    const xml = file.text(parts.get(sheet.name) ?? "");
    const head = readXml(xml, "sheetData");
    readColumnLooks(xml, head, sheet);
    usual.set(sheet.name, usualSize(head));
  }
  return { fileName, bytes, workbook, usual };
}
