import type { EmbeddedGrid } from "../grid/grid";
import { element } from "./element";

/** The line under the sheet: which cell is selected, what belongs into it, or why it is in error. */
export function showSelection(grid: EmbeddedGrid): void {
  const show = (): void => {
    const { address, reason } = grid.selection.read();
    element("selected-cell").textContent = address;
    element("why").textContent = reason ?? "";
    element("hint").textContent = reason ? "" : (grid.hint() ?? "");
  };
  grid.selection.moved.add(show);
  grid.results.add(show);
}
