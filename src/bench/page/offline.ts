const TEMPLATES = ["us-blank", "us-demo", "si-blank", "si-demo"].map((name) => `templates/rillwright-${name}.xlsx`);
/** Pages that between them lead to all of the help. */
const HELP = ["help/index.html", "help/guide.html"];

/**
 * Keeps the page's own files, the workbooks that a job can begin from, and the help in the browser, so that all of it
 * opens without a network the next time.
 */
export function workOffline(): void {
  if (!("serviceWorker" in navigator)) return;
  void navigator.serviceWorker
    .register("sw.js")
    .then(() => navigator.serviceWorker.ready)
    .then(async ({ active }) => {
      const own = performance.getEntriesByType("resource").map(({ name }) => name);
      const templates = TEMPLATES.map((path) => new URL(path, location.href).href);
      keep(active, [location.href, ...own, ...templates]);
      for (const path of HELP) keep(active, await withLinks(new URL(path, location.href).href));
    })
    .catch(() => undefined);
}

function keep(worker: ServiceWorker | null, addresses: readonly string[]): void {
  const bare = addresses.map((address) => address.split("#")[0] ?? "");
  worker?.postMessage([...new Set(bare)].filter((address) => address.startsWith(location.origin)));
}

/** A page, and the pages, pictures and files it needs or leads to. */
async function withLinks(address: string): Promise<string[]> {
  const page = new DOMParser().parseFromString(await (await fetch(address)).text(), "text/html");
  const links = [...page.querySelectorAll("[href], [src]")].map(
    (element) => element.getAttribute("href") ?? element.getAttribute("src") ?? "",
  );
  return [address, ...links.map((link) => new URL(link, address).href)];
}
