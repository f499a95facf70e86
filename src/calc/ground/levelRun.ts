import { invalid, ofPart, requireRange } from "../problem";
import { LEVEL_RANGE } from "../levels/setOut";

/** A row of a level book: the point, and what the rod showed on it from one or two set-ups of the instrument; m. */
export interface RodRow {
  readonly point: string;
  /** Reading on a point whose level is known: the line of sight follows from it. */
  readonly backsight?: number | undefined;
  /** Reading on a point that the run does not go on from. */
  readonly intermediate?: number | undefined;
  /** Last reading of a set-up, on a turning point or at the end. */
  readonly foresight?: number | undefined;
}

/** A point of the run with its level; m. */
export interface LevelledPoint {
  readonly point: string;
  readonly level: number;
  /** Height of instrument from this point on, where a backsight was taken on it. */
  readonly instrument?: number;
  /** Set-ups between the start and this point: an error grows with them. */
  readonly setUps: number;
}

export interface LevelRun {
  readonly points: readonly LevelledPoint[];
  readonly backsights: number;
  readonly foresights: number;
  readonly setUps: number;
}

/**
 * Levels from rod readings: HI = known level + backsight; level = HI - reading. A turning point has a foresight from the
 * old set-up and a backsight from the new one in one row. A backsight alone is read on a point levelled before, by name:
 * a laser moved at midday needs no more.
 *
 * @param start level of the first row's point, m, -500 to 9000
 * @param rows readings m, 0 to 7.7, in the order they were taken; the first has a backsight
 * @returns each row's level, the sums of the page check, and how many set-ups there were
 * @throws Problem for readings out of order, a backsight missing, a rod reading outside its range
 * @example levelRun(30, [{ point: "Mark", backsight: 1.2 }, { point: "Rim", foresight: 0.7 }]).points.at(-1).level =>
 *   30.5; 30 + 1.2 - 0.7
 *
 * Source: differential levelling, height of instrument: US Army FM 5-233, "Construction Surveying" (1985), chapter 4
 * (from memory); the same in any surveying text.
 */
export function levelRun(start: number, rows: readonly RodRow[]): LevelRun {
  requireRange("start", start, LEVEL_RANGE.level.min, LEVEL_RANGE.level.max, "m");
  const points: LevelledPoint[] = [];
  let instrument: number | undefined;
  let ended = false;
  let setUps = 0;
  let [backsights, foresights] = [0, 0];
  rows.forEach((row, index) => {
    const point = ofPart(row.point ? `row ${index + 1} (${row.point})` : `row ${index + 1}`, () => {
      requireReadings(row);
      const known = index === 0 ? firstLevel(row, start) : undefined;
      const read = row.foresight ?? row.intermediate;
      if (known === undefined && read !== undefined && instrument === undefined)
        throw invalid("no backsight was taken before this reading; begin with one on a point of known level");
      if (known === undefined && read !== undefined && ended)
        throw invalid(
          "the foresight before this reading ended the set-up; take a backsight first, or enter side shots as intermediate",
        );
      const before = read === undefined && known === undefined ? levelledBefore(points, row.point) : undefined;
      const level = known ?? before?.level ?? (instrument ?? 0) - (read ?? 0);
      // A point read again from another set-up carries the set-ups of its own level.
      const reached = before?.setUps ?? setUps;
      ended = row.foresight !== undefined && row.backsight === undefined;
      if (row.backsight === undefined) return { point: row.point, level, setUps: reached };
      instrument = level + row.backsight;
      setUps = reached + 1;
      return { point: row.point, level, setUps: reached, instrument };
    });
    backsights += row.backsight ?? 0;
    foresights += row.foresight ?? 0;
    points.push(point);
  });
  return { points, backsights, foresights, setUps: rows.filter(({ backsight }) => backsight !== undefined).length };
}

function requireReadings(row: RodRow): void {
  const { min, max } = LEVEL_RANGE.reading;
  for (const kind of ["backsight", "intermediate", "foresight"] as const) {
    const reading = row[kind];
    if (reading !== undefined) requireRange(kind, reading, min, max, "m");
  }
  if (row.backsight === undefined && row.intermediate === undefined && row.foresight === undefined)
    throw invalid("a reading is needed: a backsight, an intermediate sight or a foresight");
  if (row.intermediate !== undefined && (row.foresight !== undefined || row.backsight !== undefined))
    throw invalid("an intermediate sight stands alone; on a turning point enter a foresight and a backsight");
}

function firstLevel({ backsight, foresight, intermediate }: RodRow, start: number): number {
  if (backsight === undefined) throw invalid("the first row needs a backsight, read on the point of known level");
  if (foresight !== undefined || intermediate !== undefined)
    throw invalid("the first row takes a backsight alone; its level is the one the run starts from");
  return start;
}

function levelledBefore(points: readonly LevelledPoint[], name: string): LevelledPoint {
  const key = pointKey(name);
  // Points without a name are not each other.
  const found = key === "" ? undefined : [...points].reverse().find(({ point }) => pointKey(point) === key);
  if (!found)
    throw invalid(
      "a backsight alone needs a point leveled before; enter the foresight that reached it in the same row",
    );
  return found;
}

/**
 * Points are the same whatever their case and spacing.
 *
 * @example pointKey("Mark 1") === pointKey("mark 1") => true; capitals do not matter
 */
export function pointKey(name: string): string {
  return name.trim().toLowerCase().replace(/\s+/g, " ");
}

/** How a run closed on a point of known level; m. */
export interface Closure {
  /** Computed less known level. */
  readonly misclosure: number;
  /** What may be shared out; undefined while the length is not known. */
  readonly limit?: number;
  readonly within?: boolean;
}

/**
 * Limits of closure k in m for one km levelled; the limit is k√L.
 *
 * Source: third order 12 mm √km, Federal Geodetic Control Committee, "Standards and Specifications for Geodetic Control
 * Networks" (1984), as other manuals quote it; construction 0.1 ft √mile: common practice, no source.
 */
export const CLOSURE_LIMITS = { construction: 0.024, "third order": 0.012 } as const;

export const RUN_RANGE = { length: { min: 0, max: 20_000 } } as const;

/**
 * Misclosure against its limit: e = computed - known; limit = k√L, L the distance levelled, in km.
 *
 * @param computed level the run gives, m
 * @param known level of that point, m
 * @param length distance levelled, out and back together, m, 0 to 20,000; undefined where it was not paced
 * @param perKilometre k, m for one km
 * @example closure(30.5, 30.49, undefined, 0.012).misclosure => 0.01; 30.50 - 30.49
 *
 * Source: as CLOSURE_LIMITS.
 */
export function closure(computed: number, known: number, length: number | undefined, perKilometre: number): Closure {
  const misclosure = computed - known;
  if (length === undefined) return { misclosure };
  requireRange("length", length, RUN_RANGE.length.min, RUN_RANGE.length.max, "m");
  const limit = perKilometre * Math.sqrt(length / 1000);
  // Just on the limit on paper must not fall outside it in binary.
  return { misclosure, limit, within: Math.abs(misclosure) <= limit + 1e-9 };
}

/**
 * Shares a misclosure out by set-ups: level - e k / n, k the set-ups up to the point, n those up to the closing one.
 *
 * @param misclosure computed less known level of the last point, m
 * @throws Problem where no sight leads from the start to the end
 * @example shareOut([{ point: "Mark", level: 30, setUps: 0 }, { point: "End", level: 30.01, setUps: 1 }], 0.01) =>
 *   [30, 30]; all of it on the one set-up
 *
 * Source: equal weights for sights of like length, any surveying text.
 */
export function shareOut(points: readonly LevelledPoint[], misclosure: number): number[] {
  const all = points.at(-1)?.setUps ?? 0;
  if (all === 0)
    throw invalid("readings must end with a sight on another point than the first, to close on a known level");
  return points.map(({ level, setUps }) => level - (misclosure * setUps) / all);
}
