import { farthestApart } from "../../../job/facts/site";
import type { Job, SheetLayout } from "../../layout";

export function checks(s: SheetLayout, job: Job): void {
  const todo = (word: string): string =>
    `COUNTIF(INDEX(SetoutTable,0,8),"${word}*")+COUNTIF(INDEX(StakeTable,0,8),"${word}*")`;
  s.check({
    label: "Points above the line of sight",
    value: `=${todo("above")}`,
    limit: 0,
    cure: "Set the instrument up higher and change the backsight, or set these points from the string.",
    fix: "Backsight",
    kind: "count",
    weight: "look",
    needs: ["PointsTold"],
  });
  s.check({
    label: "Points off grade",
    value: `=${todo("cut")}+${todo("fill")}`,
    limit: 0,
    cure: "Cut or fill as the last column says, then read again.",
    fix: "SetoutReadings",
    kind: "count",
    weight: "look",
    needs: ["PointsTold", "ReadingsTaken"],
  });
  const near = job.pick({ US: 0.25, SI: 0.08 });
  s.check({
    label: "The last drop lands at the basin's grade",
    source: "common practice, no source",
    value: "=TopLipLevel-SUM(Drops)-GradeLevel",
    limit: near,
    least: -near,
    words: job.pick({ US: "±0.25 ft", SI: "±0.08 m" }),
    cure: "Drops, top lip and finished grade do not agree: change the drops on Water, or the levels on Site.",
    fix: "Drops",
    kind: "length",
    needs: ["TopLipLevel", "Drops", "GradeLevel"],
  });
  const others = "BenchmarkLevel,BermGround,ShotLevels";
  s.check({
    label: "Levels apart, beyond the fall",
    source: "by definition: the highest level less the lowest and the fall",
    value: `=MAX(0,MAX(GradeLevel,${others})-MIN(GradeLevel,${others})-N(FallTyped))`,
    limit: farthestApart(job.system),
    cure: "Correct the level that is mistyped, or shot from another benchmark.",
    cureNow: `"Finished grade "&FIXED(GradeLevel,2)&"; benchmark, berm and shots "&FIXED(MIN(${others}),2)&" to "&FIXED(MAX(${others}),2)&": one is mistyped."`,
    fix: "GradeLevel",
    kind: "length",
    needs: ["GradeLevel"],
  });
}
