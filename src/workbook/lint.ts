import { Package } from "../xlsx/package";
import { attributeOf, within } from "../xlsx/xml";
import { lintNames, nameEntries } from "./lint/names";
import { lintSheet } from "./lint/sheet";
import { lintTables } from "./lint/tables";

/** What a file may contain beyond the format's own rules. */
export interface LintRules {
  /** Names of the worksheet functions, without the namespace. */
  readonly functions: ReadonlySet<string>;
}

/**
 * Finds what a schema validator does not: names and validations Excel would refuse, functions without their prefix,
 * literal calls of our functions, formulas without a stored value, shared strings and tables that do not fit.
 * Gives one sentence for each fault.
 */
export function lintWorkbook(bytes: Uint8Array, rules: LintRules): string[] {
  const file = new Package(bytes);
  const workbook = file.xml(file.workbook);
  if (!workbook) return ["the workbook part is missing"];
  const names = nameEntries(workbook);
  const faults = lintNames(names);
  const [calculation] = within(workbook, "calcPr");
  if (["1", "true"].includes(attributeOf(calculation, "fullCalcOnLoad") ?? ""))
    faults.push("the workbook asks for a full calculation on loading");
  if (file.partOf("calcChain")) faults.push("the workbook carries a calculation chain");
  const strings = file.sharedTexts();
  const known = new Set(names.map(({ name }) => name.toLowerCase()));
  for (const part of file.sheets().values()) {
    const { faults: found, cells } = lintSheet(part, file.text(part), { ...rules, strings, names: known });
    faults.push(...found);
    for (const { type, target } of file.relations(part).values()) {
      const table = type.endsWith("/table") ? file.xml(target) : undefined;
      if (table) faults.push(...lintTables(target, table, cells));
    }
  }
  return faults;
}
