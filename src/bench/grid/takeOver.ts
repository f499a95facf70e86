import type { FirstLook, LastLook } from "../firstLook/firstLook";
import type { Write } from "../../host/bench/benchGrid";
import { areaName, cellArea } from "../../xlsx/address";
import { nextFrame } from "../firstLook/frames";
import type { Spreadsheet } from "./spreadsheet";
import { writeCells } from "./write";

/** Frames after which the grid stands as it will be seen, and the most it is waited for. */
const FRAMES = 3;
const MOST_FRAMES = 60;

/** Resolves when the grid is drawn and takes keys. */
export async function drawn(grid: Spreadsheet): Promise<void> {
  for (let frame = 0; frame < MOST_FRAMES && (frame < FRAMES || !grid.takesKeys); frame++) await nextFrame();
}

/** Puts the grid in place of the first look, with what was typed there, and where the person was looking. */
export async function takeOver(grid: Spreadsheet, look: FirstLook | undefined): Promise<void> {
  if (!look) return;
  try {
    putIn(grid, await look.done(), look.shows(grid.opened));
  } finally {
    look.leave();
  }
}

function putIn(grid: Spreadsheet, { entries, sheet, cell }: LastLook, isSame: boolean): void {
  const writes: Write[] = [];
  for (const { sheet: name, row, column, text } of isSame ? entries : []) {
    const area = cellArea(name, row, column);
    const taken = grid.typing.checked({ sheet: name, row, column }, text);
    if ("refused" in taken) grid.page.told(`Not put into ${areaName(area)}: ${taken.refused}`);
    else writes.push({ area, values: [[taken.value]] });
  }
  if (writes.length > 0) writeCells(grid.univer, grid.model, writes);
  if (sheet !== undefined && grid.model.hasSheet(sheet)) grid.selection.showSheet(sheet);
  if (sheet !== undefined && cell) grid.selection.goTo(cellArea(sheet, cell.row, cell.column));
}
