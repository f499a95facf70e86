import { readUnitSystem, type UnitSystem } from "../calc/quantity/unitSystem";
import type { CellValue } from "../workbook/model";
import type { Recalculated } from "../workbook/recalculate";

/** The recalculated workbook as papers read it: by name, and never a number that is not there. */
export class PaperCells {
  constructor(readonly workbook: Recalculated) {}

  get system(): UnitSystem {
    return readUnitSystem(this.text("Units"));
  }

  /** Rows of a name's area; none where the workbook has no such name. */
  rows(name: string): CellValue[][] {
    return this.workbook.named(name) ?? [];
  }

  /** Rows of a sheet, from its first cell. */
  sheet(name: string): CellValue[][] {
    return this.workbook.cells(`${name}!$A$1:$O$400`) ?? [];
  }

  /** What a cell shows, as words; "" where it is blank or in error. */
  text(name: string): string {
    const value = this.rows(name)[0]?.[0] ?? "";
    return typeof value === "string" && value.startsWith("#") ? "" : String(value).trim();
  }

  /** A number, or undefined where there is none. */
  number(name: string): number | undefined {
    const value = this.rows(name)[0]?.[0];
    return typeof value === "number" && Number.isFinite(value) ? value : undefined;
  }
}

/** What the job is called on papers. */
export function jobName(cells: PaperCells): string {
  return cells.text("JobName") || cells.text("FeatureName") || "Job without a name";
}

/** Where the company is found, and who answers, in two lines. */
export function companyLines(cells: PaperCells): string[] {
  const license = cells.text("CompanyLicense");
  return (
    [
      ["CompanyAddress", "CompanyPhone", "CompanyEmail"].map((name) => cells.text(name)),
      [license && `License ${license}`, cells.text("Estimator")],
    ]
      // A line that wraps ends with the point, and does not begin with it.
      .map((texts) => texts.filter((text) => text !== "").join("\u00a0· "))
      .filter((line) => line !== "")
  );
}

/** A text that stays on one line, such as a telephone number. */
export function unbroken(text: string): string {
  return text.replace(/ /g, "\u00a0");
}

/** The numbers of a row's cell, or undefined. */
export function numberIn(row: readonly CellValue[], column: number): number | undefined {
  const value = row[column];
  return typeof value === "number" && Number.isFinite(value) ? value : undefined;
}

export function textIn(row: readonly CellValue[], column: number): string {
  const value = row[column] ?? "";
  return String(value).trim();
}
