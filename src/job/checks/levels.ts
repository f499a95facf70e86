import { farthestApart } from "../facts/site";
import { fromSi, toSi } from "../facts/units";
import type { Topics } from "../topics";
import type { Job } from "../facts";
import { pointsToMend } from "../levels";
import { isKnown, known } from "../derived";
import { atMost, checksOn, there, type Check } from "./check";

export function levelsChecks(job: Job, { water, ground, levels }: Topics): Check[] {
  const check = checksOn("Levels");
  const { system, gradeLevel } = job;
  const toMend = known(pointsToMend(levels)) ?? { hidden: 0, cut: 0, fill: 0 };
  const off = toMend.cut + toMend.fill;
  const landing = (): number => there(water.topLipLevel) - there(water.dropTotal) - there(gradeLevel);
  const others = [job.benchmarkLevel, job.bermGround, ...ground.levels].filter(isKnown);
  const all = [gradeLevel, ...others].filter(isKnown);
  const apart = (): number => Math.max(0, Math.max(...all) - Math.min(...all) - (job.fallTyped ?? 0));
  const farthest = toSi("length", farthestApart(system), system);
  const said = (level: number): string => fromSi("length", level, system).toFixed(2);
  return [
    check({
      label: "Points above the line of sight",
      needs: [levels.pointsTold],
      value: () => toMend.hidden,
      limit: () => 0,
      ok: () => toMend.hidden === 0,
      cure: "Set the instrument up higher and change the backsight, or set these points from the string.",
      place: "Backsight",
      kind: "count",
      weight: "look",
    }),
    check({
      label: "Points off grade",
      needs: [
        levels.pointsTold,
        [...job.readings, ...job.stakeReadings].find(({ reading, after }) => (reading ?? after) !== undefined),
      ],
      value: () => off,
      limit: () => 0,
      ok: () => off === 0,
      cure: "Cut or fill as the last column says, then read again.",
      place: "SetoutReadings",
      kind: "count",
      weight: "look",
    }),
    check({
      label: "The last drop lands at the basin's grade",
      needs: [water.topLipLevel, water.drops.find(isKnown), gradeLevel],
      value: landing,
      limit: { US: "±0.25 ft", SI: "±0.08 m" }[system],
      ok: () => atMost(Math.abs(landing()), toSi("length", { US: 0.25, SI: 0.08 }[system], system)),
      cure: "Drops, top lip and finished grade do not agree: change the drops on Water, or the levels on Site.",
      place: "Drops",
      kind: "length",
    }),
    check({
      label: "Levels apart, beyond the fall",
      needs: [gradeLevel],
      value: apart,
      limit: () => farthest,
      ok: () => atMost(apart(), farthest),
      cure:
        gradeLevel === undefined || others.length === 0 || atMost(apart(), farthest)
          ? "Correct the level that is mistyped, or shot from another benchmark."
          : `Finished grade ${said(gradeLevel)}; benchmark, berm and shots ${said(Math.min(...others))} to ${said(Math.max(...others))}: one is mistyped.`,
      place: "GradeLevel",
      kind: "length",
    }),
  ];
}
