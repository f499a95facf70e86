import type { Job, SheetLayout } from "../../layout";

export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Shares of the sizes add up",
    value: "=SUM(INDEX(StoneMix,0,2))",
    limit: 1,
    ok: "ABS(SUM(INDEX(StoneMix,0,2))-1)<=0.005",
    cure: "Change the shares under Boulders by size until they make 100 %.",
    fix: "StoneMix",
    kind: "share",
    needs: ["StoneMix"],
  });
  s.check({
    label: "Biggest stone by machine",
    value: "=MAX(INDEX(StoneSizes,0,4))",
    limit: job.system === "US" ? "at most 1,500 lb" : "at most 700 kg",
    ok: `MAX(INDEX(StoneSizes,0,4))<=${job.pick({ US: 1500, SI: 700 })}`,
    cure: "See that the machine lifts it at full reach, or choose smaller stones (common practice, no source).",
    fix: "StoneMix",
    kind: "weight",
    weight: "look",
    needs: ["BoulderTons"],
  });
  s.check({
    label: "A lip stone by hand",
    value: "=LipStoneWeight",
    limit: "=HandLimit",
    ok: "LipStoneWeight<=HandLimit",
    cure: "Set lip stones with a machine and rigging rated for the weight, or a crew and a stone cart.",
    fix: "LipStoneHeight",
    kind: "weight",
    weight: "look",
    needs: ["LipStoneWeight", "HandLimit"],
  });
}
