import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY } from "@univerjs/core";
import type { EmbeddedGrid } from "./grid";
import { isTyping } from "./openEntry";
import { UNIT } from "./model";

/** The library's own command, which the arrow in the cell gives too. */
const OPEN_LIST = "sheet.operation.show-data-validation-dropdown";

/** Alt+Down opens the list of the selected cell, as in other spreadsheet programs. */
export function openListByKey(grid: EmbeddedGrid): void {
  document.addEventListener(
    "keydown",
    (event) => {
      if (!event.altKey || event.ctrlKey || event.key !== "ArrowDown" || isTyping(grid)) return;
      if (!document.activeElement?.id.endsWith(DOCS_NORMAL_EDITOR_UNIT_ID_KEY)) return;
      const area = grid.selection.area();
      if (!area || grid.locks.isLocked({ ...area, bottom: area.top, right: area.left })) return;
      event.preventDefault();
      event.stopPropagation();
      const { sheet, top: row, left: column } = area;
      void grid.api.executeCommand(OPEN_LIST, { unitId: UNIT, subUnitId: grid.model.sheetId(sheet), row, column });
    },
    { capture: true },
  );
}
