import type { Host } from "../host/port";

/** Keeps the page in the host's colours. Excel has no event for a changed theme, so it is read again when the pane is looked at. */
export function followTheme(host: Pick<Host, "theme">): void {
  const apply = (): void => {
    document.documentElement.dataset.theme = host.theme().dark ? "dark" : "light";
  };
  apply();
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", apply);
  window.addEventListener("focus", apply);
  document.addEventListener("visibilitychange", apply);
}
