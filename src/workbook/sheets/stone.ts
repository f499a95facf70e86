import { BOULDER_SHAPE_NAMES } from "../../calc/stone/boulder";
import { densityNames } from "../../calc/stone/density";
import { fromInside } from "../../calc/quantity/measures";
import type { DensityRow } from "../../calc/tables/densities";
import { ROCKS } from "../../calc/tables/rocks";
import { STONES } from "../../calc/tables/stones";
import { LIFTING_CAUTION } from "../../functions/stone/arguments";
import { defineSheet, type Job, type RateLine, type SheetLayout } from "../layout";

const MOST_DROPS = 12;
const MIX_ROWS = 5;

/** Boulders by drop and bank, lip stones, sizes, gravel, and how it all comes by truck. */
export const stone = defineSheet({
  name: "Stone",
  order: 7,
  build(s, job) {
    s.widths([33, 12, 10, 12, 12, 24, 9, 9]);
    s.title("Stone", "Say how thick faces and layers are; tons, counts and truckloads follow from drops and basin.");
    s.print({ titleRows: [1, 2] });
    kinds(s);
    drops(s);
    banks(s);
    lipStones(s);
    s.pageBreak();
    sizes(s);
    gravel(s);
    order(s, job);
    s.pageBreak();
    densities(s, job);
    checks(s, job);
    contribute(s, job);
  },
});

function kinds(s: SheetLayout): void {
  s.section("What the stone weighs");
  s.input({
    name: "RockFigure",
    label: "Your quarry's figure for the rock",
    kind: "text",
    message: 'A figure with its unit, such as "165 lb/ft3" or "2.65 t/m3"; blank takes the table below.',
    optional: true,
  });
  s.result({ name: "RockUsed", label: "Rock used", formula: `=IF(RockFigure="",RockKind,RockFigure)`, kind: "text" });
  s.input({
    name: "GravelFigure",
    label: "Your quarry's figure for the gravel",
    kind: "text",
    message: 'A figure with its unit, such as "1.35 ton/yd3" or "1.45 t/m3"; blank takes the table below.',
    optional: true,
  });
  s.result({
    name: "GravelUsed",
    label: "Gravel used",
    formula: `=IF(GravelFigure="",GravelKind,GravelFigure)`,
    kind: "text",
  });
  s.input({
    name: "StoneWaste",
    label: "Added for waste",
    kind: "share",
    usual: 0.08,
    min: 0,
    max: 0.5,
    message: "Share added to every ton of stone for breakage, spill and settling.",
    note: "Counted here, once; Takeoff adds no more to stone.",
  });
}

function drops(s: SheetLayout): void {
  s.section("Boulders of the drops");
  s.input({
    name: "DropReach",
    label: "How far the stones reach back",
    kind: "size",
    usual: { US: 14, SI: 350 },
    min: { US: 1, SI: 25 },
    max: { US: 72, SI: 1800 },
    message: "Thickness of the stone face of a drop.",
  });
  s.input({
    name: "SolidShare",
    label: "Stone in the face, gaps taken off",
    kind: "share",
    usual: 0.65,
    min: 0.3,
    max: 1,
    message: "Share of the face that is stone.",
    note: "Loosely laid 60 to 65 %, tightly fitted up to 80 %.",
  });
  const table = s.table({
    name: "DropStone",
    rows: MOST_DROPS,
    columns: [
      { key: "name", title: "Drop", kind: "text", formula: `=IF(ISNUMBER([height]),"Drop "&[#],"")` },
      {
        key: "height",
        title: "Height",
        kind: "length",
        formula: `=IF(ISNUMBER(INDEX(Drops,[#])),INDEX(Drops,[#]),"")`,
      },
      {
        key: "width",
        title: "Width",
        kind: "length",
        formula: `=IF(ISNUMBER([height]),BedWidth,"")`,
        input: {
          min: 0,
          max: { US: 100, SI: 30 },
          message: "Width of the face; type over it where a drop is wider than the bed.",
        },
      },
      {
        key: "area",
        title: "Face",
        kind: "area",
        format: "#,##0.00",
        formula: `=IF(ISNUMBER([height]),[height]*[width],"")`,
      },
      {
        key: "tons",
        title: "Boulders",
        kind: "load",
        formula: `=IF(AND(ISNUMBER([area]),ISNUMBER(DropTons)),DropTons*[area]/SUM([area:all]),"")`,
      },
    ],
  });
  const [heights, areas] = [table.column("height"), table.column("area")];
  s.result({
    name: "DropTons",
    label: "Boulders of all drops, waste included",
    formula: `=RILL.BOULDERTONS(SUM(${areas})/SUM(${heights}),SUM(${heights}),DropReach,RockUsed,SolidShare,StoneWaste,Units)`,
    kind: "load",
    needs: [`${areas}`, "DropReach", "SolidShare"],
  });
}

function banks(s: SheetLayout): void {
  s.section("Boulders of the banks");
  s.input({
    name: "BankReach",
    label: "How far the stones reach back",
    kind: "size",
    usual: { US: 10, SI: 250 },
    min: { US: 1, SI: 25 },
    max: { US: 72, SI: 1800 },
    message: "Thickness of the stone edge of a bank.",
  });
  const table = s.table({
    name: "BankStone",
    rows: 2,
    columns: [
      { key: "name", title: "Bank", kind: "text", fixed: ["Left, looking downstream", "Right"] },
      {
        key: "length",
        title: "Length",
        kind: "length",
        formula: `=IF(COUNT(Run,Fall)=2,Run+Fall,"")`,
        input: {
          min: 0,
          max: { US: 1000, SI: 300 },
          message: "Length of the bank along its steps; run and fall together unless you type over it.",
        },
      },
      {
        key: "height",
        title: "Height",
        kind: "length",
        formula: `=IF(COUNT(BankHeight)=1,BankHeight,"")`,
        input: { min: 0, max: { US: 10, SI: 3 }, message: "Height of the stones of this bank." },
      },
      {
        key: "area",
        title: "Face",
        kind: "area",
        format: "#,##0.00",
        formula: `=IF(COUNT([length],[height])=2,[length]*[height],"")`,
      },
      {
        key: "tons",
        title: "Boulders",
        kind: "load",
        formula: `=IF(AND(ISNUMBER([area]),ISNUMBER(BankTons)),BankTons*[area]/SUM([area:all]),"")`,
      },
    ],
  });
  const [lengths, areas] = [table.column("length"), table.column("area")];
  s.result({
    name: "BankTons",
    label: "Boulders of both banks, waste included",
    formula: `=RILL.BOULDERTONS(SUM(${lengths}),SUM(${areas})/SUM(${lengths}),BankReach,RockUsed,SolidShare,StoneWaste,Units)`,
    kind: "load",
    needs: [`${areas}`, "BankReach", "SolidShare"],
  });
  s.result({
    name: "BoulderTons",
    label: "All boulders, waste included",
    formula: "=DropTons+BankTons",
    kind: "load",
    needs: ["DropTons", "BankTons"],
    strong: true,
  });
}

function lipStones(s: SheetLayout): void {
  s.section("Lip stones, ordered by the piece");
  s.input({
    name: "LipStonesPerDrop",
    label: "Lip stones in each drop",
    kind: "count",
    usual: 1,
    min: 0,
    max: 20,
    message: "Flat stones the water leaves over, in one drop.",
    note: "They lie on top of the faces and are not in the tons above.",
  });
  const side = (name: string, label: string, demo: { US: number; SI: number }): void => {
    s.input({
      name,
      label,
      kind: "size",
      demo,
      min: { US: 1, SI: 25 },
      max: { US: 120, SI: 3000 },
      message: "Measure the box the stone just fits in.",
    });
  };
  side("LipStoneLength", "Length of one", { US: 32, SI: 800 });
  side("LipStoneWidth", "Width", { US: 20, SI: 480 });
  side("LipStoneHeight", "Height", { US: 5, SI: 120 });
  s.input({
    name: "LipStoneShape",
    label: "Shape",
    kind: "text",
    choices: BOULDER_SHAPE_NAMES,
    usual: "box",
    message: "How much of its box the stone fills; choose from the list.",
  });
  s.result({
    name: "LipStoneWeight",
    label: "Weight of one",
    formula: "=RILL.BOULDERWEIGHT(LipStoneLength,LipStoneWidth,LipStoneHeight,RockUsed,LipStoneShape,Units)",
    kind: "weight",
    needs: ["LipStoneLength", "LipStoneWidth", "LipStoneHeight"],
  });
  s.result({
    name: "LipStoneCount",
    label: "Lip stones",
    formula: "=LipStonesPerDrop*COUNT(Drops)",
    kind: "count",
    unit: "pieces",
    needs: ["Drops", "LipStonesPerDrop"],
    strong: true,
  });
  s.caution(LIFTING_CAUTION);
}

function sizes(s: SheetLayout): void {
  s.section("Boulders by size");
  s.input({
    name: "HandLimit",
    label: "Most one person lifts",
    kind: "weight",
    usual: { US: 50, SI: 23 },
    min: { US: 5, SI: 2 },
    max: { US: 200, SI: 90 },
    message: "Your own hand-lift limit; heavier stones are marked for the machine.",
    note: "NIOSH: 51 lb (23 kg) under ideal conditions; less for awkward lifts.",
  });
  const mix = s.table({
    name: "StoneMix",
    rows: MIX_ROWS,
    columns: [
      {
        key: "size",
        title: "Size",
        kind: "size",
        input: { min: { US: 0.5, SI: 15 }, max: { US: 120, SI: 3000 }, message: "Mean diameter of the stones." },
      },
      {
        key: "share",
        title: "Share of weight",
        kind: "share",
        input: { min: 0, max: 1, message: "Share of the boulders' weight; all shares make 100 %." },
      },
    ],
    usual: {
      US: [
        [9, 0.2],
        [14, 0.35],
        [20, 0.3],
        [28, 0.15],
      ],
      SI: [
        [220, 0.2],
        [350, 0.4],
        [520, 0.3],
        [700, 0.1],
      ],
    },
  });
  s.skip();
  s.spill({
    name: "StoneSizes",
    formula: "=RILL.BOULDERMIX(BoulderTons,StoneMix,RockUsed,HandLimit,Units)",
    rows: MIX_ROWS + 1,
    header: "function",
    columns: [
      { kind: "size" },
      { kind: "share" },
      { kind: "load" },
      { kind: "weight" },
      { kind: "count" },
      { kind: "text" },
    ],
    needs: ["BoulderTons", `${mix.column("size")}`],
  });
  s.caution(LIFTING_CAUTION);
}

function gravel(s: SheetLayout): void {
  s.section("Gravel");
  const depth = (name: string, label: string, usual: { US: number; SI: number }): void => {
    s.input({
      name,
      label,
      kind: "size",
      usual,
      min: 0,
      max: { US: 48, SI: 1200 },
      message: "Depth of the layer.",
    });
  };
  depth("BedGravelDepth", "Depth of gravel in the bed", { US: 2.5, SI: 60 });
  s.result({
    name: "BedGravelArea",
    label: "Bed to cover",
    formula: "=BedWidth*Run",
    kind: "area",
    needs: ["BedWidth", "Run"],
  });
  s.result({
    name: "BedGravelTons",
    label: "Gravel in the bed, waste included",
    formula: "=RILL.GRAVELTONS(BedGravelArea,BedGravelDepth,GravelUsed,StoneWaste,Units)",
    kind: "load",
    needs: ["BedGravelArea", "BedGravelDepth"],
  });
  depth("CoverDepth", "Depth of gravel over the basin", { US: 4, SI: 100 });
  s.result({
    name: "CoverTons",
    label: "Gravel over the basin, waste included",
    formula: "=RILL.GRAVELTONS(BasinLength*BasinWidth,CoverDepth,GravelUsed,StoneWaste,Units)",
    kind: "load",
    needs: ["BasinLength", "BasinWidth", "CoverDepth"],
  });
  s.result({
    name: "GravelTons",
    label: "Gravel, waste included",
    formula: "=BedGravelTons+CoverTons",
    kind: "load",
    needs: ["BedGravelTons", "CoverTons"],
    strong: true,
  });
  s.input({
    name: "BasinStoneKind",
    label: "Stone around the void modules",
    kind: "text",
    choices: densityNames("stone"),
    usual: "river stone",
    message: "The stone that fills the basin around modules and pump well; choose from the list.",
  });
  s.result({
    name: "BasinStoneVolume",
    label: "Space around modules and pump well",
    formula: "=MAX(0,RILL.PITVOLUME(BasinLength,BasinWidth,BasinWaterDepth,BasinSideSlope,Units)-ModuleVolume)",
    kind: "earth",
    needs: ["BasinLength", "BasinWidth", "BasinWaterDepth", "ModuleVolume"],
  });
  s.result({
    name: "BasinStoneTons",
    label: "Stone around modules, waste included",
    formula: "=RILL.STONETONS(BasinStoneVolume,BasinStoneKind,StoneWaste,Units)",
    kind: "load",
    needs: ["BasinStoneVolume"],
    strong: true,
  });
}

function order(s: SheetLayout, job: Job): void {
  s.section("To order");
  s.input({
    name: "BagWeight",
    label: "One bag holds",
    kind: "weight",
    usual: { US: 50, SI: 25 },
    min: 1,
    max: { US: 5000, SI: 2500 },
    message: "Weight of stone in one bag.",
  });
  s.input({
    name: "PalletLoad",
    label: "One pallet carries",
    kind: "load",
    usual: { US: 1.5, SI: 1 },
    min: 0.1,
    max: 5,
    message: "Weight of stone on one pallet.",
  });
  s.input({
    name: "TruckPayload",
    label: "One truck carries",
    kind: "load",
    usual: { US: 14, SI: 9 },
    min: 0.25,
    max: 40,
    message: "Payload of the truck that delivers stone, by weight.",
  });
  const perLoad = job.pick({ US: 2000, SI: 1000 });
  const inches = job.pick({ US: 324, SI: 1000 });
  const names = ["GravelTons", "BasinStoneTons", "BoulderTons", "LipStoneTons"];
  const volumes = [
    `(BedGravelArea*BedGravelDepth+BasinLength*BasinWidth*CoverDepth)/${inches}*(1+StoneWaste)`,
    "BasinStoneVolume*(1+StoneWaste)",
  ];
  s.result({
    name: "LipStoneTons",
    label: "Lip stones together",
    formula: `=LipStoneCount*LipStoneWeight/${perLoad}`,
    kind: "load",
    needs: ["LipStoneCount", "LipStoneWeight"],
  });
  const pick = (texts: readonly string[]): string => `IF(ISNUMBER([tons]),CHOOSE([#],${texts.join(",")}),"")`;
  s.table({
    name: "StoneOrder",
    rows: names.length,
    columns: [
      {
        key: "what",
        title: "Stone",
        kind: "text",
        fixed: ["Gravel", "Stone around modules", "Boulders", "Lip stones"],
      },
      { key: "tons", title: "Weight", kind: "load", formula: `=CHOOSE([#],${names.join(",")})` },
      { key: "volume", title: "Loose", kind: "earth", formula: `=${pick([...volumes, '""', '""'])}` },
      {
        key: "bags",
        title: "or bags",
        kind: "count",
        formula: `=${pick([0, 1].map(() => `ROUNDUP(ROUND([tons]*${perLoad}/BagWeight,6),0)`).concat('""', '""'))}`,
      },
      {
        key: "pallets",
        title: "or pallets",
        kind: "count",
        formula: `=${pick(["", "", "", ""].map(() => "ROUNDUP(ROUND([tons]/PalletLoad,6),0)"))}`,
      },
      {
        key: "loads",
        title: "Truckloads",
        kind: "number",
        format: "0.0",
        formula: `=IF(ISNUMBER([tons]),[tons]/TruckPayload,"")`,
      },
    ],
  });
  s.result({
    name: "StoneTruckloads",
    label: "Truckloads, each stone on its own truck",
    formula: `=${names
      .slice(0, 2)
      .map((name) => `ROUNDUP(ROUND(${name}/TruckPayload,6),0)`)
      .join("+")}+ROUNDUP(ROUND((BoulderTons+LipStoneTons)/TruckPayload,6),0)`,
    kind: "count",
    unit: "loads",
    needs: [...names, "TruckPayload"],
    strong: true,
    note: "Boulders and lip stones share a truck.",
  });
}

function densities(s: SheetLayout, job: Job): void {
  s.section("Densities");
  s.note("Usual figures are taken unless you give your own above. A quarry's weigh ticket is better than any table.");
  const table = (title: string, rows: readonly DensityRow[]): void => {
    const column = (key: "low" | "usual" | "high", heading: string) => ({
      key,
      title: heading,
      kind: "density" as const,
      fixed: rows.map((row) => fromInside("density", row[key], job.system)),
    });
    s.table({
      rows: rows.length,
      columns: [
        { key: "name", title, kind: "text", fixed: rows.map((row) => row.name) },
        column("low", "Low"),
        column("usual", "Usual"),
        column("high", "High"),
        { key: "source", title: "Source", kind: "text", fixed: rows.map((row) => row.source), across: 4 },
      ],
    });
    s.skip();
  };
  table("Loose stone, dry", STONES);
  table("Solid rock", ROCKS);
}

function checks(s: SheetLayout, job: Job): void {
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
    label: "Biggest stone fits the access",
    value: "=MAX(INDEX(StoneSizes,0,4))",
    limit: job.system === "US" ? "at most 1,500 lb" : "at most 700 kg",
    ok: `MAX(INDEX(StoneSizes,0,4))<=${job.pick({ US: 1500, SI: 700 })}`,
    cure: "Check that the machine that reaches the feature lifts it at full reach, or choose smaller stones (common practice, no source).",
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

function contribute(s: SheetLayout, job: Job): void {
  const ton = job.pick({ US: "ton", SI: "t" });
  const quarry = {
    supplier: job.pick({ US: "Kettle Ridge Quarry (demo)", SI: "Steinbruch Hagelkamm (demo)" }),
    pack: 0.5,
  };
  const carrier = {
    supplier: job.pick({ US: "Larkspur Haulage (demo)", SI: "Fuhrbetrieb Eschweg (demo)" }),
    pack: 1,
    cost: "haulage" as const,
  };
  const add = (
    code: string,
    description: string,
    unit: string,
    quantity: string,
    rate: Pick<RateLine, "price" | "supplier" | "pack" | "cost">,
  ): void => {
    s.takeoff({ code, description, unit, quantity: `=${quantity}`, category: "Stone", needs: [quantity] });
    // Waste is in the tons already.
    s.rate({ code, description, unit, category: "Stone", waste: 0, ...rate });
  };
  add("GRAVEL", "Gravel for bed and basin top", ton, "GravelTons", { ...quarry, price: { US: 57.5, SI: 43 } });
  add("BASINSTONE", "Stone around void modules", ton, "BasinStoneTons", { ...quarry, price: { US: 49, SI: 38.5 } });
  add("BOULDER", "Boulders, mixed sizes", ton, "BoulderTons", { ...quarry, price: { US: 172, SI: 158 } });
  add("LIPSTONE", "Lip stones", "each", "LipStoneCount", { ...quarry, pack: 1, price: { US: 84, SI: 92 } });
  add("STONEHAUL", "Delivery of stone", "load", "StoneTruckloads", { ...carrier, price: { US: 115, SI: 105 } });
}
