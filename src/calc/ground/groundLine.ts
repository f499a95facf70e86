import { invalid, ofPart, plain, requireRange } from "../problem";
import { LEVEL_RANGE } from "../levels/setOut";
import { SECTION_RANGE } from "./section";

/** A shot on the ground; m. */
export interface Shot {
  /** Distance along the line. */
  readonly station: number;
  /** Distance from the line, to the right looking down it; negative to the left, 0 on the line. */
  readonly offset: number;
  readonly level: number;
}

/** The ground at a station: its level on the line, and how it rises away from it per 1 of run. */
export interface GroundAt {
  readonly ground: number;
  readonly riseLeft: number;
  readonly riseRight: number;
}

/** The ground along a line, as far as shots tell it. */
export interface GroundLine {
  /** Stations whose level on the line was shot, in order. */
  readonly stations: readonly number[];
  at(station: number): GroundAt;
}

export const SHOT_RANGE = { offset: { min: -300, max: 300 } } as const;

/** A value known at a station. */
interface Known {
  readonly station: number;
  readonly value: number;
}

/**
 * The existing ground from shots, straight from one station to the next, level beyond the first and the last. Shots beside
 * the line give the cross falls: the slope that fits those of one side best, r = Σ o (z - c) / Σ o², o the offset, z the
 * level, c the level on the line. A station shot on both sides only has the level between the two nearest.
 *
 * @param shots in any order; at least two stations with a level on the line
 * @example groundLine([{ station: 0, offset: 0, level: 12 }, { station: 10, offset: 0, level: 10 }]).at(5).ground => 11;
 *   half way
 * @throws Problem for fewer, for a station shot twice on the line, and outside the ranges
 *
 * Source: profile and cross-section leveling, any surveying text; the slope by least squares through a fixed point.
 */
export function groundLine(shots: readonly Shot[]): GroundLine {
  const groups = groupByStation(shots);
  const onLine = groups.flatMap(({ station, shots: there }) => {
    const value = levelOnLine(station, there);
    return value === undefined ? [] : [{ station, value }];
  });
  if (onLine.length < 2)
    throw invalid(
      `the ground needs shots on the line at two stations at least, as at the top and at the basin; got ${onLine.length}`,
    );
  const rises = (side: 1 | -1): Known[] =>
    groups.flatMap(({ station, shots: there }) => {
      const beside = there.filter(({ offset }) => offset * side > 0);
      if (beside.length === 0) return [];
      const level = valueAt(onLine, station);
      const value =
        sum(beside.map((shot) => shot.offset * side * (shot.level - level))) / sum(beside.map((s) => s.offset ** 2));
      return [{ station, value }];
    });
  const [left, right] = [rises(-1), rises(1)];
  return {
    stations: onLine.map(({ station }) => station),
    at: (station) => ({
      ground: valueAt(onLine, station),
      riseLeft: left.length === 0 ? 0 : valueAt(left, station),
      riseRight: right.length === 0 ? 0 : valueAt(right, station),
    }),
  };
}

function groupByStation(shots: readonly Shot[]): { station: number; shots: Shot[] }[] {
  const groups = new Map<number, Shot[]>();
  for (const shot of shots) {
    requireRange("station", shot.station, SECTION_RANGE.station.min, SECTION_RANGE.station.max, "m");
    ofPart(`shot at station ${plain(shot.station)} m`, () => {
      requireRange("offset", shot.offset, SHOT_RANGE.offset.min, SHOT_RANGE.offset.max, "m");
      requireRange("level", shot.level, LEVEL_RANGE.level.min, LEVEL_RANGE.level.max, "m");
    });
    const there = groups.get(shot.station);
    if (there) there.push(shot);
    else groups.set(shot.station, [shot]);
  }
  return [...groups].map(([station, there]) => ({ station, shots: there })).sort((a, b) => a.station - b.station);
}

function levelOnLine(station: number, shots: readonly Shot[]): number | undefined {
  const [first, second] = shots.filter(({ offset }) => offset === 0);
  if (first && second)
    throw invalid(
      `station ${plain(station)} m was shot twice on the line, ${plain(first.level)} and ${plain(second.level)} m; ` +
        "keep one, or give the other its offset",
    );
  if (first) return first.level;
  const nearest = (side: 1 | -1): Shot | undefined =>
    shots.filter(({ offset }) => offset * side > 0).sort((a, b) => Math.abs(a.offset) - Math.abs(b.offset))[0];
  const [left, right] = [nearest(-1), nearest(1)];
  if (!left || !right) return undefined;
  return left.level + ((right.level - left.level) * -left.offset) / (right.offset - left.offset);
}

/** Straight between what is known, level beyond it. */
function valueAt(known: readonly Known[], station: number): number {
  const next = firstFrom(known, station);
  const [before, after] = [known[next - 1], known[next]];
  if (!before) return after?.value ?? NaN;
  if (!after) return before.value;
  return before.value + ((after.value - before.value) * (station - before.station)) / (after.station - before.station);
}

/** Index of the first that lies at the station or behind it. */
function firstFrom(known: readonly Known[], station: number): number {
  let [low, high] = [0, known.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((known[middle]?.station ?? Infinity) < station) low = middle + 1;
    else high = middle;
  }
  return low;
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
