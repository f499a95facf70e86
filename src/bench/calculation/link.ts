import type { Answer, Asked } from "./messages";

let worker: Worker | undefined;

/** The worker that calculates; it is started with the page. */
export function pageWorker(): Worker {
  worker ??= new Worker("calculation.js", { type: "module" });
  return worker;
}

/** Hands over what is asked, and hears the answers. */
export function linkWorker(hear: (answer: Answer) => void): (asked: Asked) => void {
  pageWorker().addEventListener("message", ({ data }: MessageEvent<Answer>) => hear(data));
  return (asked) => pageWorker().postMessage(asked);
}
