import { STEEPEST_SLOPES } from "../../calc/tables/slopes";
import { DIGGING_CAUTION } from "../../functions/ground/arguments";
import { defineSheet, type Job, type SheetLayout } from "../layout";

/** What is dug, what the berm takes, and what leaves or comes by truck; bank, loose and compacted kept apart. */
export const ground = defineSheet({
  name: "Ground",
  order: 8,
  build(s, job) {
    s.print({ titleRows: [1, 2] });
    s.title("Ground", "Add room to work and the pipe trench; spoil, berm and truckloads follow.");
    s.caution(DIGGING_CAUTION);
    pit(s);
    trench(s, job);
    shelves(s, job);
    s.result({
      name: "DugVolume",
      label: "All that is dug (bank)",
      formula: "=PitVolume+TrenchVolume+ShelfVolume",
      kind: "earth",
      needs: ["PitVolume", "TrenchVolume", "ShelfVolume"],
      strong: true,
      note: "As it lies in the ground.",
    });
    berm(s);
    s.pageBreak();
    balance(s);
    slopes(s);
    checks(s, job);
    contribute(s, job);
  },
});

function pit(s: SheetLayout): void {
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

function trench(s: SheetLayout, job: Job): void {
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

function shelves(s: SheetLayout, job: Job): void {
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

function berm(s: SheetLayout): void {
  s.section("Berm under the spillway box");
  const side = (
    name: string,
    label: string,
    demo: { US: number; SI: number },
    max: { US: number; SI: number },
    message: string,
  ): void => {
    s.input({ name, label, kind: "length", demo, min: 0, max, message });
  };
  side("BermLength", "Length of the crest", { US: 5.5, SI: 1.5 }, { US: 300, SI: 90 }, "Length of the flat top.");
  side("BermWidth", "Width of the crest", { US: 3, SI: 0.8 }, { US: 100, SI: 30 }, "Width of the flat top.");
  side(
    "BermHeight",
    "Height",
    { US: 2.25, SI: 0.7 },
    { US: 20, SI: 6 },
    "Height of the berm over the ground it stands on.",
  );
  s.input({
    name: "BermSlope",
    label: "Slope of its sides",
    kind: "factor",
    unit: "to 1",
    usual: 2,
    min: 0.5,
    max: 6,
    message: "Horizontal run for each 1 of height; loose earth needs 1.5 and more.",
    format: "0.00",
  });
  s.input({
    name: "BermEnds",
    label: "Its ends",
    kind: "text",
    choices: ["sloped", "square"],
    usual: "sloped",
    message: "Sloped where the berm stands free, square where it runs into a bank or wall.",
  });
  s.result({
    name: "BermNeed",
    label: "Berm (compacted)",
    formula:
      `=IF(BermEnds="square",RILL.BERMVOLUME(BermLength,BermWidth,BermHeight,BermSlope,Units),` +
      `RILL.PITVOLUME(BermLength,BermWidth,BermHeight,BermSlope,Units))`,
    kind: "earth",
    needs: ["BermLength", "BermWidth", "BermHeight", "BermSlope"],
    strong: true,
    note: "With sloped ends it is a pit upside down.",
  });
  s.caution(
    "Build the berm in thin compacted layers; loose fill settles and tilts the lip. High berms and walls that hold back earth or water may need an engineer.",
  );
}

function balance(s: SheetLayout): void {
  s.section("Spoil or fill");
  const figure = (name: string, label: string, min: number, max: number, message: string): void => {
    s.input({ name, label, kind: "share", min, max, message, optional: true });
  };
  figure(
    "OwnSwell",
    "Your own swell, if known",
    0,
    1,
    "Share by which the soil grows when dug; blank takes the table's.",
  );
  figure(
    "OwnShrink",
    "Your own shrink, if known",
    -0.6,
    0.4,
    "Share by which it shrinks from bank to compacted; blank takes the table's.",
  );
  s.result({
    name: "SoilUsed",
    label: "Soil used",
    formula: `=IF(COUNT(OwnSwell,OwnShrink)=2,"swell "&OwnSwell&" shrink "&OwnShrink,SoilKind)`,
    kind: "text",
    note: "Own figures count when both are filled in.",
  });
  s.input({
    name: "SpoilTruck",
    label: "One truck takes, loose",
    kind: "earth",
    usual: { US: 10, SI: 6 },
    min: 0.5,
    max: { US: 40, SI: 30 },
    message: "Loose volume one truck takes; check its weight limit too.",
  });
  s.spill({
    name: "SoilTable",
    formula: "=RILL.SOILBALANCE(DugVolume,BermNeed,SoilUsed,SpoilTruck,Units)",
    rows: 4,
    header: "function",
    columns: [{ kind: "text" }, { kind: "earth" }, { kind: "earth" }, { kind: "earth" }, { kind: "count" }],
    needs: ["DugVolume", "BermNeed", "SpoilTruck"],
  });
  const read = (name: string, label: string, row: number, column: number, unit?: string): void => {
    s.result({
      name,
      label,
      formula: `=INDEX(SoilTable,${row},${column})`,
      kind: unit ? "count" : "earth",
      ...(unit ? { unit } : {}),
      needs: ["SoilTable"],
      strong: true,
    });
  };
  read("SpoilAway", "Spoil to take away (loose)", 3, 3);
  read("SpoilLoads", "Truckloads of spoil", 3, 5, "loads");
  read("FillNeed", "Fill to bring (loose)", 4, 3);
  read("FillLoads", "Truckloads of fill", 4, 5, "loads");
}

function slopes(s: SheetLayout): void {
  s.section("Steepest side of an open pit");
  s.note(
    "For pits less than 20 ft (6 m) deep in the United States, as a guide elsewhere; local rules decide. A competent person classes the soil on site.",
  );
  s.table({
    rows: STEEPEST_SLOPES.length,
    columns: [
      { key: "soil", title: "Soil", kind: "text", fixed: STEEPEST_SLOPES.map((row) => row.name) },
      {
        key: "slope",
        title: "Run per 1 of depth",
        kind: "factor",
        format: "0.00",
        fixed: STEEPEST_SLOPES.map((row) => row.slope),
      },
      { key: "source", title: "Source", kind: "text", fixed: STEEPEST_SLOPES.map((row) => row.source), across: 5 },
    ],
  });
}

function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Depth of the pit",
    value: "=PitDepth",
    limit: job.system === "US" ? "less than 5 ft" : "less than 1.5 m",
    ok: `PitDepth<${job.pick({ US: 5, SI: 1.5 })}`,
    cure: "Slope or shore the sides as local rules ask before anyone goes in (29 CFR 1926.652: from 5 ft), and set a ladder.",
    fix: "BasinWaterDepth",
    kind: "length",
    weight: "look",
    needs: ["PitDepth"],
  });
  s.check({
    label: "Slope of the berm",
    value: "=BermSlope",
    limit: "at least 1.5",
    ok: "BermSlope>=1.5",
    cure: "Flatten the sides, or hold them with stone: loose earth does not stand steeper (common practice, no source).",
    fix: "BermSlope",
    kind: "factor",
    weight: "look",
    needs: ["BermSlope"],
  });
  s.check({
    label: "Spoil is enough for the berm",
    value: "=FillNeed",
    limit: 0,
    ok: "FillNeed=0",
    cure: "Fill has to be brought: price it, lower the berm, or take the basin deeper.",
    fix: "BermHeight",
    kind: "earth",
    weight: "look",
    needs: ["FillNeed"],
  });
}

function contribute(s: SheetLayout, job: Job): void {
  const volume = job.pick({ US: "yd³", SI: "m³" });
  const supplier = job.pick({ US: "Larkspur Haulage (demo)", SI: "Fuhrbetrieb Eschweg (demo)" });
  const add = (
    code: string,
    description: string,
    unit: string,
    quantity: string,
    price: { US: number; SI: number },
    pack: number,
    cost: "material" | "haulage" = "material",
  ): void => {
    s.takeoff({ code, description, unit, quantity: `=${quantity}`, category: "Ground", needs: [quantity] });
    s.rate({ code, description, unit, category: "Ground", cost, supplier, price, pack, waste: 0 });
  };
  add("SPOIL", "Spoil taken away and tipped", "load", "SpoilLoads", { US: 210, SI: 145 }, 1, "haulage");
  add("FILL", "Fill brought for the berm", volume, "FillNeed", { US: 27, SI: 24 }, 0.5);
  add("BEDDING", "Bedding sand under the basin", volume, "BeddingVolume", { US: 41, SI: 36 }, 0.5);
}
