import { element } from "../svg";
import { at, round, type Point } from "./outline";
import { LEAF, LEAF_LINE, PAPER } from "./paint";

type Random = () => number;

/** A plant: where it stands, how high and wide it is, in the lengths of the feature. */
export interface Plant {
  readonly kind: "grass" | "shrub" | "perennial";
  readonly at: number;
  readonly height: number;
  readonly width: number;
  /** How far behind the stones, 0 to 1. */
  readonly depth: number;
}

/** Plants along a stretch, in irregular groups; sizes in feet times `foot`. */
export function planted(from: number, to: number, foot: number, random: Random): Plant[] {
  const plants: Plant[] = [];
  let station = from + 0.4 * foot * random();
  while (station < to) {
    const roll = random();
    const kind = roll < 0.42 ? "grass" : roll < 0.75 ? "shrub" : "perennial";
    const height =
      foot * (kind === "grass" ? 1 + 0.9 * random() : kind === "shrub" ? 0.9 + 0.8 * random() : 0.7 + 0.5 * random());
    const width = kind === "grass" ? 0.9 * height : kind === "shrub" ? 1.35 * height : 0.8 * height;
    plants.push({ kind, at: station, height, width, depth: random() });
    station += width * (0.55 + 0.5 * random()) + (random() < 0.3 ? 1.6 * foot * random() : 0);
  }
  return plants;
}

/** A plant seen from the side; `x`, `y` is its foot on the paper. */
export function fromSide({ kind, height, width }: Plant, x: number, y: number, scale: number, random: Random): string {
  const [h, w] = [height * scale, width * scale];
  if (kind === "grass") return grass(x, y, w, h, random);
  if (kind === "shrub") return shrub(x, y, w, h, random);
  return grass(x, y, 0.7 * w, 0.75 * h, random) + flowers(x, y, w, h, random);
}

function grass(x: number, y: number, w: number, h: number, random: Random): string {
  const blades = Math.max(5, Math.min(13, Math.round(w / 1.6)));
  const parts = Array.from({ length: blades }, (_, index) => {
    const lean = (index / (blades - 1) - 0.5) * w * (0.8 + 0.4 * random());
    const top = y - h * (0.72 + 0.28 * random()) * (1 - 0.25 * Math.abs(lean / w));
    return `M${at([x + 0.16 * lean, y])}Q${at([x + 0.3 * lean, (y + 2 * top) / 3])} ${at([x + lean, top])}`;
  });
  return element("path", {
    d: parts.join(""),
    fill: "none",
    stroke: LEAF_LINE,
    "stroke-width": round(Math.max(0.4, Math.min(1, h / 26))),
    "stroke-linecap": "round",
  });
}

function shrub(x: number, y: number, w: number, h: number, random: Random): string {
  const lobes = Array.from({ length: 9 }, (_, index): Point => {
    const angle = Math.PI * (1 + index / 8);
    const reach = 0.9 + 0.14 * random();
    return [x + Math.cos(angle) * (w / 2) * reach, y + Math.sin(angle) * h * 0.94 * reach];
  });
  return (
    element("path", {
      d: scalloped(lobes, false),
      fill: LEAF,
      stroke: LEAF_LINE,
      "stroke-width": h > 16 ? 0.7 : 0.45,
      "stroke-linejoin": "round",
    }) + leaves(x, y - h * 0.45, w * 0.36, h * 0.34, random)
  );
}

/** A few short strokes that make a flat shape look leafy. */
function leaves(x: number, y: number, rx: number, ry: number, random: Random): string {
  if (rx < 3) return "";
  const size = Math.max(1.2, rx * 0.2);
  const strokes = Array.from({ length: 7 }, () => {
    const [cx, cy] = [x + (random() * 2 - 1) * rx, y + (random() * 2 - 1) * ry];
    return `M${at([cx - size, cy])}Q${at([cx - size / 3, cy - size])} ${at([cx + size, cy - size / 3])}`;
  });
  return element("path", { d: strokes.join(""), fill: "none", stroke: LEAF_LINE, "stroke-width": 0.5 });
}

function flowers(x: number, y: number, w: number, h: number, random: Random): string {
  const heads = Array.from({ length: 4 }, (_, index) => [
    x + (index / 3 - 0.5) * w * 0.9,
    y - h * (0.78 + 0.22 * random()),
  ]);
  const stems = heads.map(([hx = 0, hy = 0]) => `M${at([x + (hx - x) * 0.2, y])}L${at([hx, hy])}`).join("");
  const r = Math.max(0.7, Math.min(2, h / 14));
  return (
    element("path", { d: stems, fill: "none", stroke: LEAF_LINE, "stroke-width": 0.5 }) +
    heads
      .map(([cx = 0, cy = 0]) => element("circle", { cx, cy, r, fill: PAPER, stroke: LEAF_LINE, "stroke-width": 0.6 }))
      .join("")
  );
}

/** A plant seen from above, as planting plans show it. */
export function fromAbove({ kind, width }: Plant, x: number, y: number, scale: number, random: Random): string {
  const r = (width / 2) * scale;
  if (kind === "grass") {
    const rays = Array.from({ length: 11 }, (_, index) => {
      const angle = ((index + random() * 0.6) / 11) * 2 * Math.PI;
      const reach = r * (0.75 + 0.35 * random());
      return `M${at([x, y])}L${at([x + Math.cos(angle) * reach, y + Math.sin(angle) * reach])}`;
    });
    return element("path", { d: rays.join(""), fill: "none", stroke: LEAF_LINE, "stroke-width": 0.5 });
  }
  const lobes = Array.from({ length: 8 }, (_, index): Point => {
    const angle = (index / 8) * 2 * Math.PI + random() * 0.3;
    return [x + Math.cos(angle) * r * 0.88, y + Math.sin(angle) * r * 0.88];
  });
  return (
    element("path", {
      d: scalloped(lobes, true),
      fill: LEAF,
      stroke: LEAF_LINE,
      "stroke-width": r > 7 ? 0.7 : 0.45,
      "stroke-linejoin": "round",
    }) +
    (kind === "perennial"
      ? element("circle", {
          cx: x,
          cy: y,
          r: Math.max(0.8, r * 0.28),
          fill: PAPER,
          stroke: LEAF_LINE,
          "stroke-width": 0.5,
        })
      : leaves(x, y, r * 0.5, r * 0.5, random))
  );
}

/** A line of bows through points, outwards. */
function scalloped(points: readonly Point[], closed: boolean): string {
  const [first] = points;
  if (!first) return "";
  const ends = closed ? [...points.slice(1), first] : points.slice(1);
  let [x, y] = first;
  const bows = ends.map(([toX, toY]) => {
    const radius = round(Math.hypot(toX - x, toY - y) * 0.56);
    [x, y] = [toX, toY];
    return `A${radius} ${radius} 0 0 1 ${at([toX, toY])}`;
  });
  // A plant seen from the side is round below too.
  const below = closed ? "" : `Q${at([(x + first[0]) / 2, y + 0.3 * Math.abs(x - first[0])])} ${at(first)}`;
  return `M${at(first)}${bows.join("")}${below}Z`;
}
