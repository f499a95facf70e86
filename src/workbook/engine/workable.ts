import { catalogue } from "../../functions/catalogue";
import { lookupFunction } from "./library";

const OURS = new Set(catalogue.map(({ name }) => `RILL.${name}`));
/** Forms that the calculating library knows apart from its functions. */
const FORMS = new Set(
  "IF IFERROR IFNA IFS SWITCH CHOOSE LET LAMBDA INDIRECT OFFSET MAP REDUCE SCAN MAKEARRAY BYROW BYCOL".split(" "),
);

/** Whether the engine can work a formula out: it knows its functions, and all that it reads is in the workbook. */
export function isWorkable(formula: string): boolean {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
  // "[1]Prices!B4" and "'[1]Own prices'!B4" read a workbook that is not here.
  if (/(?:^|[^\w\]])'?\[\d+\]/.test(bare)) return false;
  const plain = bare.replace(/'(?:[^']|'')*'!/g, "");
  // "Prices[Cost]" reads a column of a table by its heading; tables are not read.
  if (/[\p{L}\p{N}_.]\[/u.test(plain)) return false;
  // "A1:INDEX(...)": INDEX gives values here, which have no place on a sheet.
  if (/:\s*INDEX\(|INDEX\([^()]*\)\s*:/i.test(plain)) return false;
  // In these, a name before "(" can be one that the formula itself makes.
  if (/\b(?:LET|LAMBDA)\(/i.test(plain)) return true;
  return [...plain.matchAll(/([A-Za-z_][\w.]*)\(/g)].every(([, name = ""]) => knows(name.toUpperCase()));
}

function knows(name: string): boolean {
  return OURS.has(name) || FORMS.has(name) || lookupFunction(name) !== undefined;
}
