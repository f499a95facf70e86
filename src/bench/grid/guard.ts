import type { FUniver } from "@univerjs/core/facade";
import { areaName, cellArea, type Area } from "../../xlsx/address";
import type { Clipboard } from "./paste";
import { typedCells } from "./typedCells";

/** What may be done to a sheet: change contents, look around, and handle pictures. */
const ALLOWED = new Set(
  (
    "set-range-values auto-fill refill auto-clear-content clear-selection-content copy-down copy-right copy-formula-only " +
    "toggle-cell-checkbox text-to-number " +
    "move-selection move-selection-enter-tab expand-selection select-all select-range scroll-to-cell scroll-view " +
    "scroll-view-reset set-scroll-relative set-worksheet-activate change-zoom-ratio set-zoom-ratio " +
    "insert-sheet-image remove-sheet-image set-sheet-image delete-drawing move-drawing set-drawing-arrange"
  ).split(" "),
);
/** Widths and heights may be changed to see better; they are not saved. */
const FOR_THE_EYE = new Set(
  "set-worksheet-col-width delta-column-width delta-row-height set-row-height set-col-auto-width set-col-is-auto-width set-row-is-auto-height".split(
    " ",
  ),
);
const SHEET_COMMAND = "sheet.command.";
const PASTE = "paste-by-short-key";
const STEP = "move-selection";
const STEP_BY_ENTER_OR_TAB = "move-selection-enter-tab";
/** Up and to the left, as the library numbers them. */
const BACKWARDS: readonly unknown[] = [0, 3];

interface Parts {
  readonly api: FUniver;
  sheetName(id: string): string;
  isLocked(area: Area): boolean;
  isBlank(area: Area): boolean;
  /** Cells a person (not the calculation) changed. */
  touched(sheet: string, cells: readonly { readonly row: number; readonly column: number }[]): void;
  refused(sentence: string): void;
  /** The clipboard is to go into the selected cells. */
  paste(clipboard: Clipboard): void;
  /** Columns or rows were made wider or higher. */
  resized(): void;
}

interface Step {
  readonly direction: unknown;
}

/** Keeps results and layout safe from typing, pasting, dragging and clearing, and notes what a person changed. */
export function guard({ api, sheetName, isLocked, isBlank, touched, refused, paste, resized }: Parts): void {
  api.addEvent(api.Event.BeforeSheetEditStart, (event) => {
    const { row, column, worksheet } = event;
    const area = cellArea(worksheet.getSheetName(), row, column);
    if (!isLocked(area)) return;
    event.cancel = true;
    // The key that began the edit already stands in the formula bar; selecting again shows what the cell holds.
    setTimeout(() => worksheet.getRange(row, column).activate());
    refused(
      `${areaName(area)} ${isBlank(area) ? "stays blank" : "is worked out from other cells"} and is protected. The cells to fill in are shaded.`,
    );
  });

  // Anything else would move cells or change looks, which saving could not write into the file.
  api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    if (!event.id.startsWith(SHEET_COMMAND)) return;
    const name = event.id.slice(SHEET_COMMAND.length);
    if (name === PASTE) {
      event.cancel = true;
      paste(event.params as Clipboard);
    } else if (name === STEP_BY_ENTER_OR_TAB && BACKWARDS.includes((event.params as Step).direction)) {
      // With Shift, the library's own step from a single cell leaves nothing selected.
      event.cancel = true;
      void api.executeCommand(SHEET_COMMAND + STEP, { direction: (event.params as Step).direction });
    } else if (FOR_THE_EYE.has(name)) resized();
    else if (!ALLOWED.has(name)) {
      event.cancel = true;
      refused("The bench changes what cells hold, not the sheets themselves; do that in your spreadsheet program.");
    }
  });

  let undoing = false;
  api.addEvent(api.Event.CommandExecuted, (event) => {
    const cells = typedCells(event, event.options);
    if (!cells) return;
    const sheet = sheetName(cells.subUnitId);
    let locked: Area | undefined;
    touched(sheet, cells.list);
    for (const { row, column } of cells.list) {
      const area = cellArea(sheet, row, column);
      if (isLocked(area)) locked ??= area;
    }
    if (!locked || undoing) return;
    const area = locked;
    undoing = true;
    // The command that pasted or cleared still has to put itself on the undo stack.
    setTimeout(() => {
      void api.undo().finally(() => (undoing = false));
      refused(`That would have changed ${areaName(area)}, which is protected, so it was taken back.`);
    });
  });
}
