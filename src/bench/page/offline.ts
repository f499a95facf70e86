/** Keeps the page's own files in the browser, so that the bench opens without a network the next time. */
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
      registration.active?.postMessage([location.href.split("#")[0], ...own]);
    })
    .catch(() => undefined);
}
