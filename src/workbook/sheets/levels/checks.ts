import type { Job, SheetLayout } from "../../layout";

export function checks(s: SheetLayout, job: Job): void {
  const todo = (word: string): string =>
    `COUNTIF(INDEX(SetoutTable,0,8),"${word}*")+COUNTIF(INDEX(StakeTable,0,8),"${word}*")`;
  s.check({
    label: "Points above the line of sight",
    value: `=${todo("above")}`,
    limit: 0,
    ok: `${todo("above")}=0`,
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
    ok: `${todo("cut")}+${todo("fill")}=0`,
    cure: "Cut or fill as the last column says, then read again.",
    fix: "SetoutReadings",
    kind: "count",
    weight: "look",
    needs: ["PointsTold", "ReadingsTaken"],
  });
  const landing = "TopLipLevel-SUM(Drops)-GradeLevel";
  s.check({
    label: "The last drop lands at the basin's grade",
    source: "common practice, no source",
    value: `=${landing}`,
    limit: job.system === "US" ? "within 0.25 ft" : "within 0.08 m",
    ok: `ABS(${landing})<=${job.pick({ US: 0.25, SI: 0.08 })}`,
    cure: "Drops, top lip and finished grade do not agree: change the drops on Water, or the levels on Site.",
    fix: "Drops",
    kind: "length",
    needs: ["TopLipLevel", "Drops", "GradeLevel"],
  });
}
