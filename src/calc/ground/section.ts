import { invalid, plain, requireRange } from "../problem";

/** Existing ground and designed surface across the line at one station; m. */
export interface Station {
  /** Distance along the line. */
  readonly station: number;
  /** Level of the existing ground on the line. */
  readonly ground: number;
  /** Level of the designed surface: a flat formation of the width below. */
  readonly design: number;
  /** Width of the formation, half on either side of the line. */
  readonly width: number;
  /** How the ground rises away from the line, to the left and to the right: rise per 1 of run, negative where it falls. */
  readonly riseLeft: number;
  readonly riseRight: number;
}

/** Side slopes, horizontal run per 1 of height; 0 is upright. */
export interface SideSlopes {
  readonly cut: number;
  readonly fill: number;
}

/** Areas of one section, m²; both where the ground lies across the formation. */
export interface SectionArea {
  readonly cut: number;
  readonly fill: number;
}

/** Limits of sections and stations; SI. */
export const SECTION_RANGE = {
  /** Less than 0 lies above the point the line is counted from. */
  station: { min: -1000, max: 10_000 },
  width: { min: 0, max: 100 },
  /** Rise per 1 of run; 1 is 45 degrees. */
  crossRise: { min: -1, max: 1 },
  slope: { min: 0, max: 10 },
  depth: { min: 0, max: 30 },
} as const;

/**
 * Cut and fill of one section: the formation is flat, the ground a straight line to either side of the middle, and the
 * side slopes go up (cut) or down (fill) from the formation's edges to where they meet the ground. For a height h at the
 * edge, ground rising by r outward and sides of z run per 1: catch w = h / (1/z - r) in cut, |h| / (1/z + r) in fill;
 * the corner holds |h| w / 2. Exact for this section.
 *
 * @throws Problem outside the ranges, and where the ground rises or falls as steeply as the side slope: they never meet
 * @example sectionArea({ station: 0, ground: 11, design: 10, width: 2, riseLeft: 0, riseRight: 0 }, { cut: 1, fill: 1
 *   }).cut => 3; (2 + 4) / 2 × 1
 *
 * Source: three-level section with side slopes, any surveying text (Davis, Foote and Kelly, "Surveying", from memory).
 */
export function sectionArea(at: Station, slopes: SideSlopes): SectionArea {
  const { width, crossRise, slope, depth } = SECTION_RANGE;
  requireRange("width", at.width, width.min, width.max, "m");
  requireRange("rise to the left", at.riseLeft, crossRise.min, crossRise.max, "per 1 of run");
  requireRange("rise to the right", at.riseRight, crossRise.min, crossRise.max, "per 1 of run");
  requireRange("cut slope", slopes.cut, slope.min, slope.max, "run per 1 of height");
  requireRange("fill slope", slopes.fill, slope.min, slope.max, "run per 1 of height");
  const high = at.ground - at.design;
  requireRange("depth of cut or fill", Math.abs(high), depth.min, depth.max, "m");
  const half = at.width / 2;
  const sides = [at.riseLeft, at.riseRight].map((rise) => {
    const edge = high + rise * half;
    const inner = splitTrapezoid(high, edge, half);
    const corner = cornerArea(edge, rise, slopes);
    return edge > 0 ? { cut: inner.cut + corner, fill: inner.fill } : { cut: inner.cut, fill: inner.fill + corner };
  });
  return { cut: sum(sides.map(({ cut }) => cut)), fill: sum(sides.map(({ fill }) => fill)) };
}

/**
 * Width of the ground that a section takes up: the formation, and its sides out to where they meet the ground; m.
 *
 * @example footprint({ station: 0, ground: 10, design: 12, width: 3, riseLeft: 0, riseRight: 0 }, { cut: 1, fill: 2 }) => 11;
 *   3 + 2 × 2 × 2
 */
export function footprint(at: Station, slopes: SideSlopes): number {
  const high = at.ground - at.design;
  const half = at.width / 2;
  return sum([at.riseLeft, at.riseRight].map((rise) => half + catchRun(high + rise * half, rise, slopes)));
}

/** Areas above and below zero of a height that goes straight from `a` to `b` over `width`. */
function splitTrapezoid(a: number, b: number, width: number): SectionArea {
  if (a * b >= 0) {
    const area = ((a + b) / 2) * width;
    return { cut: Math.max(0, area), fill: Math.max(0, -area) };
  }
  const crossing = (width * a) / (a - b);
  const [first, second] = [(Math.abs(a) * crossing) / 2, (Math.abs(b) * (width - crossing)) / 2];
  return a > 0 ? { cut: first, fill: second } : { cut: second, fill: first };
}

function cornerArea(height: number, rise: number, slopes: SideSlopes): number {
  return (Math.abs(height) * catchRun(height, rise, slopes)) / 2;
}

/** How far out a side goes from the formation's edge until it meets the ground. */
function catchRun(height: number, rise: number, slopes: SideSlopes): number {
  const run = height > 0 ? slopes.cut : slopes.fill;
  if (height === 0 || run === 0) return 0;
  const closing = height > 0 ? 1 / run - rise : 1 / run + rise;
  if (closing <= 1e-9) {
    throw invalid(
      `the ground across ${height > 0 ? "rises" : "falls"} ${plain(Math.abs(rise))} per 1, as steeply as the side slope ` +
        `of ${plain(run)} to 1: the two never meet; make the slope steeper or hold it with a wall`,
    );
  }
  return Math.abs(height) / closing;
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
