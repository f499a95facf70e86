import { Workbook, type Cell, type Worksheet } from "@cj-tech-master/excelts";
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
  /** What each formula cell says, as a person types it without "=", by "Sheet!B7". */
  readonly formulas: ReadonlyMap<string, string>;
  /** Why a cell with a function of this project is in error, in a sentence, by "Sheet!B7". */
  readonly reasons: ReadonlyMap<string, string>;
  /** Defined names and their areas: "Site!$B$5". */
  readonly names: ReadonlyMap<string, string>;
  /** What the cells of a defined name hold or show; undefined where there is no such name. */
  named(name: string): CellValue[][] | undefined;
}

/** Opens an .xlsx and calculates every formula afresh. The one module that knows the calculating library of Node. */
export async function recalculate(bytes: Uint8Array): Promise<Recalculated> {
  return (await openWorkbook(bytes)).recalculate();
}

/** What is typed into cells, by "Sheet!B7"; "" empties a cell. */
export type TypedCells = ReadonlyMap<string, CellValue>;

/** A workbook that is opened once and calculated with one set of inputs after the other. */
export interface OpenedWorkbook {
  /** Defined names and their areas: "Site!$B$5". */
  readonly names: ReadonlyMap<string, string>;
  /** Calculates the file as it was opened, with these cells typed over; the outcome holds until the next calculation. */
  recalculate(typed?: TypedCells): Recalculated;
}

export async function openWorkbook(bytes: Uint8Array): Promise<OpenedWorkbook> {
  const { workbook, names, areas } = await open(bytes);
  const formulas = takeFormulas(workbook);
  const filled = new Set([...filledCells(workbook), ...formulas.map(({ key }) => key)]);
  const reasons = registerFunctions(workbook, catalogue);
  placeSpills(workbook, formulas);
  const texts = new Map(formulas.map((one) => [one.key, fromFile(one.formula)]));
  const enter = (one: FormulaCell): void =>
    enterFormula(one, withCaller(inlineNames(texts.get(one.key) ?? "", areas), one.key));
  formulas.forEach(enter);
  const byKey = new Map(formulas.map((one) => [one.key, one]));
  const before = new Map<string, Cell["value"]>();
  let sizes = sizesOf(formulas, ({ spill }) => (spill ? [spill.rows, spill.columns] : []));

  /** Takes back what was typed the last time, and types what is to be typed now. */
  const type = (typed: TypedCells): void => {
    for (const [key, value] of before) {
      const formula = byKey.get(key);
      if (formula) enter(formula);
      else cellIn(workbook, key).value = value;
    }
    before.clear();
    for (const [key, value] of typed) {
      const cell = cellIn(workbook, key);
      before.set(key, cell.value);
      cell.value = value === "" ? null : value;
    }
  };

  return {
    names,
    recalculate(typed = new Map()) {
      type(typed);
      const left = formulas.filter(({ key }) => !typed.has(key));
      const held = new Set([...filled, ...typed.keys()]);
      const settled = settle(workbook, left, held, sizes, () => reasons.clear());
      const { results } = settled;
      sizes = settled.sizes;
      return {
        sheets: workbook.worksheets.map(({ name }) => name),
        results,
        formulas: typed.size === 0 ? texts : new Map(left.map(({ key }) => [key, texts.get(key) ?? ""])),
        reasons,
        names,
        named(name) {
          const [, sheetName = "", address = ""] = /^'?(.+?)'?!(.+)$/.exec(names.get(name) ?? "") ?? [];
          return shownAt(workbook.getWorksheet(sheetName), address);
        },
      };
    },
  };
}

/** What an area shows; of tables that grow, no more than the sheet holds. */
function shownAt(sheet: Worksheet | undefined, address: string): CellValue[][] | undefined {
  return (
    sheet &&
    positionsIn(address, sheet.rowCount).map((row) => row.map((at) => shownIn(sheet.getCell(at.row, at.column))))
  );
}

function cellIn(workbook: Workbook, key: string): Cell {
  const end = key.lastIndexOf("!");
  const cell = workbook.getWorksheet(key.slice(0, end))?.getCell(key.slice(end + 1));
  if (!cell) throw new Error(`the workbook has no cell ${key}`);
  return cell;
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
  sizesBefore: string,
  beforePass: () => void,
): { readonly results: Map<string, Calculated>; readonly sizes: string } {
  let before = sizesBefore;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    beforePass();
    workbook.calculateFormulas();
    const results = new Map(formulas.map((one) => [one.key, resultOf(one, filled)]));
    const sizes = sizesOf(formulas, ({ key }) => sizeOf(results.get(key)));
    if (sizes === before) return { results, sizes };
    before = sizes;
  }
  throw new Error("the workbook does not settle: a formula depends on itself");
}

/** The sizes of all spills, as one text to compare. */
function sizesOf(formulas: readonly FormulaCell[], size: (one: FormulaCell) => readonly number[]): string {
  return JSON.stringify(formulas.filter(({ spill }) => spill).map(size));
}

function sizeOf(result: Calculated | undefined): [rows: number, columns: number] {
  return Array.isArray(result) ? [result.length, result[0]?.length ?? 1] : [1, 1];
}

/** Hands every call of our functions the address it is made from, so that a reason can be kept for the cell. */
function withCaller(formula: string, key: string): string {
  return formula.replace(/\bRILL\.([A-Z]+)\(/gi, (_, name: string) => `RILL.${name.toUpperCase()}("${key}",`);
}
