import { setOut, type SetOutPoint, type Target } from "../calc/levels/setOut";
import { invalid } from "../calc/problem";
import { toInside } from "../calc/quantity/measures";
import type { Basin } from "./basin";
import type { Job } from "./facts";
import type { Ground } from "./ground";
import type { Earth } from "./earth";
import { attempt, from, isKnown, known, derive, type Derived } from "./derived";
import { needed } from "./rows";
import { MOST_DROPS, type Water } from "./water";

/** Points to set out, and what is left to do at them. SI. */
export interface Levels {
  /** Level of the line of sight. */
  readonly instrument: Derived<number>;
  readonly points: readonly PointWanted[];
  readonly setOut: Derived<readonly SetOutPoint[]>;
  /** How many have a level; unknown while one of them has none. */
  readonly pointsTold: Derived<number>;
  /** The dug bed along the line, by station. */
  readonly stakes: readonly PointWanted[];
  readonly stakesOut: Derived<readonly SetOutPoint[]>;
}

/** A point with its row among the points to set out. */
export interface PointWanted {
  readonly row: number;
  readonly name: string | undefined;
  readonly level: number | undefined;
}

/** Nearness that counts as on grade where nobody says, m. Common practice, no source. */
const usualTolerance = { US: toInside("size", 0.25, "US"), SI: 0.006 } as const;

export function deriveLevels(
  job: Job,
  {
    water,
    basin,
    earth,
    ground,
  }: { readonly water: Water; readonly basin: Basin; readonly earth: Earth; readonly ground: Ground },
): Levels {
  const points = pointsOf(job, water, basin, earth);
  const stakes = stakesOf(ground);
  const staked = (wanted: readonly PointWanted[], readings: Job["readings"]): Derived<SetOutPoint[]> =>
    wanted.some(({ level }) => level !== undefined)
      ? derive([job.benchmarkLevel, job.backsight], (benchmark, backsight) =>
          setOut(
            benchmark,
            backsight,
            targets(wanted, readings),
            job.gradeTolerance ?? usualTolerance[job.system],
            job.backsightMoved,
          ),
        )
      : undefined;
  const outOf = staked(points, job.readings);
  const all = points.every(({ name, level }) => name === undefined || level !== undefined);
  return {
    instrument: derive(
      [job.benchmarkLevel, job.backsightMoved ?? job.backsight],
      (benchmark, sight) => benchmark + sight,
    ),
    points,
    setOut: outOf,
    pointsTold: from(outOf, (told) => (all ? told.length : undefined)),
    stakes,
    stakesOut: staked(stakes, job.stakeReadings),
  };
}

function targets(points: readonly PointWanted[], readings: Job["readings"]): Target[] {
  const wanted = points.filter(({ name, level }) => name !== undefined || (level !== undefined && level !== 0));
  const rows = new Set(wanted.map(({ row }) => row));
  readings.forEach(({ reading, after }, index) => {
    if ((reading ?? after) !== undefined && !rows.has(index + 1)) {
      throw invalid(`readings row ${index + 1} has no point beside it; name the point and its level`);
    }
  });
  return wanted.flatMap(({ name, level, row }) => {
    const target = { name: needed(name, "points", row, "name"), ...readings[row - 1] };
    return level === undefined ? [] : [{ ...target, level }];
  });
}

/** The dug bed where it begins below each drop, and at the basin's edge. */
function stakesOf({ surface }: Ground): PointWanted[] {
  return surface.stations.slice(1).map((at, index, all) => ({
    row: index + 1,
    name: at && (index === all.length - 1 ? "Edge of the basin" : `Bed below drop ${index + 1}`),
    level: at?.design,
  }));
}

function pointsOf(job: Job, water: Water, basin: Basin, earth: Earth): PointWanted[] {
  const fixed: readonly (readonly [string, Derived<number>])[] = [
    ["Pit bottom", derive([job.gradeLevel, earth.pitDepth], (grade, depth) => grade - depth)],
    ["Basin floor", basin.floorLevel],
    ["Running level, top-up mark", basin.runningLevel],
    ["Basin rim and overflow", basin.fullLevel],
    ["Finished grade at the basin", job.gradeLevel],
    ["Berm top, foot of the box", derive([water.topLipLevel, job.boxHeight], (top, box) => top - box)],
  ];
  const top = known(water.topLipLevel);
  let fallen = 0;
  const lips = Array.from({ length: MOST_DROPS }, (_, index) => {
    const drop = water.drops[index];
    const level = drop === undefined || top === undefined ? undefined : top - fallen;
    fallen += drop ?? 0;
    return { name: drop === undefined ? undefined : `Lip ${index + 1}`, level };
  });
  const own = Array.from({ length: 3 }, (_, index) => ({ ...(job.ownPoints[index] ?? {}) }));
  return [...fixed.map(([name, level]) => ({ name, level: known(level) })), ...lips, ...own].map(
    ({ name, level }, index) => ({ row: index + 1, name, level }),
  );
}

/** The points that the rod cannot be read on, that are to be cut, and that are to be filled. */
export function pointsToMend(levels: Levels): Derived<{ hidden: number; cut: number; fill: number }> {
  return attempt(() => {
    const points = [levels.setOut, levels.stakesOut].flatMap((all) => (isKnown(all) ? all : []));
    const count = (of: (point: SetOutPoint) => boolean): number => points.filter(of).length;
    return {
      hidden: count(({ rod, todo }) => rod < 0 && todo === ""),
      cut: count(({ todo }) => todo === "cut"),
      fill: count(({ todo }) => todo === "fill"),
    };
  });
}
