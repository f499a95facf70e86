const TEMPLATES = ["us-blank", "us-demo", "si-blank", "si-demo"].map((name) => `templates/rillwright-${name}.xlsx`);

/** Keeps the page's own files and the workbooks that a job can begin from in the browser, so that the bench opens without a network the next time. */
export function workOffline(): void {
  if (!("serviceWorker" in navigator)) return;
  void navigator.serviceWorker
    .register("sw.js")
    .then(() => navigator.serviceWorker.ready)
    .then((registration) => {
      const own = performance
        .getEntriesByType("resource")
        .map(({ name }) => name)
        .filter((name) => name.startsWith(location.origin));
      const templates = TEMPLATES.map((path) => new URL(path, location.href).href);
      registration.active?.postMessage([location.href.split("#")[0], ...own, ...templates]);
    })
    .catch(() => undefined);
}
