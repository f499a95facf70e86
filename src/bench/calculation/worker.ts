/// <reference lib="webworker" />
import { answers } from "./answers";
import type { Asked } from "./messages";

declare const self: DedicatedWorkerGlobalScope;

// Calculates beside the page, so that the page stays free for whoever types.
const ask = answers((answer) => self.postMessage(answer));
self.addEventListener("message", ({ data }: MessageEvent<Asked>) => ask(data));
