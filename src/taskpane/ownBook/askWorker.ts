import { HostRefusal, type Task } from "../../host/port";
import type { Answer, Ask, Asks, Order } from "./messages";

/**
 * Has files of the company's book read and made beside the page, which stays free for typing; a stopped task leaves
 * everything as it was.
 */
export async function askWorker<A extends Ask>(order: Order<A>, { signal, progress }: Task): Promise<Asks[A]["get"]> {
  const worker = new Worker("companyBook.js", { type: "module" });
  progress(1, 3);
  try {
    return await new Promise<Asks[A]["get"]>((resolve, reject) => {
      const stop = (): void => reject(new DOMException("stopped", "AbortError"));
      if (signal.aborted) return stop();
      signal.addEventListener("abort", stop, { once: true });
      worker.onerror = () =>
        reject(new HostRefusal("The company book could not be opened here; reload the page and try again."));
      worker.onmessage = ({ data }: MessageEvent<Answer<A>>) => {
        if ("refused" in data) reject(new HostRefusal(data.refused));
        else resolve(data.got);
      };
      worker.postMessage(order);
    });
  } finally {
    worker.terminate();
  }
}
