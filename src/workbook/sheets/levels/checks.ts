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
}
