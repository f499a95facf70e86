import { requireRange } from "../problem";
import { roundUpTo } from "./roundUp";

/** A rectangle cut from sheet goods; m. */
export interface SheetCut {
  readonly length: number;
  readonly width: number;
}

/** Limits of the sheet goods calculations; SI. */
export const SHEET_RANGE = {
  side: { min: 0.01, max: 500 },
  depth: { min: 0, max: 20 },
  overlap: { min: 0, max: 10 },
  sideSlope: { min: 0, max: 10 },
  roundTo: { min: 0, max: 10 },
} as const;

/** A pit with a flat bottom that a sheet lines; m. */
export interface LinedPit {
  /** Of the bottom. */
  readonly length: number;
  /** Of the bottom. */
  readonly width: number;
  readonly depth: number;
  /** Sheet left lying on the ground beyond each edge. */
  readonly overlap: number;
  /** Horizontal run of the sides for one of depth; 0 for upright sides. */
  readonly sideSlope: number;
  /** Cuts are rounded up to a multiple of this; 0 leaves them as they are. */
  readonly roundTo: number;
}

/**
 * Sheet that lines a pit, folded at the corners: L + 2 D √(1 + z²) + 2 overlap, and the same with the width.
 *
 * @param pit length L and width W of the bottom 0.01 to 500 m, depth D 0 to 20 m, overlap 0 to 10 m,
 *   side slope z 0 to 10, round to 0 to 10 m
 * @returns the cut, m, each side rounded up
 * @throws Problem outside these ranges
 * @example linerCut({ length: 3, width: 2, depth: 1, overlap: 0.5, sideSlope: 0, roundTo: 0 }).length => 6; 3 + 2 × 1
 *   + 2 × 0.5
 *
 * Source: geometry, the slope of a side is D √(1 + z²). With the length and width of the TOP and upright sides the
 * same sum is the trade's rule of thumb, which is always too long for a sloped pit.
 */
export function linerCut(pit: LinedPit): SheetCut {
  const { length, width, depth, overlap, sideSlope, roundTo } = pit;
  requireRange("length", length, SHEET_RANGE.side.min, SHEET_RANGE.side.max, "m");
  requireRange("width", width, SHEET_RANGE.side.min, SHEET_RANGE.side.max, "m");
  requireRange("depth", depth, SHEET_RANGE.depth.min, SHEET_RANGE.depth.max, "m");
  requireRange("overlap", overlap, SHEET_RANGE.overlap.min, SHEET_RANGE.overlap.max, "m");
  requireRange("side slope", sideSlope, SHEET_RANGE.sideSlope.min, SHEET_RANGE.sideSlope.max);
  requireRange("round to", roundTo, SHEET_RANGE.roundTo.min, SHEET_RANGE.roundTo.max, "m");
  const bothSides = 2 * (depth * Math.hypot(1, sideSlope) + overlap);
  return { length: roundUpTo(length + bothSides, roundTo), width: roundUpTo(width + bothSides, roundTo) };
}
