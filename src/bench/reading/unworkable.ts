import type { Sheet, Workbook } from "hucre";
import { formulaOf } from "./contents";

/** Cells of each sheet whose formulas the bench cannot work out, as "row,column"; it shows and keeps their stored results. */
export type Unworkable = ReadonlyMap<string, ReadonlySet<string>>;

/** Finds formulas that call functions the engine does not know, or read other workbooks or ranges it loses sight of. */
export function unworkable({ sheets }: Workbook, knows: (name: string) => boolean): Unworkable {
  return new Map(sheets.map((sheet) => [sheet.name, inSheet(sheet, knows)]));
}

function inSheet({ cells }: Sheet, knows: (name: string) => boolean): Set<string> {
  const keys = new Set<string>();
  const groups = new Set<number>();
  for (const [key, cell] of cells ?? []) {
    if (isWorkable(formulaOf(cell), knows)) continue;
    keys.add(key);
    if (cell.formulaSharedIndex !== undefined) groups.add(cell.formulaSharedIndex);
  }
  if (groups.size === 0) return keys;
  for (const [key, { formulaSharedIndex }] of cells ?? [])
    if (formulaSharedIndex !== undefined && groups.has(formulaSharedIndex)) keys.add(key);
  return keys;
}

export function isWorkable(formula: string, knows: (name: string) => boolean): boolean {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
  // "[1]Prices!B4" and "'[1]Own prices'!B4" read a workbook that is not here.
  if (/(?:^|[^\w\]])'?\[\d+\]/.test(bare)) return false;
  const plain = bare.replace(/'(?:[^']|'')*'!/g, "");
  // "Prices[Cost]" reads a column of a table by its heading; the bench has no tables.
  if (/[\p{L}\p{N}_.]\[/u.test(plain)) return false;
  // The engine works "A1:INDEX(...)" out once, and then follows no change of where it ends.
  if (/:\s*[A-Za-z_.]+\(|\)\s*:/.test(plain)) return false;
  // In these, a name before "(" can be one that the formula itself makes.
  if (/\b(?:LET|LAMBDA)\(/i.test(plain)) return true;
  return [...plain.matchAll(/([A-Za-z_][\w.]*)\(/g)].every(([, name = ""]) => knows(name.toUpperCase()));
}
