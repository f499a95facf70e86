import type { BorderStyle, CellStyle } from "hucre";
import { FONT, FONT_SIZE } from "../layout/style";
import type { Conditional, Side, Style } from "../model";

const SIDES: readonly Side[] = ["left", "right", "top", "bottom"];

/** A style of the model as the writing library takes it. */
export function writerStyle(style: Style): CellStyle {
  return {
    font: {
      name: FONT,
      size: style.size ?? FONT_SIZE,
      ...(style.bold ? { bold: true } : {}),
      ...(style.italic ? { italic: true } : {}),
      ...(style.color ? { color: { rgb: style.color } } : {}),
    },
    ...(style.fill ? { fill: solid(style.fill) } : {}),
    ...(style.lines ? { border: borders(style) } : {}),
    alignment: {
      // An indent counts only where the side is said.
      ...(style.align ? { horizontal: style.align } : style.indent ? { horizontal: "left" } : {}),
      vertical: style.vertical ?? "center",
      ...(style.wrap ? { wrapText: true } : {}),
      ...(style.indent ? { indent: style.indent } : {}),
    },
    ...(style.format && style.format !== "General" ? { numFmt: style.format } : {}),
    protection: { locked: !style.unlocked },
  };
}

/** What a conditional format changes. */
export function differentialStyle(style: Conditional["style"]): CellStyle {
  return {
    font: {
      ...(style.bold ? { bold: true } : {}),
      ...(style.italic ? { italic: true } : {}),
      ...(style.color ? { color: { rgb: style.color } } : {}),
    },
    ...(style.fill ? { fill: solid(style.fill) } : {}),
    ...(style.lines ? { border: borders(style) } : {}),
    ...(style.format ? { numFmt: style.format } : {}),
  };
}

function solid(rgb: string): NonNullable<CellStyle["fill"]> {
  // The background colour is what a conditional format shows, the foreground what a cell shows.
  return { type: "pattern", pattern: "solid", fgColor: { rgb }, bgColor: { rgb } };
}

function borders(style: Pick<Style, "lines" | "lineColor">): BorderStyle {
  const border: BorderStyle = {};
  for (const side of SIDES) {
    const line = style.lines?.[side];
    if (line) border[side] = { style: line, color: { rgb: style.lineColor ?? "000000" } };
  }
  return border;
}
