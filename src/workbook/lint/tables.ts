import { cellName, parseArea } from "../../xlsx/address";
import { attributeOf, within, type XmlElement } from "../../xlsx/xml";

/** Faults of a table part: its width and headers must be those of the cells it lies on. */
export function lintTables(part: string, table: XmlElement, cells: ReadonlyMap<string, string>): string[] {
  const faults: string[] = [];
  const area = parseArea(attributeOf(table, "ref") ?? "", "");
  if (!area) return [`${part} lies nowhere`];
  const { left, right, top } = area;
  const columns = [...within(table, "tableColumn")].map((column) => attributeOf(column, "name") ?? "");
  if (columns.length !== right - left + 1) faults.push(`${part} has ${columns.length} columns in another width`);
  if (new Set(columns.map((name) => name.toLowerCase())).size !== columns.length)
    faults.push(`${part} repeats a column`);
  columns.forEach((name, index) => {
    const header = cells.get(cellName(top, left + index));
    if (header !== name) faults.push(`${part} calls a column "${name}" whose header is "${header ?? ""}"`);
  });
  return faults;
}
