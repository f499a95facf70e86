import {
  closure,
  CLOSURE_LIMITS,
  levelRun,
  pointKey,
  shareOut,
  type Closure,
  type LevelRun,
  type RodRow,
} from "./levelRun";

/** A run of levels and how it closed. */
export interface ClosedRun extends LevelRun {
  /** Undefined where the run ends on no known level. */
  readonly closure: Closure | undefined;
  /** Levels with the misclosure shared out; undefined where there is none, or where it is over its limit. */
  readonly corrected: readonly number[] | undefined;
}

/**
 * Levels of a run, held against the known level that it ends on: the one given, or that of its first point where the last
 * has the same name.
 *
 * @param start level of the first row's point, m
 * @param known level of the last point, m; undefined where it is that of the first, or not known
 * @example closedRun(10, [{ point: "a", backsight: 1 }, { point: "b", intermediate: 2 }, { point: "a", foresight: 1.01 }], {
 *   limit: "construction" }).closure.misclosure => -0.01; 10 + 1 - 1.01 - 10
 * @param distance levelled, m; undefined where it was not paced
 *
 * Source: as levelRun, closure and shareOut.
 */
export function closedRun(
  start: number,
  rows: readonly RodRow[],
  {
    known,
    distance,
    limit,
  }: {
    readonly known?: number | undefined;
    readonly distance?: number | undefined;
    readonly limit: keyof typeof CLOSURE_LIMITS;
  },
): ClosedRun {
  const run = levelRun(start, rows);
  const [first, last] = [run.points[0], run.points.at(-1)];
  const name = pointKey(first?.point ?? "");
  const loop = run.points.length > 1 && name !== "" && name === pointKey(last?.point ?? "");
  const target = known ?? (loop ? start : undefined);
  const closed =
    target === undefined ? undefined : closure(last?.level ?? NaN, target, distance, CLOSURE_LIMITS[limit]);
  const corrected = closed && closed.within !== false ? shareOut(run.points, closed.misclosure) : undefined;
  return { ...run, closure: closed, corrected };
}
