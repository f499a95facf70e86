/**
 * Replaces what a list shows while a person may be walking through it: the focus stays on the entry with the same
 * `data-key`, and what was unfolded stays so.
 */
export function rebuild(list: HTMLElement, children: readonly HTMLElement[]): void {
  const held = list.contains(document.activeElement) && document.activeElement?.getAttribute("data-key");
  const unfolded = list.querySelector("details")?.open ?? false;
  list.replaceChildren(...children);
  const details = list.querySelector("details");
  if (details) details.open = unfolded;
  if (!held) return;
  const entry = [...list.querySelectorAll<HTMLElement>("[data-key]")].find(({ dataset }) => dataset.key === held);
  // What is folded away cannot take the focus; its heading can.
  (entry?.closest("details:not([open])")?.querySelector("summary") ?? entry)?.focus({ preventScroll: true });
}
