import { BOULDER_SHAPE_NAMES } from "../../../calc/stone/boulder";
import { LIFTING_CAUTION } from "../../../functions/stone/arguments";
import type { SheetLayout } from "../../layout";

export const MIX_ROWS = 5;

/** Lip stones, which are ordered by the piece, and what one weighs. */
export function lipStones(s: SheetLayout): void {
  s.section("Lip stones, ordered by the piece");
  s.input({
    name: "LipStonesPerDrop",
    label: "Lip stones in each drop",
    kind: "count",
    min: 0,
    max: 20,
    message: "Flat stones the water leaves over, in one drop.",
    note: "On top of the faces; not in the weights above.",
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
    message: "How much of its box the stone fills; choose from the list.",
  });
  s.result({
    name: "LipStoneWeight",
    label: "Weight of one",
    formula: `=RILL.BOULDERWEIGHT(LipStoneLength,LipStoneWidth,LipStoneHeight,RockUsed,LipStoneShape,"estimate",Units)`,
    kind: "weight",
    needs: ["LipStoneLength", "LipStoneWidth", "LipStoneHeight"],
  });
  s.result({
    name: "LipStoneHeavy",
    label: "The most one can weigh",
    formula: `=RILL.BOULDERWEIGHT(LipStoneLength,LipStoneWidth,LipStoneHeight,RockUsed,LipStoneShape,"heavy",Units)`,
    kind: "weight",
    needs: ["LipStoneLength", "LipStoneWidth", "LipStoneHeight"],
    note: "Its whole box, of the heaviest such rock. Plan the lift for this.",
  });
  s.result({
    name: "LipStoneCount",
    label: "Lip stones",
    source: "by definition: so many in each drop",
    formula: "=LipStonesPerDrop*COUNT(Drops)",
    kind: "count",
    unit: "pieces",
    needs: ["Drops", "LipStonesPerDrop"],
    strong: true,
  });
  s.caution(LIFTING_CAUTION);
}

/** The boulders by size: how many, what one weighs, and which need a machine. */
export function sizes(s: SheetLayout): void {
  s.section("Boulders by size");
  s.input({
    name: "HandLimit",
    label: "Most one person lifts",
    kind: "weight",
    min: { US: 5, SI: 2 },
    max: { US: 200, SI: 90 },
    message: "Your own hand-lift limit; stones that may be heavier are marked for the machine.",
    note: {
      US: "NIOSH: 51 lb at best; less for awkward lifts.",
      SI: "At best 23 (NIOSH) to 25 kg (ISO 11228-1).",
    },
  });
  s.input({
    name: "BoulderShape",
    label: "Shape of the boulders",
    kind: "text",
    choices: BOULDER_SHAPE_NAMES,
    message:
      "How much of their box the boulders fill, for the counts; choose from the list. Lifts are judged by the box.",
    note: "Counts come as near to the tons as whole stones can.",
  });
  const mix = s.table({
    name: "StoneMix",
    rows: MIX_ROWS,
    columns: [
      {
        key: "size",
        title: "Size",
        kind: "size",
        input: {
          min: { US: 0.5, SI: 15 },
          max: { US: 120, SI: 3000 },
          message: "Mean of length, width and height of the stones.",
        },
      },
      {
        key: "share",
        title: "Share of weight",
        kind: "share",
        input: { min: 0, max: 1, message: "Share of the boulders' weight; all shares make 100%." },
      },
    ],
    usual: {
      US: [
        [7, 0.2],
        [10, 0.35],
        [13, 0.3],
        [16, 0.15],
      ],
      SI: [
        [180, 0.2],
        [250, 0.4],
        [320, 0.3],
        [400, 0.1],
      ],
    },
  });
  s.spill({
    name: "StoneSizes",
    formula: "=RILL.BOULDERMIX(BoulderTons,StoneMix,RockUsed,HandLimit,BoulderShape,Units)",
    rows: MIX_ROWS + 1,
    header: "function",
    columns: [
      { kind: "size" },
      { kind: "share" },
      { kind: "load" },
      { kind: "weight" },
      { kind: "weight" },
      { kind: "weight" },
      { kind: "count" },
      { kind: "text" },
    ],
    needs: ["BoulderTons", `${mix.column("size")}`],
  });
  s.result({
    name: "HeaviestStone",
    label: "Heaviest stone of the job",
    formula:
      "=IF(LipStonesPerDrop=0,MAX(INDEX(StoneSizes,0,6))," +
      'IF(COUNT(LipStoneHeavy)=0,"",MAX(INDEX(StoneSizes,0,6),LipStoneHeavy)))',
    kind: "weight",
    needs: ["StoneSizes"],
    strong: true,
    note: "At its heaviest, lip stones included. The machine must lift it at full reach.",
  });
  s.caution(LIFTING_CAUTION);
}
