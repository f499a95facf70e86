/** A hidden page draws no frames; nobody must wait for one. */
const LONGEST_FRAME_MS = 60;

/** Resolves after the page was drawn and had time for what a person did. */
export function nextFrame(): Promise<void> {
  return new Promise((resolve) => {
    const go = (): void => {
      clearTimeout(timer);
      setTimeout(resolve);
    };
    const timer = setTimeout(go, LONGEST_FRAME_MS);
    requestAnimationFrame(go);
  });
}
