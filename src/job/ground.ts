import { invalid } from "../calc/problem";
import { roundUpTo } from "../calc/liner/roundUp";
import { closedRun, type ClosedRun } from "../calc/ground/closedRun";
import { cutFill, type StationVolume } from "../calc/ground/cutFill";
import { groundLine, type Shot } from "../calc/ground/groundLine";
import { linerRun } from "../calc/ground/linerRun";
import { overGround } from "../calc/ground/overGround";
import { shotFaults, type FaultyShot, type ShotRow } from "../calc/ground/shotFaults";
import type { Job, JobRow } from "./facts";
import { from, isKnown, known, derive, type Derived } from "./derived";
import { surfaceOf, type Surface } from "./surface";
import type { Water } from "./water";

/** The ground as it was shot, and what is cut and filled along the line. SI: m, m³; cut is bank, fill compacted. */
export interface Ground {
  /** Level of the point that the first backsight was taken on. */
  readonly startLevel: Derived<number>;
  readonly run: Derived<ClosedRun>;
  /** Level of each row of the book; undefined where it has none. */
  readonly levels: readonly (number | undefined)[];
  readonly faults: readonly (FaultyShot | undefined)[];
  /** Shots that say how the ground lies on the line. */
  readonly shotsOnLine: Derived<number>;
  readonly surface: Surface;
  readonly cutFill: Derived<readonly StationVolume[]>;
  readonly atLip: Derived<number>;
  readonly cut: Derived<number>;
  readonly fill: Derived<number>;
  /** As it lay. */
  readonly topsoil: Derived<number>;
  readonly linerLength: Derived<number>;
  readonly linerWidth: Derived<number>;
}

export function deriveGround(job: Job, water: Water): Ground {
  const startLevel = derive(
    [job.benchmarkLevel, job.gradeLevel, job.rimBelowGrade] as const,
    (benchmark, grade, rim) => {
      if (job.shotStart === undefined) throw invalid("say on what the first backsight was taken");
      return { benchmark, "finished grade": grade, "rim of the basin": grade - rim }[job.shotStart];
    },
  );
  const book = job.shots.map((shot, index) => ({ row: index, ...rodRow(shot) })).filter(isBooked);
  const hasReadings = book.some(({ backsight, intermediate, foresight }) =>
    [backsight, intermediate, foresight].some((reading) => reading !== undefined),
  );
  const run = hasReadings
    ? derive([startLevel], (start) =>
        closedRun(start, book, {
          known: job.shotEndLevel,
          distance: job.shotDistance,
          limit: job.shotLimit ?? "construction",
        }),
      )
    : undefined;
  const levels: (number | undefined)[] = job.shots.map(() => undefined);
  if (isKnown(run))
    book.forEach(({ row }, index) => (levels[row] = run.corrected?.[index] ?? run.points[index]?.level));
  const placed = job.shots.flatMap(({ station, offset = 0 }, index): Shot[] => {
    const level = levels[index];
    return station === undefined || level === undefined ? [] : [{ station, offset, level }];
  });
  const shotsOnLine: Derived<number> =
    run === undefined ? 0 : from(run, () => placed.filter(({ offset }) => offset === 0).length);
  const surface = surfaceOf(job, water);
  const volumes = volumesOf(job, surface, shotsOnLine, placed);
  const last = derive([volumes], (rows) => rows.at(-1));
  const liner = linerOf(job, surface, water);
  return {
    startLevel,
    run,
    levels,
    faults: shotFaults(job.shots.map(shotRow)),
    shotsOnLine,
    surface,
    cutFill: volumes,
    atLip: derive([volumes], (rows) => rows.find(({ station }) => station === 0)?.ground ?? NaN),
    cut: derive([last], ({ soFar }) => soFar.cut),
    fill: derive([last], ({ soFar }) => soFar.fill),
    topsoil: derive([last], ({ topsoilSoFar }) => topsoilSoFar),
    ...liner,
  };
}

type ShotFact = JobRow<"shots">;

/** A reading of 0 is a cell that was left blank: the rod's foot is never on the line of sight. */
function rodRow({ point = "", backsight, intermediate, foresight }: ShotFact): ShotRow {
  const read = (value: number | undefined): number | undefined => (value === 0 ? undefined : value);
  return { point, backsight: read(backsight), intermediate: read(intermediate), foresight: read(foresight) };
}

function shotRow(shot: ShotFact): ShotRow {
  const { point = "", backsight, intermediate, foresight, station, offset } = shot;
  return { point, backsight, intermediate, foresight, station, offset };
}

function isBooked({ point, backsight, intermediate, foresight }: ShotRow): boolean {
  return point !== "" || [backsight, intermediate, foresight].some((reading) => reading !== undefined);
}

/** Over the ground that was shot; while it was not, straight from the level under the box down to finished grade. */
function volumesOf(
  job: Job,
  { stations }: Surface,
  shotsOnLine: Derived<number>,
  placed: readonly Shot[],
): Derived<readonly StationVolume[]> {
  const { bermGround, gradeLevel, bedWidth, shelfMargin } = job;
  const surface = stations.filter(isKnown);
  // The edge of the basin alone is no line.
  if (surface.length < 2 || bedWidth === undefined || shelfMargin === undefined) return undefined;
  if (!isKnown(shotsOnLine)) return shotsOnLine;
  const end = surface.at(-1)?.station ?? 0;
  const shots =
    shotsOnLine >= 2
      ? placed
      : bermGround === undefined || gradeLevel === undefined
        ? undefined
        : [
            { station: 0, offset: 0, level: bermGround },
            { station: end, offset: 0, level: gradeLevel },
          ];
  return derive([shots], (known) =>
    cutFill(
      overGround(surface, groundLine(known)),
      { cut: job.cutSlope ?? 1, fill: job.bermSlope ?? 2 },
      job.volumeMethod ?? "prismoidal",
      { topsoil: job.topsoilDepth ?? 0, firstEnd: job.bermEnds ?? "square" },
    ),
  );
}

function linerOf(job: Job, { liner }: Surface, { drops }: Water): Pick<Ground, "linerLength" | "linerWidth"> {
  const run =
    liner.length === 0 ? undefined : derive([job.linerOverlap], (edge) => linerRun(liner, { edge, slack: 0 }));
  const falls = drops.filter((drop) => (drop ?? 0) > 0).length;
  return {
    linerLength: derive(
      [run, job.linerOverlap, job.slackPerDrop, job.cutRounding],
      (reaches, overlap, slack, rounding) =>
        roundUpTo((reaches.at(-1)?.along ?? NaN) + 2 * overlap + slack * falls, rounding),
    ),
    linerWidth: derive([run, job.cutRounding], (reaches, rounding) =>
      roundUpTo(Math.max(...reaches.map(({ across }) => across)), rounding),
    ),
  };
}

/** Whether the ground was shot, or what was typed for it cannot be read: the assumption no longer stands. */
export function wasShot({ shotsOnLine }: Ground): boolean {
  return (known(shotsOnLine) ?? 2) >= 2;
}
