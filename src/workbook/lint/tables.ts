import { columnLetters } from "../layout/address";
import { attribute, corners, unescapeXml } from "./xml";

/** Faults of a table part: its width and headers must be those of the cells it lies on. */
export function lintTables(part: string, xml: string, cells: ReadonlyMap<string, string>): string[] {
  const faults: string[] = [];
  const { left, right, top } = corners(attribute(/<table ([^>]*)>/.exec(xml)?.[1] ?? "", "ref"));
  const columns = [...xml.matchAll(/<tableColumn [^>]*\bname="([^"]*)"/g)].map(([, name = ""]) => unescapeXml(name));
  if (columns.length !== right - left + 1) faults.push(`${part} has ${columns.length} columns in another width`);
  if (new Set(columns.map((name) => name.toLowerCase())).size !== columns.length)
    faults.push(`${part} repeats a column`);
  columns.forEach((name, index) => {
    const header = cells.get(columnLetters(left + index) + top);
    if (header !== name) faults.push(`${part} calls a column "${name}" whose header is "${header ?? ""}"`);
  });
  return faults;
}
