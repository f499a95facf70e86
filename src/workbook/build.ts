import type { UnitSystem } from "../calc/quantity/unitSystem";
import { assemble } from "./assemble";
import { cellAddress } from "./layout/address";
import type { WorkbookModel } from "./model";
import { recalculate, type Recalculated } from "./recalculate";
import { sheets } from "./sheets";
import { writeWorkbook, type FileOptions } from "./write";

/** The templates that ship, by the name of their file. */
export const TEMPLATES: readonly {
  readonly file: string;
  readonly system: UnitSystem;
  readonly filled: "demo" | "blank";
}[] = [
  { file: "rillwright-us-blank.xlsx", system: "US", filled: "blank" },
  { file: "rillwright-us-demo.xlsx", system: "US", filled: "demo" },
  { file: "rillwright-si-blank.xlsx", system: "SI", filled: "blank" },
  { file: "rillwright-si-demo.xlsx", system: "SI", filled: "demo" },
];

/** Calculates a model and stores the results in its cells, so that the file can be read without our functions. */
export async function calculate(model: WorkbookModel): Promise<Recalculated> {
  const calculated = await recalculate(await writeWorkbook(model, { charts: false }));
  storeResults(model, calculated);
  return calculated;
}

/** Puts results into the cells of the model they were calculated from. */
export function storeResults(model: WorkbookModel, { results }: Pick<Recalculated, "results">): void {
  for (const sheet of model.sheets) {
    for (const [row, cells] of sheet.rows) {
      for (const [column, cell] of cells) {
        if (cell.formula === undefined) continue;
        cell.result = results.get(`${sheet.name}!${cellAddress(row, column)}`);
      }
    }
  }
}

/** Lays out, calculates and writes one workbook. */
export async function buildWorkbook(
  system: UnitSystem,
  filled: "demo" | "blank",
  options?: FileOptions,
): Promise<Uint8Array> {
  const model = assemble(sheets, system, filled);
  await calculate(model);
  return writeWorkbook(model, options);
}
