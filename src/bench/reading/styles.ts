import type { IBorderStyleData, IStyleData } from "@univerjs/core";
import type { CellStyle, Color } from "hucre";
import { resolveThemeColor } from "hucre/xlsx";

/** Border lines by name, as the grid numbers them. */
const LINES: Readonly<Record<string, number>> = {
  thin: 1,
  hair: 2,
  dotted: 3,
  dashed: 4,
  dashDot: 5,
  dashDotDot: 6,
  double: 7,
  medium: 8,
  mediumDashed: 9,
  mediumDashDot: 10,
  mediumDashDotDot: 11,
  slantDashDot: 12,
  thick: 13,
};
const HORIZONTAL: Readonly<Record<string, number>> = { left: 1, center: 2, right: 3, centerContinuous: 2, justify: 4 };
const VERTICAL: Readonly<Record<string, number>> = { top: 1, center: 2, bottom: 3 };
/** A cell without an explicit vertical alignment sits at the bottom. */
const BOTTOM = 3;
const WRAP = 3;
/** The file counts light before dark; the palette lists dark before light. */
const THEME_ORDER = [1, 0, 3, 2];
/** The pixels one step of indentation adds. */
export const INDENT = 9;

/** Turns the file's cell formats into the grid's, each kept once. */
export class StyleTable {
  readonly styles: Record<string, IStyleData> = {};
  private readonly ids = new Map<string, string>();

  constructor(private readonly themeColors: readonly string[] = []) {}

  /** The id of a format, with `more` over it; undefined for the plain one. */
  idOf(style: CellStyle | undefined, more?: IStyleData): string | undefined {
    if (!style && !more) return undefined;
    const converted = { ...this.convert(style ?? {}), ...more };
    const key = JSON.stringify(converted);
    if (key === "{}") return undefined;
    let id = this.ids.get(key);
    if (id === undefined) {
      id = `s${this.ids.size}`;
      this.ids.set(key, id);
      this.styles[id] = converted;
    }
    return id;
  }

  /** A format in the grid's terms; used for conditional formats too. */
  convert({ font, fill, border, alignment, numFmt }: CellStyle): IStyleData {
    const style: IStyleData = {};
    if (font?.name) style.ff = font.name;
    if (font?.size) style.fs = font.size;
    if (font?.bold) style.bl = 1;
    if (font?.italic) style.it = 1;
    if (font?.underline) style.ul = { s: 1 };
    if (font?.strikethrough) style.st = { s: 1 };
    const ink = this.rgb(font?.color);
    if (ink) style.cl = { rgb: ink };
    // A conditional format's fill names its colour as the background, a cell's as the foreground.
    const paper =
      fill?.type === "pattern" && fill.pattern !== "none"
        ? (this.rgb(fill.fgColor) ?? this.rgb(fill.bgColor))
        : undefined;
    if (paper) style.bg = { rgb: paper };
    const sides = this.borders(border);
    if (Object.keys(sides).length > 0) style.bd = sides;
    if (numFmt && numFmt !== "General") style.n = { pattern: numFmt };
    const across = alignment?.horizontal ? HORIZONTAL[alignment.horizontal] : undefined;
    if (across) style.ht = across;
    const down = alignment?.vertical ? VERTICAL[alignment.vertical] : undefined;
    if (down && down !== BOTTOM) style.vt = down;
    if (alignment?.wrapText) style.tb = WRAP;
    if (alignment?.indent)
      style.pd =
        alignment.horizontal === "right" ? { r: 2 + alignment.indent * INDENT } : { l: 2 + alignment.indent * INDENT };
    return style;
  }

  private borders(border: CellStyle["border"]): Record<string, IBorderStyleData> {
    const sides: Record<string, IBorderStyleData> = {};
    for (const [side, key] of [
      ["top", "t"],
      ["right", "r"],
      ["bottom", "b"],
      ["left", "l"],
    ] as const) {
      const line = border?.[side];
      if (line) sides[key] = { s: LINES[line.style] ?? 1, cl: { rgb: this.rgb(line.color) ?? "#000000" } };
    }
    return sides;
  }

  rgb(color: Color | undefined): string | undefined {
    if (!color) return undefined;
    if (color.rgb) return `#${color.rgb.slice(-6)}`;
    if (color.theme === undefined) return undefined;
    const resolved = resolveThemeColor([...this.themeColors], THEME_ORDER[color.theme] ?? color.theme, color.tint);
    return resolved ? `#${resolved.slice(-6)}` : undefined;
  }
}
