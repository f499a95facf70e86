import { element, INK, PAPER, WATER, type Attributes } from "../svg";
import { round, stoneOutline, type Box } from "./outline";

/** Colors of the drawing besides those that all drawings share. */
export const EARTH = "var(--drawing-earth, #e9dfce)";
export const EARTH_LINE = "var(--drawing-earth-line, #8f7f66)";
export const LEAF = "var(--drawing-leaf, #8fa878)";
export const LEAF_LINE = "var(--drawing-leaf-line, #4d6638)";
const ROCKS = [
  "var(--drawing-rock-light, #d3cdc2)",
  "var(--drawing-rock, #bfb8ac)",
  "var(--drawing-rock-dark, #a79f92)",
] as const;
const ROCK_LINE = "var(--drawing-rock-line, #4c4740)";
/** What shows between pebbles: it lies under their pattern, whose tiles some readers set a hair apart. */
export const GRAVEL = "var(--drawing-gravel, #b9b09f)";
const SHINE = "var(--drawing-shine, #ffffff)";

/** A boulder or slab that fills its box. */
export function stone(box: Box, seed: number, attributes: Attributes = {}): string {
  if (unseen(box)) return "";
  const { edge, light } = stoneOutline(box, seed);
  const small = Math.min(box.width, box.height);
  return (
    element("path", {
      d: edge,
      fill: ROCKS[seed % 3] ?? ROCKS[1],
      stroke: ROCK_LINE,
      "stroke-width": small > 14 ? 0.8 : small > 5 ? 0.55 : 0.35,
      "stroke-linejoin": "round",
      ...attributes,
    }) + (small > 5 ? element("path", { d: light, fill: SHINE, "fill-opacity": 0.32 }) : "")
  );
}

/** A flat slab with blunt ends, as lip stones are. */
export function slab(box: Box, seed: number, attributes: Attributes = {}): string {
  if (unseen(box)) return "";
  const { edge, light } = stoneOutline(box, seed, SLAB);
  return (
    element("path", { d: edge, fill: ROCKS[0], stroke: ROCK_LINE, "stroke-width": 0.8, ...attributes }) +
    (Math.min(box.width, box.height) > 6 ? element("path", { d: light, fill: SHINE, "fill-opacity": 0.3 }) : "")
  );
}

/** Too small to be drawn as anything. */
function unseen({ width, height }: Box): boolean {
  return Math.min(width, height) < 0.2;
}

/** How square slabs are. */
const SLAB = 7;

/** Pebbles in an area; more are neither seen nor quickly drawn. */
const MOST_PEBBLES = 800;
/** The smallest pebble, in units of the drawing: smaller ones print as nothing but their outlines. */
const LEAST_PEBBLE = 1;

/** Gravel that fills a box, its pebbles no smaller than `radius`; `inside` says where it ends within the box. */
export function gravel(
  box: Box,
  radius: number,
  random: () => number,
  inside: (x: number, y: number, r: number) => boolean = () => true,
): string {
  return pebbles(
    box,
    Math.max(radius, LEAST_PEBBLE, 0.5 * Math.sqrt((box.width * box.height) / MOST_PEBBLES)),
    random,
    inside,
  );
}

/** Pebbles in rows; a row stands in the gaps of the one above. */
export function pebbles(
  box: Box,
  radius: number,
  random: () => number,
  inside: (x: number, y: number, r: number) => boolean = () => true,
): string {
  const step = radius * 2.15;
  const parts: string[] = [];
  for (let y = box.y + radius, row = 0; y < box.y + box.height; y += step * 0.88, row++) {
    for (let x = box.x + radius * (row % 2 === 0 ? 1 : 2.1); x < box.x + box.width; x += step) {
      const [cx, cy] = [x + (random() - 0.5) * 0.5 * radius, y + (random() - 0.5) * 0.5 * radius];
      const r = radius * (0.68 + 0.32 * random());
      if (inside(cx, cy, r)) parts.push(circlePath(cx, cy, r));
    }
  }
  if (parts.length === 0) return "";
  return element("path", { d: parts.join(""), fill: ROCKS[0], stroke: ROCK_LINE, "stroke-width": 0.3 });
}

/** One path for many circles keeps a drawing small. */
export function circlePath(cx: number, cy: number, r: number): string {
  const [x, y, d] = [cx - r, cy, 2 * r].map(round);
  const radius = round(r);
  return `M${x} ${y}a${radius} ${radius} 0 1 0 ${d} 0a${radius} ${radius} 0 1 0 -${d} 0z`;
}

export function water(d: string, opacity = 0.32): string {
  return element("path", { d, fill: WATER, "fill-opacity": opacity });
}

export function waterLine(d: string, width = 1.1): string {
  return element("path", { d, fill: "none", stroke: WATER, "stroke-width": width, "stroke-linecap": "round" });
}

export { INK, PAPER, WATER, SHINE };
