/** A part of the page that F6 leads to. */
export interface Region {
  readonly element: HTMLElement;
  /** Takes the keyboard. */
  enter(): void;
}

/**
 * F6 leads from one part of the page to the next, Shift+F6 back. In the sheet Tab goes from cell to cell, so that
 * without it there would be no way out for the keyboard.
 */
export function regions(parts: readonly Region[]): void {
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || document.querySelector("dialog[open]")) return;
      event.preventDefault();
      event.stopPropagation();
      const inSight = parts.filter(({ element }) => element.checkVisibility());
      const at = inSight.findIndex(({ element }) => element.contains(document.activeElement));
      const step = event.shiftKey ? -1 : 1;
      const next = at < 0 ? 0 : (at + step + inSight.length) % inSight.length;
      inSight[next]?.enter();
    },
    { capture: true },
  );
}
