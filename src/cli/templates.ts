import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { buildWorkbook, TEMPLATES } from "../workbook/build";
import { COMPANY_BOOKS, shippedCompanyBook } from "../workbook/company/build";

/** Writes the templates that ship; the same sources give the same bytes. */
async function main(): Promise<void> {
  const folder = path.join(path.dirname(fileURLToPath(import.meta.url)), "../../templates");
  mkdirSync(folder, { recursive: true });
  const write = (file: string, bytes: Uint8Array): void => {
    writeFileSync(path.join(folder, file), bytes);
    console.log(`${file}: ${bytes.length} bytes`);
  };
  for (const { file, system, filled } of TEMPLATES) write(file, await buildWorkbook(system, filled));
  for (const book of COMPANY_BOOKS) write(book.file, await shippedCompanyBook(book));
}

await main();
