import { notice } from "./notices";

/**
 * Keeps this build's files in the browser, so that the page opens without a network the next time, and looks for a newer
 * build. Whatever the storage refuses, the page goes on.
 */
export function workOffline(): void {
  if (!("serviceWorker" in navigator)) return;
  void navigator.serviceWorker
    .register("sw.js", { updateViaCache: "none" })
    .then((registration) => {
      tellIfNotKept(registration, registration.installing);
      registration.addEventListener("updatefound", () => tellIfNotKept(registration, registration.installing));
    })
    .catch(() => undefined);
}

/** A build that cannot be kept whole leaves the page on the older one that is kept; that must not go unsaid. */
function tellIfNotKept(registration: ServiceWorkerRegistration, newer: ServiceWorker | null): void {
  let kept = false;
  newer?.addEventListener("statechange", () => {
    kept ||= newer.state === "installed";
    if (kept || newer.state !== "redundant" || !navigator.serviceWorker.controller || registration.waiting) return;
    notice(
      "A newer version of this page is on the server, but could not be kept here: the browser has no room, or the server " +
        "answered with something else. You go on with the kept version; your job is safe.",
      [{ label: "Load the newer one without keeping it", act: () => void loadFromServer(registration) }],
    );
  });
}

async function loadFromServer(registration: ServiceWorkerRegistration): Promise<void> {
  await registration.unregister().catch(() => false);
  location.reload();
}
