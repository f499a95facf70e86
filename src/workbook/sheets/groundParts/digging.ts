import type { Job, SheetLayout } from "../../layout";

/** The basin pit, with room to work and bedding. */
export function pit(s: SheetLayout): void {
  s.section("Basin pit");
  s.input({
    name: "PitMargin",
    label: "Room to work on each side",
    kind: "length",
    usual: { US: 0.5, SI: 0.15 },
    min: 0,
    max: { US: 10, SI: 3 },
    message: "How much wider than the basin the pit is on each side.",
  });
  s.input({
    name: "BeddingDepth",
    label: "Bedding under the basin",
    kind: "size",
    usual: { US: 2, SI: 50 },
    min: 0,
    max: { US: 24, SI: 600 },
    message: "Depth of sand or fabric bedding under the liner.",
  });
  s.result({
    name: "PitDepth",
    label: "Depth of the pit below finished grade",
    formula: s.job.pick({
      US: "=BasinWaterDepth+(RimBelowGrade+BeddingDepth)/12",
      SI: "=BasinWaterDepth+(RimBelowGrade+BeddingDepth)/1000",
    }),
    kind: "length",
    needs: ["BasinWaterDepth", "RimBelowGrade", "BeddingDepth"],
    strong: true,
  });
  s.result({
    name: "PitVolume",
    label: "Basin pit (bank)",
    formula: "=RILL.PITVOLUME(BasinLength+2*PitMargin,BasinWidth+2*PitMargin,PitDepth,BasinSideSlope,Units)",
    kind: "earth",
    needs: ["BasinLength", "BasinWidth", "PitDepth", "PitMargin"],
  });
  s.result({
    name: "BeddingVolume",
    label: "Bedding (loose)",
    formula: s.job.pick({
      US: "=(BasinLength+2*PitMargin)*(BasinWidth+2*PitMargin)*BeddingDepth/324",
      SI: "=(BasinLength+2*PitMargin)*(BasinWidth+2*PitMargin)*BeddingDepth/1000",
    }),
    kind: "earth",
    needs: ["BasinLength", "BasinWidth", "BeddingDepth", "PitMargin"],
  });
}

/** The trench for pipe and cable. */
export function trench(s: SheetLayout, job: Job): void {
  s.section("Pipe trench");
  s.input({
    name: "TrenchLength",
    label: "Length",
    kind: "length",
    demo: { US: 17, SI: 5.5 },
    min: 0,
    max: { US: 3000, SI: 900 },
    message: "Length of the trench for pipe and cable.",
  });
  s.input({
    name: "TrenchWidth",
    label: "Width",
    kind: "length",
    usual: { US: 0.75, SI: 0.25 },
    min: 0,
    max: { US: 10, SI: 3 },
    message: "Width of the trench.",
  });
  s.input({
    name: "TrenchDepth",
    label: "Depth",
    kind: "length",
    usual: { US: 1.5, SI: 0.45 },
    min: 0,
    max: { US: 8, SI: 2.4 },
    message: "Depth of the trench; below the frost where the pipe stays full.",
    note: "Electrical rules ask for their own depth of cover.",
  });
  s.result({
    name: "TrenchVolume",
    label: "Pipe trench (bank)",
    formula: `=TrenchLength*TrenchWidth*TrenchDepth/${job.pick({ US: 27, SI: 1 })}`,
    kind: "earth",
    needs: ["TrenchLength", "TrenchWidth", "TrenchDepth"],
    note: "Upright sides. Much of it goes back in; it stays on the safe side here.",
  });
}

/** What is dug along the bed of the fall. */
export function shelves(s: SheetLayout, job: Job): void {
  s.section("Bed and shelves of the fall");
  s.input({
    name: "ShelfDepth",
    label: "Dug below the finished bed",
    kind: "length",
    usual: { US: 0.5, SI: 0.15 },
    min: 0,
    max: { US: 6, SI: 2 },
    message: "Mean depth dug along the bed for liner, gravel and stones.",
  });
  s.input({
    name: "ShelfMargin",
    label: "Wider than the bed on each side",
    kind: "length",
    usual: { US: 1, SI: 0.3 },
    min: 0,
    max: { US: 10, SI: 3 },
    message: "Room for the banks on each side of the bed.",
  });
  s.result({
    name: "ShelfVolume",
    label: "Bed and shelves (bank)",
    formula: `=SUM(Treads)*(BedWidth+2*ShelfMargin)*ShelfDepth/${job.pick({ US: 27, SI: 1 })}`,
    kind: "earth",
    needs: ["Treads", "BedWidth", "ShelfDepth", "ShelfMargin"],
  });
}
