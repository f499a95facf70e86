import { strFromU8, unzipSync } from "fflate";

/** Whether a file's bytes are a company book, by the name that each book has; a damaged file is none. */
export function isCompanyBook(bytes: Uint8Array): boolean {
  try {
    const { "xl/workbook.xml": part } = unzipSync(bytes, { filter: ({ name }) => name === "xl/workbook.xml" });
    return part !== undefined && /<(?:\w+:)?definedName\s[^>]*name="BookUnits"/.test(strFromU8(part));
  } catch {
    return false;
  }
}
