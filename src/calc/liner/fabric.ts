import { invalid, plain, requireRange } from "../problem";
import { SHEET_RANGE } from "./liner";
import { stepsFor } from "./roundUp";

/** Which way the strips of fabric run over the area. */
export type StripRun = "along" | "across";

/** Strips of fabric that cover an area, lapped side by side; m and m². */
export interface FabricCut {
  readonly run: StripRun;
  /** Of all layers. */
  readonly strips: number;
  readonly stripLength: number;
  /** Length that comes off the roll, of all layers. */
  readonly totalLength: number;
  readonly area: number;
}

/** Limits of a fabric cut; SI. */
export const FABRIC_RANGE = {
  rollWidth: { min: 0.1, max: 50 },
  lap: { min: 0, max: 5 },
  layers: { min: 1, max: 10 },
} as const;

/**
 * Strips of fabric that cover a rectangle: n = ⌈(side − lap) / (roll width − lap)⌉ strips over one side, each as long
 * as the other side. Strips run along the length or across it, whichever takes less off the roll; along when equal.
 *
 * @param length m, 0.01 to 500
 * @param width m, 0.01 to 500
 * @param rollWidth m, 0.1 to 50
 * @param lap m, 0 to 5, less than the roll's width
 * @param layers whole, 1 to 10
 * @throws Problem outside these ranges
 * @example fabricCut(10, 4, 2, 0.3, 1).totalLength => 24; six strips of 4 across, (10 - 0.3) / (2 - 0.3) = 5.7; along
 *   three of 10
 *
 * Source: geometry. The lap: common practice, no source.
 */
export function fabricCut(length: number, width: number, rollWidth: number, lap: number, layers: number): FabricCut {
  requireRange("length", length, SHEET_RANGE.side.min, SHEET_RANGE.side.max, "m");
  requireRange("width", width, SHEET_RANGE.side.min, SHEET_RANGE.side.max, "m");
  requireRange("roll width", rollWidth, FABRIC_RANGE.rollWidth.min, FABRIC_RANGE.rollWidth.max, "m");
  requireRange("lap", lap, FABRIC_RANGE.lap.min, FABRIC_RANGE.lap.max, "m");
  requireRange("layers", layers, FABRIC_RANGE.layers.min, FABRIC_RANGE.layers.max);
  if (!Number.isInteger(layers)) throw invalid(`layers must be a whole number; got ${plain(layers)}`);
  if (lap >= rollWidth) throw invalid("lap must be less than the width of the roll");
  const run = (name: StripRun, stripLength: number, covered: number): FabricCut => {
    const strips = layers * Math.max(1, stepsFor(covered - lap, rollWidth - lap));
    const totalLength = strips * stripLength;
    return { run: name, strips, stripLength, totalLength, area: totalLength * rollWidth };
  };
  const along = run("along", length, width);
  const across = run("across", width, length);
  return across.totalLength < along.totalLength * (1 - 1e-9) ? across : along;
}
