import { requireRange } from "../problem";
import { alongLine } from "./stations";

/** The stream at one station, as the liner lies over it; m. */
export interface LinerStation {
  readonly station: number;
  /** Level of the excavated bed where the reach below this station begins, under the drop. */
  readonly bed: number;
  /** Height of the upright face at this station that the liner comes down: 0 where there is no drop. */
  readonly drop: number;
  /** Width of the excavated bed. */
  readonly width: number;
  /** Height the liner goes up either bank, freeboard included. */
  readonly bank: number;
  /** Slope of the banks, run per 1 of height; 0 is upright. */
  readonly bankSlope: number;
}

/** What is added to the developed sizes. */
export interface LinerExtra {
  /** Turned over the top of each bank, m. */
  readonly edge: number;
  /** Share for slack in folds and for settling. */
  readonly slack: number;
}

export interface LinerReach {
  readonly station: number;
  /** Along the liner from the first station, slack included, m. */
  readonly along: number;
  /** Across bed, banks and edges, slack included, m. */
  readonly across: number;
}

/** Limits of a developed liner; SI. */
export const LINER_RUN_RANGE = {
  station: { min: 0, max: 10_000 },
  level: { min: -500, max: 9000 },
  drop: { min: 0, max: 6 },
  width: { min: 0, max: 100 },
  bank: { min: 0, max: 6 },
  bankSlope: { min: 0, max: 10 },
  edge: { min: 0, max: 5 },
  slack: { min: 0, max: 0.5 },
} as const;

/**
 * A liner laid over a stream: across = (w + 2 h √(1 + z²) + 2 edge)(1 + slack); along = Σ(√(Δx² + Δz²) + drop)(1 + slack),
 * the bed followed from station to station and down each upright face.
 *
 * @param stations at least two, in order along the line
 * @throws Problem for a single station, stations out of order, and outside the ranges; a step entered as no drop is a slope
 * @example linerRun([{ station: 0, bed: 10, drop: 0, width: 1, bank: 0.5, bankSlope: 0 }, { station: 4, bed: 7, drop:
 *   0, width: 1, bank: 0.5, bankSlope: 0 }], { edge: 0.25, slack: 0 })[1].along => 5; a triangle of 3, 4 and 5
 *
 * Source: wetted perimeter of a trapezoid, b + 2 y √(1 + z²), V. T. Chow, "Open-Channel Hydraulics" (1959), Table 2-1;
 * length by Pythagoras. Slack and edges: common practice, no source.
 */
export function linerRun(stations: readonly LinerStation[], extra: LinerExtra): LinerReach[] {
  requireRange("edge", extra.edge, LINER_RUN_RANGE.edge.min, LINER_RUN_RANGE.edge.max, "m");
  requireRange("slack", extra.slack, LINER_RUN_RANGE.slack.min, LINER_RUN_RANGE.slack.max);
  let along = 0;
  return alongLine(stations, LINER_RUN_RANGE.station, (at, before) => {
    requireStation(at);
    // The reach above ends at the top of this station's face.
    if (before) along += Math.hypot(at.station - before.station, at.bed + at.drop - before.bed) * (1 + extra.slack);
    along += at.drop * (1 + extra.slack);
    const across = at.width + 2 * at.bank * Math.hypot(1, at.bankSlope) + 2 * extra.edge;
    return { station: at.station, along, across: across * (1 + extra.slack) };
  });
}

function requireStation(at: LinerStation): void {
  const limits = LINER_RUN_RANGE;
  requireRange("bed", at.bed, limits.level.min, limits.level.max, "m");
  requireRange("drop", at.drop, limits.drop.min, limits.drop.max, "m");
  requireRange("width", at.width, limits.width.min, limits.width.max, "m");
  requireRange("bank", at.bank, limits.bank.min, limits.bank.max, "m");
  requireRange("bank slope", at.bankSlope, limits.bankSlope.min, limits.bankSlope.max, "run per 1 of height");
}
