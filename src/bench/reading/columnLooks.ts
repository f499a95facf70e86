import type { CellStyle, Sheet } from "hucre";
import { parseArea } from "../../host/address";
import { columnStyles } from "./columnStyles";

/**
 * Gives each column of a sheet the look its file says for cells that are not there yet, which the reading library
 * leaves out. The look is taken from a cell that has it; without one the column stays plain.
 */
export function readColumnLooks(xml: string, sheet: Sheet): void {
  for (const [column, look] of columnStyles(xml)) {
    const [, address = ""] = new RegExp(`<(?:\\w+:)?c r="([A-Z]+\\d+)"[^>]*?\\ss="${look}"`).exec(xml) ?? [];
    const at = parseArea(address, sheet.name);
    const style: CellStyle | undefined = at && sheet.cells?.get(`${at.top},${at.left}`)?.style;
    const known = sheet.columns?.[column];
    if (style && known) known.style = style;
  }
}
