import { parseArea } from "../../xlsx/address";
import { attributeOf, within, type XmlElement } from "../../xlsx/xml";

export interface NameEntry {
  readonly name: string;
  /** The sheet it is local to, or "". */
  readonly scope: string;
  readonly refersTo: string;
}

export function nameEntries(workbook: XmlElement): NameEntry[] {
  return [...within(workbook, "definedName")].map((element) => ({
    name: attributeOf(element, "name") ?? "",
    scope: attributeOf(element, "localSheetId") ?? "",
    refersTo: element.text,
  }));
}

/** Names Excel would refuse, names given twice, and names that lead nowhere. */
export function lintNames(entries: readonly NameEntry[]): string[] {
  const faults: string[] = [];
  const seen = new Set<string>();
  for (const { name, scope, refersTo } of entries) {
    const key = `${scope}|${name.toLowerCase()}`;
    if (seen.has(key)) faults.push(`the name ${name} is defined twice`);
    seen.add(key);
    if (refersTo.includes("#REF!")) faults.push(`the name ${name} leads nowhere`);
    if (name.startsWith("_xlnm.")) continue;
    if (!/^[A-Za-z_\\][A-Za-z0-9_.\\]*$/.test(name) || name.length > 255) faults.push(`"${name}" cannot be a name`);
    if (parseArea(name, "")) faults.push(`the name ${name} looks like a cell`);
    if (/^[rc]$/i.test(name) || /^r\d*c\d*$/i.test(name)) faults.push(`the name ${name} looks like a row or column`);
  }
  return faults;
}
