import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { assemble } from "../../src/workbook/assemble";
import { calculate, TEMPLATES } from "../../src/workbook/build";
import type { WorkbookModel } from "../../src/workbook/model";
import type { Recalculated } from "../../src/workbook/recalculate";
import { sheets } from "../../src/workbook/sheets";
import { writeWorkbook } from "../../src/workbook/write";

export interface BuiltTemplate {
  readonly file: string;
  readonly model: WorkbookModel;
  readonly calculated: Recalculated;
  readonly bytes: Uint8Array;
}

let made: Promise<readonly BuiltTemplate[]> | undefined;

/** Every template, built once for all tests that share what they load; none of them changes it. */
export function builtTemplates(): Promise<readonly BuiltTemplate[]> {
  return (made ??= makeTemplates());
}

async function makeTemplates(): Promise<BuiltTemplate[]> {
  const built: BuiltTemplate[] = [];
  for (const { file, system, filled } of TEMPLATES) {
    const model = assemble(sheets, system, filled);
    const calculated = await calculate(model);
    built.push({ file, model, calculated, bytes: await writeWorkbook(model) });
  }
  return built;
}

/** Whether two cell values agree: numbers to 9 digits, texts to the letter. */
export function agree(one: unknown, two: unknown): boolean {
  if (typeof one === "number" && typeof two === "number") {
    return Math.abs(one - two) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(two));
  }
  return one === two;
}

/** A file with the XML of every worksheet changed. */
export function changeSheets(bytes: Uint8Array, change: (xml: string) => string): Uint8Array {
  const parts = unzipSync(bytes);
  for (const [name, part] of Object.entries(parts)) {
    if (name.startsWith("xl/worksheets/sheet")) parts[name] = strToU8(change(strFromU8(part)));
  }
  return zipSync(parts);
}
