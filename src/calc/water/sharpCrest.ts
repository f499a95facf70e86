import { GRAVITY } from "../pipe/friction";
import { invalid, plain, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";
import { solveBracketed } from "../solve";
import { COEFFICIENT_FROM_US } from "../tables/lips";
import { ADDED_HEAD, SHARP_CRESTS } from "../tables/sharpCrests";
import { deepestSheet, LIP_RANGE } from "./lip";

/** A thin crest in its pool, m. */
export interface SharpCrest {
  /** Width of the crest. */
  readonly width: number;
  /** Height of the crest above the bottom of the pool. */
  readonly crestHeight: number;
  /** Width of the pool before the crest; left out where the walls lead straight to the crest. */
  readonly poolWidth?: number;
}

/** What the calculations accept, m. */
export const CREST_RANGE = { height: { min: 0.03, max: 10 }, poolWidth: { min: 0.01, max: 100 } } as const;

/** How deep a sheet may stand on a crest, as a share of the crest's height. */
const MOST_HEAD = { rehbock: 1, kindsvaterCarter: 2 } as const;

/**
 * Flow over a thin crest as wide as its pool: Q = 2/3 √(2g) (0.602 + 0.083 H/P) L (H + 1.25 mm)^1.5.
 *
 * @param depth H, m, at most P: the still water level above the crest
 * @returns m³/s
 * @example rehbockFlow({ width: 1, crestHeight: 1 }, 0.2) => 0.1649; 2.95246 × (0.602 + 0.083 × 0.2) × 0.20125^1.5
 *
 * Source: T. Rehbock (1929), as in ISO 1438 (from memory); range there: H at least 30 mm, P at least 100 mm.
 */
export function rehbockFlow({ width, crestHeight }: SharpCrest, depth: number): number {
  const coefficient = 0.602 + (0.083 * depth) / crestHeight;
  return (2 / 3) * Math.sqrt(2 * GRAVITY) * coefficient * width * (depth + 0.00125) ** 1.5;
}

/**
 * Kindsvater and Carter's coefficient, Ce = slope × H/P + base, between the rows of the table by straight lines.
 *
 * @param widthRatio L/B, up to 1; below 0.2 the first row stands for all (0.4 % at most)
 * @returns m^½/s
 * @example kindsvaterCarterCoefficient(1, 0) / (2 / 3 * Math.sqrt(2 * 9.80665)) => 0.602; Kindsvater and Carter
 *   (1959): 0.602 + 0.075 H/P over the full width
 */
export function kindsvaterCarterCoefficient(widthRatio: number, headRatio: number): number {
  return between(widthRatio, ({ slope, base }) => slope * headRatio + base) * COEFFICIENT_FROM_US;
}

/**
 * Flow over a thin crest that may be narrower than its pool: Q = Ce (L + kb) (H + 0.003 ft)^1.5.
 *
 * @param depth H, m, at most 2 P: the still water level above the crest
 * @returns m³/s
 * @example kindsvaterCarterFlow({ width: 1, crestHeight: 1 }, 0.2) => 0.164; 2.95246 × 0.617 × 0.9991 × 0.20091^1.5
 *
 * Source: C. E. Kindsvater and R. W. Carter, Trans. ASCE 124 (1959), with the constants of the table of crests.
 */
export function kindsvaterCarterFlow({ width, crestHeight, poolWidth = width }: SharpCrest, depth: number): number {
  const ratio = width / poolWidth;
  const coefficient = kindsvaterCarterCoefficient(ratio, depth / crestHeight);
  const addedWidth = between(ratio, (row) => row.addedWidth) / 1000;
  return coefficient * (width + addedWidth) * (depth + ADDED_HEAD) ** 1.5;
}

/**
 * Flow over a thin crest whose height, and pool width if it is narrower than its pool, are known: Rehbock's formula
 * for one as wide as its pool, Kindsvater and Carter's where a pool width is given.
 *
 * @param depth m, 0 to 1, at most the crest's height (Rehbock) or twice it
 * @throws Problem outside the ranges
 * @example sharpCrestFlow({ width: 1, crestHeight: 1 }, 0.2) => 0.165; as rehbockFlow
 */
export function sharpCrestFlow(crest: SharpCrest, depth: number): number {
  const deepest = deepestOn(crest);
  requireRange("sheet depth", depth, 0, LIP_RANGE.depth.max, "m");
  if (depth > deepest) {
    throw invalid(
      `sheet depth must be at most ${sayBoth("size", deepest)} on this crest; got ${sayBoth("size", depth)}: ` +
        "the formula ends there, give a higher crest or a wider lip",
    );
  }
  if (depth === 0) return 0;
  return crest.poolWidth === undefined ? rehbockFlow(crest, depth) : kindsvaterCarterFlow(crest, depth);
}

/**
 * Depth of the sheet that carries a flow over such a crest, m: the inverse of `sharpCrestFlow`.
 *
 * @example sharpCrestDepth(0.16492, { width: 1, crestHeight: 1 }) => 0.2; as rehbockFlow, backwards
 */
export function sharpCrestDepth(flow: number, crest: SharpCrest): number {
  const deepest = deepestOn(crest);
  const most = sharpCrestFlow(crest, deepest);
  requireRange("flow", flow, LIP_RANGE.flow.min, LIP_RANGE.flow.max, "m³/s");
  if (flow > most) {
    throw invalid(
      `flow must be at most ${sayBoth("flow", most)} over this crest; got ${sayBoth("flow", flow)}: ` +
        "the formula ends there, give a higher crest or a wider lip",
    );
  }
  return solveBracketed((depth) => sharpCrestFlow(crest, depth) - flow, 0, deepest, "the sheet depth");
}

/** The deepest sheet the formula holds for, after a check of the crest. */
function deepestOn({ width, crestHeight, poolWidth }: SharpCrest): number {
  requireRange("crest height", crestHeight, CREST_RANGE.height.min, CREST_RANGE.height.max, "m");
  if (poolWidth !== undefined && !(poolWidth >= width * (1 - 1e-9) && poolWidth <= CREST_RANGE.poolWidth.max)) {
    throw invalid(
      `pool width must be at least the lip width, ${sayBoth("size", width)}, and at most ` +
        `${plain(CREST_RANGE.poolWidth.max)} m; got ${sayBoth("size", poolWidth)}`,
    );
  }
  const share = poolWidth === undefined ? MOST_HEAD.rehbock : MOST_HEAD.kindsvaterCarter;
  return Math.min(deepestSheet(width), share * crestHeight);
}

/** A figure of the table at a ratio of widths, by straight lines. */
function between(widthRatio: number, figure: (row: (typeof SHARP_CRESTS)[number]) => number): number {
  const above = SHARP_CRESTS.findIndex((row) => row.widthRatio >= Math.min(widthRatio, 1));
  const high = SHARP_CRESTS[above];
  const low = SHARP_CRESTS[above - 1];
  if (!high) throw invalid(`lip width over pool width must be a number up to 1; got ${plain(widthRatio)}`);
  if (!low) return figure(high);
  const part = (widthRatio - low.widthRatio) / (high.widthRatio - low.widthRatio);
  return figure(low) + part * (figure(high) - figure(low));
}
