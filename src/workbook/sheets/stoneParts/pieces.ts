import { BOULDER_SHAPE_NAMES } from "../../../calc/stone/boulder";
import { LIFTING_CAUTION } from "../../../functions/stone/arguments";
import type { SheetLayout } from "../../layout";

const MIX_ROWS = 5;

/** Lip stones, which are ordered by the piece, and what one weighs. */
export function lipStones(s: SheetLayout): void {
  s.section("Lip stones, ordered by the piece");
  s.input({
    name: "LipStonesPerDrop",
    label: "Lip stones in each drop",
    kind: "count",
    usual: 1,
    min: 0,
    max: 20,
    message: "Flat stones the water leaves over, in one drop.",
    note: "They lie on top of the faces and are not in the weights above.",
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

/** The boulders by size: how many, what one weighs, and which need a machine. */
export function sizes(s: SheetLayout): void {
  s.section("Boulders by size");
  s.input({
    name: "HandLimit",
    label: "Most one person lifts",
    kind: "weight",
    usual: { US: 50, SI: 23 },
    min: { US: 5, SI: 2 },
    max: { US: 200, SI: 90 },
    message: "Your own hand-lift limit; heavier stones are marked for the machine.",
    note: {
      US: "NIOSH: 51 lb under ideal conditions; less for awkward lifts.",
      SI: "ISO 11228-1 and NIOSH: 23 to 25 kg at best; less for awkward lifts.",
    },
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
