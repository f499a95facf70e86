import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { buildWorkbook, TEMPLATES } from "../workbook/build";

/** Writes the templates that ship; the same sources give the same bytes. */
async function main(): Promise<void> {
  const folder = path.join(path.dirname(fileURLToPath(import.meta.url)), "../../templates");
  mkdirSync(folder, { recursive: true });
  for (const { file, system, filled } of TEMPLATES) {
    const bytes = await buildWorkbook(system, filled);
    writeFileSync(path.join(folder, file), bytes);
    console.log(`${file}: ${bytes.length} bytes`);
  }
}

await main();
