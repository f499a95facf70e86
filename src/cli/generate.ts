import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { catalogue } from "../functions/catalogue";
import type { Topic } from "../functions/contract/declaration";
import { wrapperSource } from "../functions/contract/wrapperSource";

const functionsFolder = path.join(path.dirname(fileURLToPath(import.meta.url)), "../functions");

/** The worksheet wrappers of every topic, by file name. */
export function worksheetFiles(): Map<string, string> {
  const paths = importPaths();
  const files = new Map<string, string>();
  for (const topic of new Set<Topic>(catalogue.map((d) => d.topic))) {
    const declarations = catalogue.filter((d) => d.topic === topic);
    files.set(`${topic}.ts`, wrapperSource(topic, declarations, paths));
  }
  return files;
}

/** Which module exports each declaration, relative to the wrappers' folder. */
function importPaths(): Map<string, string> {
  const paths = new Map<string, string>();
  for (const folder of readdirSync(functionsFolder, { withFileTypes: true })) {
    if (!folder.isDirectory() || folder.name === "contract" || folder.name === "worksheet") continue;
    for (const file of readdirSync(path.join(functionsFolder, folder.name))) {
      const text = readFileSync(path.join(functionsFolder, folder.name, file), "utf8");
      for (const match of text.matchAll(/export const ([A-Z]+) = declare\(/g)) {
        paths.set(match[1] ?? "", `../${folder.name}/${file.replace(/\.ts$/, "")}`);
      }
    }
  }
  return paths;
}

/** Writes the worksheet wrappers; the build reads functions.json from their comments. */
function main(): void {
  const target = path.join(functionsFolder, "worksheet");
  mkdirSync(target, { recursive: true });
  for (const [name, text] of worksheetFiles()) writeFileSync(path.join(target, name), text);
  console.log(`${catalogue.length} worksheet functions written`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
