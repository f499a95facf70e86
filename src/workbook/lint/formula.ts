import { fromFile, toFile } from "../formulaText";
import { versionFaults } from "./excelVersions";

/** A formula without its texts and quoted sheet names. */
function withoutTexts(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^']|'')*'!/g, "");
}

/** Faults of one formula as the file holds it; `names` are the defined names in lower case. */
export function lintFormula(
  formula: string,
  { functions, names }: { readonly functions: ReadonlySet<string>; readonly names: ReadonlySet<string> },
): string[] {
  const faults: string[] = [];
  const bare = withoutTexts(formula);
  if (formula.startsWith("=")) faults.push("begins with =");
  if (formula.length > 8192) faults.push("is longer than 8192 characters");
  if (bare.split("(").length !== bare.split(")").length) faults.push("has unbalanced brackets");
  if (/#REF!/.test(bare)) faults.push("refers to nothing");
  if (/(?<![A-Za-z0-9_])RILL\.[A-Z]/i.test(bare)) faults.push("calls one of ours by its shown name");
  if (toFile(fromFile(formula)) !== formula) faults.push("uses a newer function without its prefix");
  for (const [, name = ""] of bare.matchAll(/_xldudf_RILL_([A-Za-z0-9_]+)\s*\(/g)) {
    if (!functions.has(name)) faults.push(`calls ${name}, which is not one of ours`);
  }
  faults.push(...versionFaults(withoutTexts(fromFile(formula))));
  for (const name of namesIn(bare)) if (!names.has(name.toLowerCase())) faults.push(`uses the unknown name ${name}`);
  return faults;
}

/** Words of a formula that can only be defined names. */
export function namesIn(formula: string): string[] {
  const bare = withoutTexts(formula);
  return [...bare.matchAll(/(?<![\w.!$])([A-Za-z_\\][\w.\\]*)(?![\w.\\]|\s*\(|!)/g)]
    .map(([, word = ""]) => word)
    .filter(
      (word) => !/^(TRUE|FALSE)$/i.test(word) && !/^\$?[A-Z]{1,3}\$?\d+$/i.test(word) && !word.startsWith("_xlpm."),
    );
}
