import { keepSetting, setting } from "../keeping/settings";

const STEP = 24;

/** How the pane lies: beside the sheet, or below it on a narrow page. */
interface Lie {
  readonly orientation: "vertical" | "horizontal";
  readonly property: "--pane-width" | "--pane-height";
  readonly label: string;
  readonly usual: number;
  readonly least: number;
  most(): number;
  /** What the pane measures when the divider is at the pointer. */
  at(pointer: PointerEvent): number;
  readonly grow: string;
  readonly shrink: string;
}

/** Lets the pane's width, or its height where it lies below, be dragged, or moved with the arrow keys; remembers it. */
export function resizablePane(divider: HTMLElement, pane: HTMLElement): void {
  const main = divider.parentElement ?? document.body;
  const beside: Lie = {
    orientation: "vertical",
    property: "--pane-width",
    label: "Width of the job pane",
    usual: 380,
    least: 320,
    most: () => Math.max(320, Math.min(720, innerWidth - 320)),
    at: ({ clientX }) => pane.getBoundingClientRect().right - clientX,
    grow: "ArrowLeft",
    shrink: "ArrowRight",
  };
  const below: Lie = {
    orientation: "horizontal",
    property: "--pane-height",
    label: "Height of the job pane",
    usual: 380,
    least: 160,
    most: () => Math.max(160, main.clientHeight - 220),
    at: ({ clientY }) => pane.getBoundingClientRect().bottom - clientY,
    grow: "ArrowUp",
    shrink: "ArrowDown",
  };
  const narrow = matchMedia("(max-width: 820px)");
  const lie = (): Lie => (narrow.matches ? below : beside);
  const key = ({ property }: Lie): string => `rillwright.${property.slice(2)}`;
  const wanted = (how: Lie): number => Number(setting(key(how))) || how.usual;

  const show = (how: Lie, size: number): void => {
    const fitting = Math.round(Math.min(how.most(), Math.max(how.least, size)));
    main.style.setProperty(how.property, `${fitting}px`);
    divider.setAttribute("aria-orientation", how.orientation);
    divider.setAttribute("aria-label", how.label);
    divider.setAttribute("aria-valuemin", String(how.least));
    divider.setAttribute("aria-valuemax", String(Math.round(how.most())));
    divider.setAttribute("aria-valuenow", String(fitting));
  };
  const set = (size: number): void => {
    const how = lie();
    show(how, size);
    keepSetting(key(how), divider.getAttribute("aria-valuenow") ?? "");
  };
  const fit = (): void => show(lie(), wanted(lie()));
  fit();
  narrow.addEventListener("change", fit);
  window.addEventListener("resize", fit);

  divider.addEventListener("keydown", (event) => {
    const how = lie();
    const now = Number(divider.getAttribute("aria-valuenow"));
    const size = { [how.grow]: now + STEP, [how.shrink]: now - STEP, Home: how.least, End: how.most() }[event.key];
    if (size === undefined) return;
    event.preventDefault();
    set(size);
  });
  divider.addEventListener("pointerdown", (event) => {
    divider.setPointerCapture(event.pointerId);
    const move = (moved: PointerEvent): void => set(lie().at(moved));
    divider.addEventListener("pointermove", move);
    divider.addEventListener("lostpointercapture", () => divider.removeEventListener("pointermove", move), {
      once: true,
    });
  });
}
