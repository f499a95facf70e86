import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** Where "npm run build" puts the site; tests look at what would be shipped. */
export const BUILT = path.join(import.meta.dirname, "../dist");

/** A file of the built site. */
export function builtFile(name: string): Buffer {
  const file = path.join(BUILT, name);
  if (!existsSync(file))
    throw new Error(`${name} is not built; run "npm run build" before the tests ("npm test" does)`);
  return readFileSync(file);
}

/** The names of all files of the built site. */
export function builtFiles(): string[] {
  builtFile("functions.js");
  return readdirSync(BUILT, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(BUILT, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .sort();
}
