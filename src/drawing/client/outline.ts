import { repeatableRandom } from "../../calc/liner/cutplan/random";

/** A point on the paper. */
export type Point = readonly [number, number];

/** A box on the paper. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How much of an edge is straight; the rest is worn round. */
const STRAIGHT = 0.56;

/** How square a boulder is: 2 is an ellipse, more is nearer a box. */
const BOULDER = 3.2;

/** The outline of a stone that fills its box exactly, and the lit part of it, as path data. */
export function stoneOutline(
  box: Box,
  seed: number,
  square = BOULDER,
): { readonly edge: string; readonly light: string } {
  const random = repeatableRandom(seed);
  const corners = (square > BOULDER ? 10 : 7) + Math.floor(random() * 3);
  const raw = Array.from({ length: corners }, (_, index): Point => {
    const angle = ((index + 0.55 * (random() - 0.5)) / corners) * 2 * Math.PI;
    // Between a circle and a box: boulders are blunt.
    const blunt = (Math.abs(Math.cos(angle)) ** square + Math.abs(Math.sin(angle)) ** square) ** (-1 / square);
    const reach = blunt * (1 - (0.45 / square) * random());
    return [Math.cos(angle) * reach, Math.sin(angle) * reach];
  });
  const points = fitted(raw, box);
  const middle: Point = [box.x + box.width * 0.42, box.y + box.height * 0.36];
  const light = points.map(([x, y]): Point => [
    middle[0] + (x - middle[0]) * 0.52,
    middle[1] + (y - middle[1]) * (y < middle[1] ? 0.62 : 0.34),
  ]);
  return { edge: worn(points), light: worn(light) };
}

/** Scaled so that the worn outline touches all four sides of its box. */
function fitted(points: readonly Point[], box: Box): Point[] {
  let now = points;
  for (let round = 0; round < 3; round++) {
    const reached = extremes(now);
    now = now.map(([x, y]): Point => [
      box.x + ((x - reached.x) / reached.width) * box.width,
      box.y + ((y - reached.y) / reached.height) * box.height,
    ]);
  }
  return [...now];
}

/** How far the worn outline reaches: a curve at a corner passes midway between its ends and the corner. */
function extremes(points: readonly Point[]): Box {
  const seen = corners(points).flatMap(({ from, corner, to }) => [
    from,
    to,
    [(from[0] + 2 * corner[0] + to[0]) / 4, (from[1] + 2 * corner[1] + to[1]) / 4] as const,
  ]);
  const [x, y] = [Math.min(...seen.map((p) => p[0])), Math.min(...seen.map((p) => p[1]))];
  return { x, y, width: Math.max(...seen.map((p) => p[0])) - x, height: Math.max(...seen.map((p) => p[1])) - y };
}

function corners(points: readonly Point[]): { from: Point; corner: Point; to: Point }[] {
  const cut = (1 - STRAIGHT) / 2;
  return points.map((corner, index) => {
    const before = points[(index + points.length - 1) % points.length] ?? corner;
    const after = points[(index + 1) % points.length] ?? corner;
    const towards = (other: Point): Point => [
      corner[0] + (other[0] - corner[0]) * cut,
      corner[1] + (other[1] - corner[1]) * cut,
    ];
    return { from: towards(before), corner, to: towards(after) };
  });
}

function worn(points: readonly Point[]): string {
  const parts = corners(points).map(
    ({ from, corner, to }, index) => `${index === 0 ? "M" : "L"}${at(from)}Q${at(corner)} ${at(to)}`,
  );
  return `${parts.join("")}Z`;
}

/** A point as path data. */
export function at([x, y]: Point): string {
  return `${round(x)} ${round(y)}`;
}

/** The area that points enclose, as path data. */
export function ring(points: readonly Point[]): string {
  return `M${points.map(at).join("L")}Z`;
}

/** A tenth of a unit is finer than any line of the drawing, and keeps it small. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}
