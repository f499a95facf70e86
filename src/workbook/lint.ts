import { strFromU8, unzipSync } from "fflate";
import { lintNames, nameEntries } from "./lint/names";
import { lintSheet } from "./lint/sheet";
import { lintTables } from "./lint/tables";
import { unescapeXml } from "./lint/xml";

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
  const parts = unzipSync(bytes);
  const text = (name: string): string => strFromU8(parts[name] ?? new Uint8Array());
  const workbook = text("xl/workbook.xml");
  const names = nameEntries(workbook);
  const faults = lintNames(names);
  if (/fullCalcOnLoad="(1|true)"/.test(workbook)) faults.push("the workbook asks for a full calculation on loading");
  if (parts["xl/calcChain.xml"]) faults.push("the workbook carries a calculation chain");
  const strings = [...text("xl/sharedStrings.xml").matchAll(/<si>([\s\S]*?)<\/si>/g)].map(([, item = ""]) =>
    unescapeXml([...item.matchAll(/<t[^>]*>([^<]*)<\/t>/g)].map(([, run = ""]) => run).join("")),
  );
  const known = new Set(names.map(({ name }) => name.toLowerCase()));
  for (const part of Object.keys(parts).filter((name) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name))) {
    const { faults: found, cells } = lintSheet(part, text(part), { ...rules, strings, names: known });
    faults.push(...found);
    const relations = text(part.replace("worksheets/", "worksheets/_rels/") + ".rels");
    for (const [, target = ""] of relations.matchAll(/Target="[^"]*(tables\/[^"]+)"/g)) {
      faults.push(...lintTables(`xl/${target}`, text(`xl/${target}`), cells));
    }
  }
  return faults;
}
