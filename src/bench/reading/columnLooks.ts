import type { CellStyle, Sheet } from "hucre";
import { parseArea } from "../../xlsx/address";
import { attributeOf, walkXml, type XmlElement } from "../../xlsx/xml";
import { columnStyles } from "../../xlsx/columnStyles";

/**
 * Gives each column of a sheet the look its file says for cells that are not there yet, which the reading library
 * leaves out. The look is taken from a cell that has it; without one the column stays plain.
 */
export function readColumnLooks(xml: string, head: XmlElement, sheet: Sheet): void {
  const wanted = columnStyles(head);
  if (wanted.size === 0) return;
  const styles = stylesByLook(xml, new Set(wanted.values()), sheet);
  for (const [column, look] of wanted) {
    const style = styles.get(look);
    const known = sheet.columns?.[column];
    if (style && known) known.style = style;
  }
}

/** What the reading library knows of the first cell with each look. */
function stylesByLook(xml: string, wanted: ReadonlySet<string>, sheet: Sheet): Map<string, CellStyle> {
  const styles = new Map<string, CellStyle>();
  const missing = new Set(wanted);
  walkXml(xml, {
    opened(element) {
      const look = element.name === "c" ? (attributeOf(element, "s") ?? "0") : "";
      if (missing.has(look)) {
        const at = parseArea(attributeOf(element, "r") ?? "", sheet.name);
        const style = at && sheet.cells?.get(`${at.top},${at.left}`)?.style;
        if (style) styles.set(look, style);
        missing.delete(look);
      }
      return missing.size === 0 ? "stop" : undefined;
    },
    closed: ({ name }) => (name === "row" || name === "c" ? "forget" : undefined),
  });
  return styles;
}
