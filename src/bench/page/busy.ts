import { nextFrame } from "../firstLook/frames";

/** Thrown where a person stopped what was going on. */
export class Stopped extends Error {
  constructor() {
    super("stopped");
    this.name = "Stopped";
  }
}

/** Says how far the work is; throws `Stopped` when a person pressed Cancel. The page can draw and listen meanwhile. */
export type Say = (words: string, part?: number) => Promise<void>;

/**
 * Covers the page while something takes long: what is being done, how far it is, and a way to stop it. The cover comes
 * into sight by a delayed animation rather than a timer, which the work itself would hold up.
 */
export async function busy<T>(parts: number, act: (say: Say) => Promise<T>, stoppable = true): Promise<T> {
  const cover = document.getElementById("busy") as HTMLElement;
  const words = cover.querySelector("p") as HTMLElement;
  const bar = cover.querySelector("progress") as HTMLProgressElement;
  const cancel = cover.querySelector("button") as HTMLButtonElement;
  let stopped = false;
  const stop = (): void => {
    stopped = true;
    cancel.disabled = true;
  };
  bar.max = parts;
  bar.value = 0;
  cancel.hidden = !stoppable;
  cancel.disabled = false;
  cancel.addEventListener("click", stop);
  document.body.dataset.busy = "true";
  cover.hidden = false;
  try {
    return await act(async (sentence, part) => {
      words.textContent = `${sentence}…`;
      if (part !== undefined) bar.value = part;
      await nextFrame();
      if (stopped) throw new Stopped();
    });
  } finally {
    cancel.removeEventListener("click", stop);
    cover.hidden = true;
    delete document.body.dataset.busy;
  }
}
