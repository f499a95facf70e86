/// <reference lib="webworker" />
import { answer, keep } from "./keeping/shelf";

declare const self: ServiceWorkerGlobalScope;

self.addEventListener("install", () => void self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => event.waitUntil(keep(event.data as string[])));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(self.location.origin)) event.respondWith(answer(request));
});
