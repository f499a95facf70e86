import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { installFormulaEngine } from "@cj-tech-master/excelts/formula";
import { catalogue } from "../functions/catalogue";
import {
  clearSpilledCells,
  filledCells,
  forgetResults,
  positionsIn,
  resultsOf,
  shownIn,
  type Calculated,
} from "./engine/cells";
import { registerFunctions } from "./engine/functions";
import { fromFile } from "./formulaText";
import type { CellValue } from "./model";

installFormulaEngine();
// Without it the library refuses to open a file with a chart.
installChartSupport();

/** Passes after which results that still change count as circular. Each spill that feeds another takes one pass. */
const MOST_PASSES = 12;

/** The outcome of a recalculation. */
export interface Recalculated {
  readonly sheets: readonly string[];
  /** Results of formula cells by "Sheet!B7"; rows of values where the formula spills. */
  readonly results: ReadonlyMap<string, Calculated>;
  /** Why a cell with a function of this project is in error, in a sentence, by "Sheet!B7". */
  readonly reasons: ReadonlyMap<string, string>;
  /** Defined names and their areas: "Site!$B$5". */
  readonly names: ReadonlyMap<string, string>;
  /** What the cells of a defined name hold or show; undefined where there is no such name. */
  named(name: string): CellValue[][] | undefined;
}

/** Opens an .xlsx and calculates every formula afresh. The one module that knows the calculating library of Node. */
export async function recalculate(bytes: Uint8Array): Promise<Recalculated> {
  const workbook = await open(bytes);
  clearSpilledCells(workbook);
  const reasons = registerFunctions(workbook, catalogue);
  forgetResults(workbook, (formula, key) => withCaller(fromFile(formula), key));
  const filled = filledCells(workbook);
  const results = settle(workbook, filled, () => reasons.clear());
  const names = new Map(workbook.definedNames.model.map(({ name, ranges }) => [name, ranges[0] ?? ""]));
  return {
    sheets: workbook.worksheets.map(({ name }) => name),
    results,
    reasons,
    names,
    named(name) {
      const [, sheetName = "", address = ""] = /^'?(.+?)'?!(.+)$/.exec(names.get(name) ?? "") ?? [];
      const sheet = workbook.getWorksheet(sheetName);
      return sheet && positionsIn(address).map((row) => row.map((at) => shownIn(sheet.getCell(at.row, at.column))));
    },
  };
}

/** The file is damaged, or no workbook at all. */
export class UnreadableWorkbook extends Error {}

async function open(bytes: Uint8Array): Promise<Workbook> {
  const workbook = new Workbook();
  try {
    await workbook.xlsx.load(bytes);
    return workbook;
  } catch (error) {
    throw new UnreadableWorkbook(error instanceof Error ? error.message : String(error));
  }
}

/**
 * Calculates until what the spills leave in other cells no longer changes: the library shows it to their readers one pass
 * later.
 */
function settle(workbook: Workbook, filled: ReadonlySet<string>, beforePass: () => void): Map<string, Calculated> {
  let before = "[]";
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    beforePass();
    workbook.calculateFormulas();
    const results = resultsOf(workbook, filled);
    const spilled = JSON.stringify([...results].filter(([, result]) => Array.isArray(result)));
    if (spilled === before) return results;
    before = spilled;
  }
  throw new Error("the workbook does not settle: a formula depends on itself");
}

/** Hands every call of our functions the address it is made from, so that a reason can be kept for the cell. */
function withCaller(formula: string, key: string): string {
  return formula.replace(/\bRILL\.([A-Z]+)\(/gi, (_, name: string) => `RILL.${name.toUpperCase()}("${key}",`);
}
