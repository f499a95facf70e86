import type { Job, SheetLayout } from "../../layout";

export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Pieces wider than every roll, no seam allowed",
    value: '=IF(COUNT(SeamLap)=1,0,COUNTIF(PieceFits,"needs a seam"))',
    limit: 0,
    cure: "Buy a wider roll, or allow a seam by giving its lap.",
    fix: "LinerRolls",
    kind: "count",
    needs: ["PieceLengths", "RollWidths"],
  });
  s.check({
    label: "Waste of the liner",
    source: "common practice, no source",
    value: "=LinerWasteShare",
    limit: 0.25,
    cure: "Look for another roll width, or join small skirts out of the rest (rule of thumb).",
    fix: "LinerRolls",
    kind: "share",
    weight: "look",
    needs: ["LinerWasteShare"],
  });
  s.check({
    label: "Fabric under the liner",
    value: "=FabricUnder",
    sign: "at least",
    limit: 1,
    cure: "Lay at least one layer of fabric under the liner (rule of thumb).",
    fix: "FabricUnder",
    kind: "count",
    over: "layers",
    weight: "look",
    needs: ["FabricUnder"],
  });
  s.check({
    label: "Thickness of the liner",
    source: "common practice, no source",
    value: "=LinerThickness",
    sign: "at least",
    limit: job.pick({ US: 45, SI: 1.1 }),
    cure: job.pick({
      US: "45 mil EPDM is the usual liner under stone (rule of thumb).",
      SI: "1.15 mm EPDM is the usual liner under stone (rule of thumb).",
    }),
    fix: "LinerThickness",
    kind: "number",
    unit: job.pick({ US: "mil", SI: "mm" }),
    weight: "look",
    needs: ["LinerThickness"],
  });
  s.check({
    label: "People to carry a piece",
    source: "common practice, no source",
    value: "=LinerCarriers",
    limit: 4,
    cure: "Plan for a machine or more people, or unroll the piece where it is used.",
    fix: "LinerPieces",
    kind: "count",
    over: "people",
    weight: "look",
    needs: ["LinerCarriers"],
  });
}
