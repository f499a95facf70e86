/** Asks the worker that holds a newer build to serve it from now on. */
export const TAKE_NEWER = "take newer";
/** A worker that does not answer must not keep the page from opening. */
const LONGEST_WAIT_MS = 1500;

/**
 * Where a newer build has been kept whole, and no other page works with the older one, loads this page afresh from it
 * (the promise then stays open). Gives whether a newer one is kept and has to wait.
 */
export async function takeNewer(): Promise<boolean> {
  if (!("serviceWorker" in navigator) || !navigator.serviceWorker.controller) return false;
  const waiting = await navigator.serviceWorker
    .getRegistration()
    .then((registration) => registration?.waiting)
    .catch(() => undefined);
  if (!waiting) return false;
  const changed = new Promise<void>((resolve) =>
    navigator.serviceWorker.addEventListener("controllerchange", () => resolve(), { once: true }),
  );
  if (!(await within(agreed(waiting)))) return true;
  if ((await within(changed.then(() => true))) !== true) return true;
  location.reload();
  return new Promise(() => undefined);
}

function agreed(worker: ServiceWorker): Promise<boolean> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data === true);
    worker.postMessage(TAKE_NEWER, [port2]);
  });
}

function within(wanted: Promise<boolean>): Promise<boolean | undefined> {
  return Promise.race([
    wanted,
    new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), LONGEST_WAIT_MS)),
  ]);
}
