import type { Job, SheetLayout } from "../../layout";

export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Pieces wider than every roll",
    value: '=COUNTIF(PieceFits,"needs a seam")',
    limit: "none without a seam",
    ok: 'OR(COUNT(SeamLap)=1,COUNTIF(PieceFits,"needs a seam")=0)',
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
    ok: "LinerWasteShare<=0.25",
    cure: "Look for another roll width, or join small skirts out of the rest (rule of thumb).",
    fix: "LinerRolls",
    kind: "share",
    weight: "look",
    needs: ["LinerWasteShare"],
  });
  s.check({
    label: "Fabric under the liner",
    value: "=FabricUnder",
    limit: "at least 1",
    ok: "FabricUnder>=1",
    cure: "Lay at least one layer of fabric under the liner (rule of thumb).",
    fix: "FabricUnder",
    kind: "count",
    weight: "look",
    needs: ["FabricUnder"],
  });
  s.check({
    label: "Thickness of the liner",
    source: "common practice, no source",
    value: "=LinerThickness",
    limit: job.pick({ US: "at least 45 mil", SI: "at least 1.1 mm" }),
    ok: `LinerThickness>=${job.pick({ US: 45, SI: 1.1 })}`,
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
    limit: "at most 4",
    ok: "LinerCarriers<=4",
    cure: "Plan for a machine or more people, or unroll the piece where it is used.",
    fix: "LinerPieces",
    kind: "count",
    weight: "look",
    needs: ["LinerCarriers"],
  });
}
