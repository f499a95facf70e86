import type { Job, SheetLayout } from "../../layout";

/** Laid flat, a stone is about two thirds as high as its mean size. Common practice, no source. */
const SIZE_PER_HEIGHT = 1.5;

export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Shares of the sizes add up",
    value: "=SUM(INDEX(StoneMix,0,2))",
    limit: 1,
    ok: "ABS(SUM(INDEX(StoneMix,0,2))-1)<=0.005",
    cure: "Change the shares until they make 100 %.",
    fix: "StoneMix",
    kind: "share",
    needs: ["StoneMix"],
  });
  s.check({
    label: "Heaviest stone for the machine",
    value: "=HeaviestStone",
    limit: '=IF(COUNT(MachineLift)=0,"not known",MachineLift)',
    ok: "HeaviestStone<=MAX(HandLimit,N(MachineLift))",
    cure: "Take smaller stones or a bigger machine.",
    cureNow:
      'IF(COUNT(MachineLift)=0,"Type on Earth what the machine lifts.","Take smaller stones or a bigger machine.")',
    fix: "MachineLift",
    kind: "weight",
    weight: "look",
    stopIf: "COUNT(MachineLift)=1",
    needs: ["HeaviestStone", "HandLimit"],
  });
  const small = job.pick({ US: 12, SI: 1000 });
  const tallest = `${SIZE_PER_HEIGHT}*${small}*MAX(Drops,BankHeight)`;
  s.check({
    label: "Biggest stone in drops and banks",
    value: "=MAX(INDEX(StoneMix,0,1))",
    limit: `=${tallest}`,
    ok: `MAX(INDEX(StoneMix,0,1))<=${tallest}`,
    cure: "Take smaller ones (common practice, no source).",
    fix: "StoneMix",
    kind: "size",
    weight: "look",
    needs: ["StoneMix", "Drops", "BankHeight"],
  });
  s.check({
    label: "Gravel over the basin's rim",
    value: "=CoverDepth",
    limit: "=RimBelowGrade",
    ok: `ABS(CoverDepth-RimBelowGrade)<=${job.pick({ US: 0.5, SI: 13 })}`,
    cure: "Fill it from the rim up to finished grade.",
    fix: "CoverDepth",
    kind: "size",
    weight: "look",
    needs: ["CoverDepth", "RimBelowGrade"],
  });
}
