import Papa from "papaparse";
import { guardText } from "./formulaGuard";
import type { Customs } from "./cells";
import { USUAL_STYLE, type CsvStyle } from "./csvStyle";

/**
 * Writes a table as CSV. Texts that a spreadsheet might run as a formula get an apostrophe; numbers stay numbers,
 * negative ones too.
 */
export function writeCsv(
  heading: readonly string[],
  rows: readonly (readonly (string | number)[])[],
  { decimal, mark }: CsvStyle = USUAL_STYLE,
): string {
  const written = rows.map((row) => row.map((cell) => writeCell(cell, decimal)));
  const text = Papa.unparse([heading.map(guardText), ...written], {
    delimiter: decimal === "," ? ";" : ",",
    newline: "\r\n",
  });
  return `${mark ? "\uFEFF" : ""}${text}\r\n`;
}

function writeCell(cell: string | number, decimal: Customs["decimal"]): string {
  if (typeof cell === "string") return guardText(cell);
  return decimal === "," ? String(cell).replace(".", ",") : String(cell);
}
