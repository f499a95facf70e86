import type { Job } from "./job";
import type { SheetLayout } from "./sheetLayout";

/** A sheet of the workbook, described by the file it has to itself. */
export interface SheetDefinition {
  readonly name: string;
  /** Place among the tabs. */
  readonly order: number;
  /** When it is laid out: 0 for most, 1 for those that list takeoff lines or rates, 2 for the list of checks, 3 for the facts of them all. */
  readonly turn?: 0 | 1 | 2 | 3;
  build(s: SheetLayout, job: Job): void;
}

export function defineSheet(definition: SheetDefinition): SheetDefinition {
  return definition;
}
