/// <reference lib="webworker" />
import { addressInSet, answer, keepAll, keepOnly, type SiteFiles } from "./keeping/shelf";
import { TAKE_NEWER } from "./keeping/takeNewer";

declare const self: ServiceWorkerGlobalScope & {
  /** Put before this script by the build. */
  readonly offlineSet: SiteFiles;
};

const set = self.offlineSet;
const { scope } = self.registration;

self.addEventListener("install", (event) => event.waitUntil(keepAll(set, scope)));
self.addEventListener("activate", (event) => event.waitUntil(keepOnly(set)));
self.addEventListener("fetch", (event) => {
  const address = addressInSet(event.request, set, scope);
  if (address !== undefined) event.respondWith(answer(event.request, address, set));
});
// A page that is open goes on with the build it began with, so the next one waits until no other page is left.
self.addEventListener("message", (event) => {
  if (event.data === TAKE_NEWER) event.waitUntil(takeOver(event.source, event.ports[0]));
});

async function takeOver(asking: ExtendableMessageEvent["source"], answerTo: MessagePort | undefined): Promise<void> {
  const asker = asking && "id" in asking ? asking.id : "";
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const alone = pages.every(({ id }) => id === asker);
  answerTo?.postMessage(alone);
  if (alone) await self.skipWaiting();
}
