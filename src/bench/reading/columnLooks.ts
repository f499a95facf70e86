import type { CellStyle, Workbook } from "hucre";
import { parseArea } from "../../host/address";
import { Package } from "../saving/package";
import { sheetParts } from "../saving/saveWorkbook";
import { columnStyles } from "./columnStyles";

/**
 * Gives each column of the workbook the look its file says for cells that are not there yet, which the reading library
 * leaves out. The look is taken from a cell that has it; without one the column stays plain.
 */
export function readColumnLooks(bytes: Uint8Array, workbook: Workbook): void {
  const file = new Package(bytes);
  const parts = sheetParts(file);
  for (const sheet of workbook.sheets) {
    const xml = file.text(parts.get(sheet.name) ?? "");
    for (const [column, look] of columnStyles(xml)) {
      const [, address = ""] = new RegExp(`<(?:\\w+:)?c r="([A-Z]+\\d+)"[^>]*?\\ss="${look}"`).exec(xml) ?? [];
      const at = parseArea(address, sheet.name);
      const style: CellStyle | undefined = at && sheet.cells?.get(`${at.top},${at.left}`)?.style;
      const known = sheet.columns?.[column];
      if (style && known) known.style = style;
    }
  }
}
