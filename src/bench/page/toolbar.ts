import type { EmbeddedGrid } from "../grid/grid";
import { element } from "./element";
import type { Files } from "./files";

/** The few commands of the bench, and their keys. */
export function toolbar(grid: EmbeddedGrid, files: Files): void {
  const picker = element<HTMLInputElement>("file");
  // A press on the bar leaves the keyboard where it is: with the sheet, whose Enter would press the button once more.
  element("bar").addEventListener("mousedown", (event) => event.preventDefault());
  element("open").addEventListener("click", () => picker.click());
  picker.addEventListener("change", () => {
    const file = picker.files?.[0];
    picker.value = "";
    if (file) void files.openFile(file);
  });
  element("save").addEventListener("click", () => void files.save());
  element("print").addEventListener("click", () => void files.print());
  const afterEntry = (act: () => void): void => void files.takeEntry().then((taken) => taken && act());
  element("undo").addEventListener("click", () => afterEntry(() => grid.undo()));
  element("redo").addEventListener("click", () => afterEntry(() => grid.redo()));
  document.addEventListener("keydown", (event) => {
    if (event.altKey && (event.key === "PageDown" || event.key === "PageUp")) {
      event.preventDefault();
      grid.selection.stepSheet(event.key === "PageDown" ? 1 : -1);
    }
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s") {
      event.preventDefault();
      void files.save();
    }
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "p") {
      event.preventDefault();
      void files.print();
    }
  });
  const toggle = element("toggle-pane");
  toggle.addEventListener("click", () => {
    const hidden = document.body.classList.toggle("pane-hidden");
    toggle.setAttribute("aria-expanded", String(!hidden));
    toggle.textContent = hidden ? "Show pane" : "Hide pane";
  });
}
