import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { ALL } from "../effort";

type Office = "Office2019" | "Microsoft365";
/** The oldest Excel that files are for, and when everything is tried the newest. */
export const OFFICES: readonly Office[] = ALL ? ["Office2019", "Microsoft365"] : ["Office2019"];

/** What the Open XML validator finds wrong in a workbook, in words; nothing when it is sound. */
export function validate(bytes: Uint8Array, office: Office = "Microsoft365"): string[] {
  const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
  try {
    const file = path.join(folder, "saved.xlsx");
    writeFileSync(file, bytes);
    const report = run(file, office);
    const found = JSON.parse(report) as
      { errors?: { description?: string; path?: string }[] } | { description?: string }[];
    const errors = Array.isArray(found) ? found : (found.errors ?? []);
    return errors.map((error) => JSON.stringify(error));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function run(file: string, office: string): string {
  const command = path.join(import.meta.dirname, "../../node_modules/.bin/ooxml-validator");
  try {
    return execFileSync(command, [file, "--officeVersion", office], { encoding: "utf8" });
  } catch (error) {
    // It ends with 1 when it found something, and says so in what it printed.
    const { stdout, message } = error as { stdout?: string; message: string };
    if (!stdout) throw new Error(message);
    return stdout;
  }
}
