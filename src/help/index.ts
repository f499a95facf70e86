import "../taskpane/theme.css";
import "./help.css";
import { findEntries } from "./search";

const dark = matchMedia("(prefers-color-scheme: dark)");
const applyTheme = (): void => {
  document.documentElement.dataset.theme = dark.matches ? "dark" : "light";
};
applyTheme();
dark.addEventListener("change", applyTheme);

const box = document.querySelector<HTMLInputElement>("#search");
if (box) enableSearch(box);

/** Shows of the list only what has every word typed; without this script the whole list stands. */
function enableSearch(input: HTMLInputElement): void {
  const entries = [...document.querySelectorAll<HTMLElement>(".topic li")];
  const texts = entries.map((entry) => `${entry.textContent ?? ""} ${entry.dataset.words ?? ""}`);
  const found = document.querySelector("#found");
  const apply = (): void => {
    const kept = new Set(findEntries(texts, input.value));
    entries.forEach((entry, index) => (entry.hidden = !kept.has(index)));
    for (const topic of document.querySelectorAll<HTMLElement>(".topic"))
      topic.hidden = topic.querySelector("li:not([hidden])") === null;
    if (found)
      found.textContent =
        input.value.trim() === "" ? "" : `${kept.size} of ${entries.length} ${input.dataset.of ?? "functions"}`;
  };
  input.closest<HTMLElement>(".search")?.removeAttribute("hidden");
  input.addEventListener("input", apply);
  apply();
}
