import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { installFormulaEngine } from "@cj-tech-master/excelts/formula";
import { catalogue } from "../functions/catalogue";
import { enterFormula, filledCells, positionsIn, resultOf, shownIn, takeFormulas } from "./engine/cells";
import type { Calculated, FormulaCell, Size } from "./engine/cells";
import { PLACEHOLDER, registerFunctions, registerPlaceholder } from "./engine/functions";
import { takeNames, type TakenNames } from "./engine/takeNames";
import { fromFile, inlineNames } from "./formulaText";
import type { CellValue } from "./model";

installFormulaEngine();
// Without it the library refuses to open a file with a chart.
installChartSupport();

/** Parts of a sheet that no result hangs on. Columns with a look would have the library copy it into every cell. */
const LOOKS = ["cols", "dataValidations", "conditionalFormatting", "pageSetup", "headerFooter", "rowBreaks"];

/** Passes after which sizes that still change count as circular; each spill that feeds another can take one. */
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
  const { workbook, names, areas } = await open(bytes);
  const formulas = takeFormulas(workbook);
  const filled = new Set([...filledCells(workbook), ...formulas.map(({ key }) => key)]);
  const reasons = registerFunctions(workbook, catalogue);
  placeSpills(workbook, formulas);
  for (const one of formulas) enterFormula(one, withCaller(inlineNames(fromFile(one.formula), areas), one.key));
  const results = settle(workbook, formulas, filled, () => reasons.clear());
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

async function open(bytes: Uint8Array): Promise<Omit<TakenNames, "bytes"> & { readonly workbook: Workbook }> {
  const workbook = new Workbook();
  try {
    const { bytes: file, ...taken } = takeNames(bytes);
    await workbook.xlsx.load(file, { ignoreNodes: LOOKS });
    return { workbook, ...taken };
  } catch (error) {
    throw new UnreadableWorkbook(error instanceof Error ? error.message : String(error));
  }
}

/** Lets the library see, before anything is calculated, which cells the spills of the saved file filled. */
function placeSpills(workbook: Workbook, formulas: readonly FormulaCell[]): void {
  const spills = formulas.filter(({ spill }) => spill && spill.rows * spill.columns > 1);
  registerPlaceholder(workbook, new Map(spills.map(({ key, spill }) => [key, spill as Size])));
  for (const one of spills) enterFormula(one, `${PLACEHOLDER}("${one.key}")`);
  workbook.calculateFormulas();
}

/**
 * Calculates until no spill changes its size. The library puts formulas in order by the cells the spills filled in the pass
 * before, so that only a pass in which every spill keeps its size has read them all in the right order.
 */
function settle(
  workbook: Workbook,
  formulas: readonly FormulaCell[],
  filled: ReadonlySet<string>,
  beforePass: () => void,
): Map<string, Calculated> {
  let before = JSON.stringify(formulas.map(({ spill }) => spill && [spill.rows, spill.columns]));
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    beforePass();
    workbook.calculateFormulas();
    const results = new Map(formulas.map((one) => [one.key, resultOf(one, filled)]));
    const now = JSON.stringify(formulas.map(({ key, spill }) => spill && sizeOf(results.get(key))));
    if (now === before) return results;
    before = now;
  }
  throw new Error("the workbook does not settle: a formula depends on itself");
}

function sizeOf(result: Calculated | undefined): [rows: number, columns: number] {
  return Array.isArray(result) ? [result.length, result[0]?.length ?? 1] : [1, 1];
}

/** Hands every call of our functions the address it is made from, so that a reason can be kept for the cell. */
function withCaller(formula: string, key: string): string {
  return formula.replace(/\bRILL\.([A-Z]+)\(/gi, (_, name: string) => `RILL.${name.toUpperCase()}("${key}",`);
}
