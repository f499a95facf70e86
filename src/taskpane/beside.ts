import { HostRefusal, type Task } from "../host/port";

/** What a worker of the pane answers: what was asked for, or why not, in a sentence. */
export type Besides<T> = { readonly got: T } | { readonly refused: string };

/** Has a worker do one thing beside the page, which stays free for typing; a stopped task leaves everything as it was. */
export async function askBeside<T>(
  script: string,
  order: unknown,
  { signal, progress }: Task,
  failed: string,
): Promise<T> {
  const worker = new Worker(script, { type: "module" });
  progress(1, 3);
  try {
    return await new Promise<T>((resolve, reject) => {
      const stop = (): void => reject(new DOMException("stopped", "AbortError"));
      if (signal.aborted) return stop();
      signal.addEventListener("abort", stop, { once: true });
      worker.onerror = () => reject(new HostRefusal(failed));
      worker.onmessage = ({ data }: MessageEvent<Besides<T>>) => {
        if ("refused" in data) reject(new HostRefusal(data.refused));
        else resolve(data.got);
      };
      worker.postMessage(order);
    });
  } finally {
    worker.terminate();
  }
}
