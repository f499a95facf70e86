import { plain } from "../calc/problem";

/**
 * The little that the drawings share: elements as text, escaped, in one restrained look.
 * Colours come from custom properties of the page, so that a drawing follows light, dark and high-contrast themes;
 * the values behind the commas stand where there is no page around it.
 */
export const INK = "var(--drawing-ink, #24313a)";
export const FAINT = "var(--drawing-faint, #6c7a83)";
export const WATER = "var(--drawing-water, #2b6f8f)";
export const STONE = "var(--drawing-stone, #8a7f72)";
export const PAPER = "var(--drawing-paper, #ffffff)";

export type Attributes = Readonly<Record<string, string | number>>;

/** Text as it may stand in SVG, whatever a user typed. */
export function escapeText(text: string): string {
  return (
    text
      .replace(/&/g, "&amp;")
      .replace(/</g, "&lt;")
      .replace(/>/g, "&gt;")
      .replace(/"/g, "&quot;")
      .replace(/'/g, "&apos;")
      // eslint-disable-next-line no-control-regex -- XML cannot hold these characters
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, "")
  );
}

/** An element; numbers are written with two decimals at most, and never as NaN. */
export function element(name: string, attributes: Attributes, content = ""): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${attributeText(value)}"`);
  return content === "" ? `<${name}${written.join("")}/>` : `<${name}${written.join("")}>${content}</${name}>`;
}

function attributeText(value: string | number): string {
  if (typeof value === "string") return escapeText(value);
  return Number.isFinite(value) ? String(Math.round(value * 100) / 100) : "0";
}

export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string {
  return element("line", { x1, y1, x2, y2, stroke: INK, "stroke-width": 1, ...attributes });
}

export function path(points: readonly (readonly [number, number])[], attributes: Attributes = {}): string {
  const round = (value: number): number => Math.round(value * 100) / 100;
  const d = points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("");
  return element("path", { d, fill: "none", stroke: INK, "stroke-width": 1, ...attributes });
}

export function label(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return element("text", { x, y, fill: INK, "font-size": 10.5, ...attributes }, escapeText(text));
}

/** A dimension between two points on a horizontal or vertical line, with ticks and its text in the middle. */
export function dimension(x1: number, y1: number, x2: number, y2: number, text: string): string {
  const upright = x1 === x2;
  const tick = (x: number, y: number): string => line(x - 3, y + 3, x + 3, y - 3, { stroke: FAINT });
  const middleX = (x1 + x2) / 2;
  const middleY = (y1 + y2) / 2;
  const words = upright
    ? label(middleX - 4, middleY, text, {
        "text-anchor": "middle",
        transform: `rotate(-90 ${Math.round(middleX - 4)} ${Math.round(middleY)})`,
      })
    : label(middleX, middleY - 4, text, { "text-anchor": "middle" });
  return line(x1, y1, x2, y2, { stroke: FAINT }) + tick(x1, y1) + tick(x2, y2) + words;
}

/** A whole drawing with a title and a description for people who cannot see it. */
export function drawing(width: number, height: number, title: string, description: string, content: string): string {
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${Math.round(width)} ${Math.round(height)}`,
      width: "100%",
      role: "img",
      "font-family": "Arial, Helvetica, sans-serif",
      style: "max-width:100%;height:auto",
    },
    element("title", {}, escapeText(title)) +
      element("desc", {}, escapeText(description)) +
      element("rect", { x: 0, y: 0, width: Math.round(width), height: Math.round(height), fill: PAPER }) +
      content,
  );
}

/** A tick distance that people count in, 1, 2 or 5 times a power of ten, for about `wanted` ticks up to `most`. */
export function niceStep(most: number, wanted: number): number {
  if (!(most > 0)) return 1;
  const rough = most / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const share = rough / power;
  return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
}

/** A number beside a tick or in a label, without noise. */
export function figure(value: number, decimals = 2): string {
  return plain(Number(value.toFixed(decimals)));
}
