import type { Sheet, Workbook } from "hucre";
import { areaName, cellArea, parseArea, type Area } from "../../xlsx/address";
import type { Package } from "../../xlsx/package";

/** As many cells as are opened. */
export const MOST_CELLS = 300_000;
/** Letters of a formula that spreadsheets take, and brackets in brackets that any person could follow four times over. */
const MOST_LETTERS = 8192;
const DEEPEST = 256;
/** Cells that all formulas of a file read together, each as often as it is read: what a few seconds suffice for. */
const MOST_READ = 150_000_000;
/** Letters that the parts of a file come to, each as often as it is named: one part can be named a thousand times. */
const MOST_NAMED = 400_000_000;

/** What a file asks for that would take all of a machine's memory or time, as the end of a sentence. */
export function tooMuchNamed(file: Package): string | undefined {
  const owners = ["", ...file.names().filter((name) => !name.endsWith(".rels"))];
  const named = owners
    .flatMap((owner) => [...file.relations(owner).values()])
    .reduce((sum, { target }) => sum + file.size(target), 0);
  return named > MOST_NAMED
    ? `names its parts so often that they come to ${millions(named)} million letters; up to ${millions(MOST_NAMED)} million are opened`
    : undefined;
}

/** The same of what stands in the sheets. */
export function tooMuchHeld({ sheets }: Workbook): string | undefined {
  const cells = sheets.reduce((sum, sheet) => sum + (sheet.cells?.size ?? 0), 0);
  if (cells > MOST_CELLS) return `holds ${count(cells)} cells; the bench opens up to ${count(MOST_CELLS)}`;
  let filled = 0;
  let read = 0;
  for (const sheet of sheets) {
    for (const [key, { formula, formulaRef, formulaType }] of sheet.cells ?? []) {
      if (formula === undefined) continue;
      const [row = 0, column = 0] = key.split(",").map(Number);
      const where = areaName(cellArea(sheet.name, row, column));
      if (formula.length > MOST_LETTERS)
        return `has a formula of ${count(formula.length)} letters in ${where}; spreadsheets take ${count(MOST_LETTERS)}`;
      if (depthOf(formula) > DEEPEST) return `has a formula in ${where} with brackets nested over ${DEEPEST} deep`;
      filled += formulaType === "array" ? sizeOf(parseArea(formulaRef ?? "", sheet.name)) : 0;
      if (filled > MOST_CELLS)
        return `has a formula in ${where} that fills more cells than the ${count(MOST_CELLS)} the bench opens`;
      read += cellsRead(formula, sheet, sheets);
      // A filled-down formula stands in one cell only, and reads for all of them.
      if (formulaType === "shared") read += sharedReads(formula, formulaRef, sheet, sheets);
      if (read > MOST_READ)
        return `has formulas that read over ${millions(MOST_READ)} million cells in all, running sums perhaps; add to the sum above instead`;
    }
  }
  return undefined;
}

function depthOf(formula: string): number {
  let depth = 0;
  let deepest = 0;
  for (const letter of formula.replace(/"[^"]*"/g, "")) {
    if (letter === "(") deepest = Math.max(deepest, ++depth);
    else if (letter === ")") depth -= 1;
  }
  return deepest;
}

const AREA_READ = /(?:('(?:[^']|'')+'|[\w.]+)!)?\$?([A-Z]{1,3})(\$?)(\d*):\$?([A-Z]{1,3})(\$?)(\d*)/gi;

/** How many cells a formula reads in areas; single ones cost nothing to speak of. Blank cells below a sheet's last are none. */
function cellsRead(formula: string, own: Sheet, sheets: readonly Sheet[], further = 0): number {
  let read = 0;
  for (const [, sheetName, left = "", fixedTop, top = "", right = "", fixedBottom, bottom = ""] of formula.matchAll(
    AREA_READ,
  )) {
    const name = sheetName?.replace(/^'|'$/g, "").replace(/''/g, "'");
    const sheet = name === undefined ? own : sheets.find((one) => one.name === name);
    const rows = sheet?.rows.length ?? 0;
    const first = top === "" ? 1 : Number(top) + (fixedTop ? 0 : further);
    const last = Math.min(rows, bottom === "" ? rows : Number(bottom) + (fixedBottom ? 0 : further));
    const across = parseArea(`${left}1:${right}1`, "");
    const columns = Math.min((across?.right ?? 0) - (across?.left ?? 0) + 1, sheet?.columns?.length || WIDEST);
    read += Math.max(0, last - first + 1) * columns;
  }
  return read;
}

/** Columns of a sheet that says nothing of its own. */
const WIDEST = 100;

function sharedReads(formula: string, ref: string | undefined, own: Sheet, sheets: readonly Sheet[]): number {
  const area = ref === undefined ? undefined : parseArea(ref, own.name);
  if (!area) return 0;
  const rows = area.bottom - area.top + 1;
  // The reads grow by the same from row to row, so that the middle one stands for all.
  return cellsRead(formula, own, sheets, Math.floor(rows / 2)) * (sizeOf(area) - 1);
}

function sizeOf(area: Area | undefined): number {
  return area ? (area.bottom - area.top + 1) * (area.right - area.left + 1) : 0;
}

function count(number: number): string {
  return number.toLocaleString("en");
}

function millions(number: number): string {
  return count(Math.round(number / 1e6));
}
