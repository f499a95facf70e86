import type { EmbeddedGrid } from "../grid/grid";
import { commitEntry } from "../grid/openEntry";
import type { Job } from "./job";

/**
 * Keeps what is on the screen when the page is left, what is being typed included. The browser asks whether to leave only
 * where work would be lost: a question each time would soon be answered without reading.
 */
export function keepOnLeaving(job: Job, grid: EmbeddedGrid): void {
  window.addEventListener("beforeunload", (event) => {
    void commitEntry(grid);
    void job.keep();
    if (job.atRisk) event.preventDefault();
  });
  window.addEventListener("pagehide", () => void job.keep());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void job.keep();
  });
}
