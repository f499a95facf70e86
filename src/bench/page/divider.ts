const NARROWEST = 320;
const WIDEST = 720;
const STEP = 24;
const SETTING = "rillwright.pane-width";

/** Lets the pane's width be dragged, or moved with the arrow keys; remembers it. */
export function resizablePane(divider: HTMLElement, pane: HTMLElement): void {
  let width = Number(localStorage.getItem(SETTING)) || 380;
  const set = (wanted: number): void => {
    width = Math.round(Math.min(WIDEST, Math.max(NARROWEST, wanted)));
    pane.style.width = `${width}px`;
    divider.setAttribute("aria-valuenow", String(width));
    localStorage.setItem(SETTING, String(width));
  };
  set(width);
  divider.addEventListener("keydown", (event) => {
    const step = { ArrowLeft: STEP, ArrowRight: -STEP, Home: WIDEST, End: -WIDEST }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    set(width + step);
  });
  divider.addEventListener("pointerdown", (event) => {
    divider.setPointerCapture(event.pointerId);
    const right = pane.getBoundingClientRect().right;
    const move = (moved: PointerEvent): void => set(right - moved.clientX);
    divider.addEventListener("pointermove", move);
    divider.addEventListener("lostpointercapture", () => divider.removeEventListener("pointermove", move), {
      once: true,
    });
  });
}
