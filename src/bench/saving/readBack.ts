import type { Workbook } from "hucre";
import { readXlsx } from "hucre/xlsx";
import { areaName, cellArea } from "../../xlsx/address";
import { fromFile, toFile } from "../../workbook/formulaText";
import { contentOf } from "../work/fileContent";
import type { Edit, Work } from "../work/work";

/** A time of day is read back to the millisecond. */
const MILLISECOND = 1 / 86_400_000;

/**
 * Reads a saved file with a reader that shares nothing with what wrote it, and gives the places of what it lacks: edits
 * that are not in it as they were typed, and pictures that are missing.
 */
export async function missingIn(bytes: Uint8Array, { edits, pictures }: Work): Promise<string[]> {
  const workbook = await readXlsx(bytes, { readStyles: true });
  return [
    ...edits.filter((edit) => !holdsEdit(workbook, edit)).map(placeOf),
    ...pictures
      .filter(
        ({ sheet, row, column, title }) =>
          !workbook.sheets
            .find(({ name }) => name === sheet)
            ?.images?.some(
              ({ altText = "", anchor }) => altText === title && anchor.from.row === row && anchor.from.col === column,
            ),
      )
      .map(placeOf),
  ];
}

function placeOf({ sheet, row, column }: { sheet: string; row: number; column: number }): string {
  return areaName(cellArea(sheet, row, column));
}

function holdsEdit({ sheets, dateSystem }: Workbook, { sheet, row, column, content }: Edit): boolean {
  const owner = sheets.find(({ name }) => name === sheet);
  const read = owner && contentOf(owner, row, column, dateSystem === "1904");
  if (typeof read === "number" && typeof content === "number") return Math.abs(read - content) <= MILLISECOND;
  if (typeof read !== "string" || typeof content !== "string") return read === content;
  return asWritten(read) === asWritten(content);
}

/** A text as any file can hold it: names of functions in capitals, no control characters, one kind of line end. */
function asWritten(text: string): string {
  if (text.startsWith("=")) return `=${fromFile(toFile(text.slice(1)))}`;
  return (
    text
      .replace(/\r\n?/g, "\n")
      // eslint-disable-next-line no-control-regex
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "")
  );
}
