import { STONE_MACHINE_CURES as CURES } from "../../../job/checks/stone";
import type { Job, SheetLayout } from "../../layout";
import { STONE_MACHINE_CHECK } from "../money/liftingMachine";

/** Laid flat, a stone is about two thirds as high as its mean size. Common practice, no source. */
const SIZE_PER_HEIGHT = 1.5;

export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Shares of the sizes add up",
    source: "by definition, to half a percent",
    value: "=SUM(INDEX(StoneMix,0,2))",
    limit: 1.005,
    least: 0.995,
    words: "99.5–100.5%",
    cure: "Change the shares until they make 100%.",
    fix: "StoneMix",
    kind: "share",
    needs: ["StoneMix"],
  });
  s.check({
    label: "Heaviest stone for the machine",
    ...STONE_MACHINE_CHECK,
    cure: CURES.none,
    cureNow: `IF(COUNT(MachineLift,MachineLifts)=0,"${CURES.noLift}",IF(StoneMachine="not known","${CURES.noWay}","${CURES.none}"))`,
    fix: "MachineLifts",
    kind: "weight",
    weight: "look",
    needs: ["HeaviestStone", "HandLimit"],
  });
  const small = job.per("size", "length");
  const tallest = `${SIZE_PER_HEIGHT}*${small}*MAX(Drops,BankHeight)`;
  s.check({
    label: "Biggest stone in drops and banks",
    source: "common practice, no source",
    value: "=MAX(INDEX(StoneMix,0,1))",
    limit: `=${tallest}`,
    cure: "Take smaller ones (rule of thumb).",
    fix: "StoneMix",
    kind: "size",
    weight: "look",
    needs: ["StoneMix", "Drops", "BankHeight"],
  });
  const near = job.pick({ US: { most: 0.5, words: "within ½ in" }, SI: { most: 13, words: "within 13 mm" } });
  s.check({
    label: "Gravel over the basin, to grade",
    source: "by definition: gravel ends at finished grade; to half an inch: common practice, no source",
    value: "=CoverDepth-RimBelowGrade",
    limit: near.most,
    least: -near.most,
    words: near.words,
    cure: "Fill it from the rim up to finished grade.",
    fix: "CoverDepth",
    kind: "size",
    weight: "look",
    needs: ["CoverDepth", "RimBelowGrade"],
  });
}
