import { invalid, requireRange } from "../problem";
import { SHEET_RANGE, type SheetCut } from "./liner";
import { roundUpTo } from "./roundUp";

/** Limits of a stepped fall; SI. */
export const FALL_RANGE = {
  step: { min: 0, max: 100 },
  mostSteps: 200,
  bank: { min: 0, max: 10 },
  slack: { min: 0, max: 2 },
} as const;

/** A bed that falls in steps; m. */
export interface SteppedFall {
  /** Height of each drop. */
  readonly drops: readonly number[];
  /** Length of each level stretch between and beside the drops. */
  readonly treads: readonly number[];
  readonly bedWidth: number;
  /** How far the sheet climbs each bank. */
  readonly bankHeight: number;
  /** Sheet beyond both ends and both banks. */
  readonly overlap: number;
  /** Loose sheet left at each drop, so that settling ground cannot stretch it. */
  readonly slackPerDrop: number;
  readonly roundTo: number;
}

/**
 * Sheet that follows a stepped bed. Along: Σ drops + Σ treads + slack × number of drops + 2 overlap.
 * Across: bed width + 2 bank height + 2 overlap. A straight measure from top to bottom would be too short by a
 * quarter or more.
 *
 * @param fall drops and treads 0 to 100 m, at most one tread more or fewer than drops; bed width 0.01 to 500 m;
 *   bank height 0 to 10 m; overlap 0 to 10 m; slack per drop 0 to 2 m; round to 0 to 10 m
 * @returns the cut, m: length along the bed, width across it, each rounded up
 * @throws Problem outside these ranges
 * @example fallCut({ drops: [0.3, 0.3], treads: [1, 1, 1], bedWidth: 1, bankHeight: 0.3, overlap: 0.3, slackPerDrop:
 *   0.1, roundTo: 0 }).length => 4.4; 2 × 0.3 + 3 × 1 + 2 × 0.1 + 2 × 0.3
 *
 * Source: geometry. Slack and overlaps: common practice, no source.
 */
export function fallCut(fall: SteppedFall): SheetCut {
  const { drops, treads, bedWidth, bankHeight, overlap, slackPerDrop, roundTo } = fall;
  if (drops.length === 0) throw invalid("drops is needed: the height of at least one drop");
  for (const [name, steps] of [
    ["drops", drops],
    ["treads", treads],
  ] as const) {
    if (steps.length > FALL_RANGE.mostSteps) {
      throw invalid(`${name} takes at most ${FALL_RANGE.mostSteps} values; got ${steps.length}`);
    }
    steps.forEach((s, i) => requireRange(`${name} ${i + 1}`, s, FALL_RANGE.step.min, FALL_RANGE.step.max, "m"));
  }
  if (Math.abs(drops.length - treads.length) > 1) {
    throw invalid(
      `treads must be as many as the drops, or one more or fewer; got treads: ${treads.length}, drops: ${drops.length}`,
    );
  }
  requireRange("bed width", bedWidth, SHEET_RANGE.side.min, SHEET_RANGE.side.max, "m");
  requireRange("bank height", bankHeight, FALL_RANGE.bank.min, FALL_RANGE.bank.max, "m");
  requireRange("overlap", overlap, SHEET_RANGE.overlap.min, SHEET_RANGE.overlap.max, "m");
  requireRange("slack per drop", slackPerDrop, FALL_RANGE.slack.min, FALL_RANGE.slack.max, "m");
  requireRange("round to", roundTo, SHEET_RANGE.roundTo.min, SHEET_RANGE.roundTo.max, "m");
  const profile = sum(drops) + sum(treads) + slackPerDrop * drops.length;
  return {
    length: roundUpTo(profile + 2 * overlap, roundTo),
    width: roundUpTo(bedWidth + 2 * (bankHeight + overlap), roundTo),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
