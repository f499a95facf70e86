import type { Area } from "../../xlsx/address";
import type { BenchGrid } from "../../host/bench/benchGrid";
import { keepSetting, setting } from "../keeping/settings";
import { sizeOf } from "../reading/pictures";
import type { EmbeddedGrid } from "./grid";
import { leaveUnchecked } from "./leaveUnchecked";
import { writeCells } from "./write";

/** A person writes no more cells than this through the pane in one step, unless they come from a list. */
const WHOLE_LIST = 2000;

/** What the pane asks of the embedded spreadsheet through its host. */
export function benchSide(grid: EmbeddedGrid): BenchGrid {
  const { univer, model, selection } = grid;
  return {
    names: () => model.names(),
    hasSheet: (sheet) => model.hasSheet(sheet),
    // Whoever still reads a workbook that was put away meanwhile is told of the new one at once.
    values: (area) => (model.hasSheet(area.sheet) ? model.values(area) : blank(area)),
    shown: (area) => (model.hasSheet(area.sheet) ? model.shown(area) : blank(area)),
    formulas: (area) => (model.hasSheet(area.sheet) ? model.formulasIn(area) : blank(area)),
    locked: (area) => grid.locks.isLocked(area),
    async write(changes) {
      const write = (): void => writeCells(univer, model, changes);
      if (changes.reduce((count, { values }) => count + values.length * (values[0]?.length ?? 0), 0) < WHOLE_LIST)
        write();
      else leaveUnchecked(univer, write);
      await grid.calculation.settled();
    },
    select: (area) => selection.goTo(area),
    selected: () => selection.read(),
    open: (template) => grid.page.open(template),
    async placePicture(png, title) {
      const { sheet, top: row, left: column } = selection.area() ?? { sheet: "", top: 0, left: 0 };
      const { width, height } = await sizeOf(png);
      await grid.pictures.show({ sheet, row, column, title, png, width, height });
      grid.changes.tell();
      return sheet;
    },
    recalculate: () => grid.calculation.again(),
    file: () => grid.page.file(),
    setting,
    keepSetting,
    dark: () => matchMedia("(prefers-color-scheme: dark)").matches,
    onChange: (listener) => grid.results.add(listener),
    onSelect: (listener) => selection.moved.add(listener),
  };
}

function blank({ top, left, bottom, right }: Area): string[][] {
  return Array.from({ length: bottom - top + 1 }, () => Array<string>(right - left + 1).fill(""));
}
