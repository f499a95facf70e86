import type { EmbeddedGrid } from "../grid/grid";
import { isTyping } from "../grid/openEntry";
import type { Files } from "./files";

/** What is being typed into a cell goes in before a control of the pane does anything: it may read or change that cell. */
export function entryFirst(pane: HTMLElement, grid: EmbeddedGrid, files: Files): void {
  pane.addEventListener(
    "click",
    (event) => {
      if (!isTyping(grid) || !(event.target instanceof HTMLElement)) return;
      const { target } = event;
      event.preventDefault();
      event.stopImmediatePropagation();
      void files.takeEntry().then((taken) => taken && target.click());
    },
    { capture: true },
  );
  pane.addEventListener("focusin", () => {
    if (isTyping(grid)) void files.takeEntry();
  });
}
