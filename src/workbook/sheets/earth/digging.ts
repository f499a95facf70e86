import type { Job, SheetLayout } from "../../layout";

/** The machine, which must come in before it can dig. */
export function machine(s: SheetLayout): void {
  s.section("Machine");
  s.input({
    name: "MachineWidth",
    label: "Widest machine that must pass",
    kind: "length",
    demo: { US: 5.6, SI: 1.75 },
    min: { US: 1, SI: 0.3 },
    max: { US: 20, SI: 6 },
    message: "Width over tracks, wheels or bucket, whichever is widest; blank where all is done by hand.",
    optional: true,
  });
  s.input({
    name: "MachineLift",
    label: "It lifts at full reach",
    kind: "weight",
    demo: { US: 900, SI: 400 },
    min: { US: 20, SI: 10 },
    max: { US: 60_000, SI: 27_000 },
    message:
      "What the machine that sets the stones lifts at the reach they need, from its maker's chart; blank while unknown.",
    optional: true,
    note: "From the maker's chart, at full reach over the side; rigging counts as load.",
  });
  s.input({
    name: "SetReach",
    label: "Farthest stone from the middle of the machine",
    kind: "length",
    min: { US: 1, SI: 0.3 },
    max: { US: 60, SI: 20 },
    message: "From where the machine can stand to where the farthest heavy stone is set; blank while not measured.",
    optional: true,
    note: "A lift on Rates counts at the reach of its load chart and nearer, never farther out.",
  });
}

/** The basin pit, with room to work and bedding. */
export function pit(s: SheetLayout): void {
  s.section("Basin pit");
  s.input({
    name: "PitMargin",
    label: "Room to work on each side",
    kind: "length",
    min: 0,
    max: { US: 10, SI: 3 },
    message: "How much wider than the basin the pit is on each side; 0 where a liner lies against the cut wall.",
    note: {
      US: "A liner lies against the cut wall: 0, stone goes inside. A tub or wrapped modules need 0.5 ft to tamp fill round them.",
      SI: "A liner lies against the cut wall: 0, stone goes inside. A tub or wrapped modules need 0.15 m to tamp fill round them.",
    },
  });
  s.input({
    name: "BeddingDepth",
    label: "Bedding under the basin",
    kind: "size",
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
  const bottom = (name: string, label: string, side: string): void => {
    s.result({
      name,
      label,
      source: "by definition: room on both sides",
      formula: `=${side}+2*PitMargin`,
      kind: "length",
      needs: [side, "PitMargin"],
    });
  };
  bottom("PitLength", "Length of the pit's bottom", "BasinLength");
  bottom("PitWidth", "Width of the pit's bottom", "BasinWidth");
  s.result({
    name: "PitVolume",
    label: "Basin pit (bank)",
    formula: "=RILL.PITVOLUME(PitLength,PitWidth,PitDepth,BasinSideSlope,Units)",
    kind: "earth",
    needs: ["PitLength", "PitWidth", "PitDepth"],
  });
  s.result({
    name: "BeddingVolume",
    label: "Bedding (loose)",
    source: "by definition: length × width × depth",
    formula: s.job.pick({
      US: "=PitLength*PitWidth*BeddingDepth/324",
      SI: "=PitLength*PitWidth*BeddingDepth/1000",
    }),
    kind: "earth",
    needs: ["PitLength", "PitWidth", "BeddingDepth"],
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
    min: 0,
    max: { US: 10, SI: 3 },
    message: "Width of the trench.",
  });
  s.input({
    name: "TrenchDepth",
    label: "Depth",
    kind: "length",
    min: 0,
    max: { US: 8, SI: 2.4 },
    message: "Depth of the trench; below the frost where the pipe stays full.",
    note: "Electrical rules ask for their own depth of cover.",
  });
  s.result({
    name: "TrenchVolume",
    label: "Pipe trench (bank)",
    source: "by definition: length × width × depth",
    formula: `=TrenchLength*TrenchWidth*TrenchDepth/${job.per("length", "earth", 3)}`,
    kind: "earth",
    needs: ["TrenchLength", "TrenchWidth", "TrenchDepth"],
    note: "Upright sides.",
  });
}

/** What is dug along the bed of the fall. */
export function shelves(s: SheetLayout): void {
  s.section("Bed and shelves of the fall");
  s.input({
    name: "ShelfDepth",
    label: "Dug below the finished bed",
    kind: "length",
    min: 0,
    max: { US: 6, SI: 2 },
    message: "Mean depth dug along the bed for liner, gravel and stones.",
  });
  s.input({
    name: "ShelfMargin",
    label: "Wider than the bed on each side",
    kind: "length",
    min: 0,
    max: { US: 10, SI: 3 },
    message: "Room for the banks on each side of the bed.",
  });
  s.result({
    name: "ShelfVolume",
    label: "Bed and shelves (bank)",
    formula: "=LineCut",
    kind: "earth",
    needs: ["LineCut"],
    note: "Cut along the line, by station on Ground.",
  });
}

/** What is dug only to be filled again: the room round the basin, and the trench over its pipe. */
export function backfill(s: SheetLayout, job: Job): void {
  const { inches, perVolume } = job.pick({ US: { inches: 12, perVolume: 27 }, SI: { inches: 1000, perVolume: 1 } });
  const depth = `(PitDepth-BeddingDepth/${inches})`;
  // The basin is a pit with sloped walls too: written out here, because PITVOLUME feeds Price over two functions already.
  const basin =
    `(BasinLength*BasinWidth*${depth}+BasinSideSlope*${depth}^2*(BasinLength+BasinWidth)` +
    `+4/3*BasinSideSlope^2*${depth}^3)/${perVolume}`;
  s.result({
    name: "BackfillVolume",
    label: "Of it filled in again (compacted)",
    source: "by definition: the pit less the bedding and the basin, a frustum with sloped sides; and the trench",
    formula: `=PitVolume-BeddingVolume-${basin}+TrenchVolume`,
    kind: "earth",
    needs: ["PitVolume", "BeddingVolume", "TrenchVolume"],
    note: "The room around the basin, and the trench. The berm does not get it.",
  });
}
