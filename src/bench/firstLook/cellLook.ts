import type { IBorderStyleData, IStyleData } from "@univerjs/core";

/** Widths and kinds of border lines, as the grid numbers them. */
const LINES: Readonly<Record<number, string>> = {
  1: "1px solid",
  2: "1px dotted",
  3: "1px dotted",
  4: "1px dashed",
  7: "3px double",
  8: "2px solid",
  13: "3px solid",
};
const SIDES = { t: "borderTop", r: "borderRight", b: "borderBottom", l: "borderLeft" } as const;
const ACROSS: readonly string[] = ["", "left", "center", "right"];
const DOWN: readonly string[] = ["bottom", "top", "middle", "bottom"];
const WRAPPED = 3;

/** Gives an element the look that the grid gives a cell. */
export function lookLike(element: HTMLElement, look: IStyleData, isNumber: boolean): void {
  const { style } = element;
  if (look.ff) style.fontFamily = `${look.ff}, sans-serif`;
  if (look.fs) style.fontSize = `${look.fs}pt`;
  if (look.bl) style.fontWeight = "bold";
  if (look.it) style.fontStyle = "italic";
  if (look.ul?.s) style.textDecoration = "underline";
  if (look.cl?.rgb) style.color = look.cl.rgb;
  if (look.bg?.rgb) style.background = look.bg.rgb;
  for (const [side, line] of Object.entries(look.bd ?? {}) as [keyof typeof SIDES, IBorderStyleData | undefined][]) {
    if (line) style[SIDES[side]] = `${LINES[line.s] ?? "1px solid"} ${line.cl.rgb ?? "#000000"}`;
  }
  style.textAlign = ACROSS[look.ht ?? 0] || (isNumber ? "right" : "left");
  style.verticalAlign = DOWN[look.vt ?? 0] ?? "bottom";
  if (look.tb === WRAPPED) style.whiteSpace = "pre-wrap";
  if (look.pd?.l) style.paddingLeft = `${look.pd.l}px`;
  if (look.pd?.r) style.paddingRight = `${look.pd.r}px`;
}
