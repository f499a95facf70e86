import { BOULDER_SHAPE_NAMES } from "../../calc/stone/boulder";
import { densityNames } from "../../calc/stone/density";
import { factsOf, numbers, table, worked } from "./fact";

const { number, text, choice } = factsOf("Stone");
const REACH = { US: [1, 72], SI: [25, 1800] } as const;
const STONE_SIDE = { US: [1, 120], SI: [25, 3000] } as const;
const LAYER = { US: [0, 48], SI: [0, 1200] } as const;
const optional = { optional: true } as const;

/** Boulders, lip stones and gravel. */
export const stone = {
  rockFigure: text("RockFigure", "book", "What does your quarry say the rock weighs, with its unit?", optional),
  gravelFigure: text("GravelFigure", "book", "What does your quarry say the gravel weighs, with its unit?", optional),
  stoneWaste: number("StoneWaste", "book", "share", [0, 0.5], "What share is added to all stone for waste?"),
  dropReach: number("DropReach", "office", "size", REACH, "How far do the stones of a drop reach back?"),
  solidShare: number("SolidShare", "book", "share", [0.3, 1], "What share of a stone face is stone?"),
  dropFaces: table({
    sheet: "Stone",
    knower: "visit",
    name: "DropStone",
    question: "How wide is the stone face of each drop?",
    rows: 12,
    columns: { width: worked(numbers(3, "length", { US: [0, 100], SI: [0, 30] }, "How wide is its face?")) },
  }),
  bankReach: number("BankReach", "office", "size", REACH, "How far do the stones of a bank reach back?"),
  bankFaces: table({
    sheet: "Stone",
    knower: "visit",
    name: "BankStone",
    question: "How long and how high are the stones of either bank?",
    rows: 2,
    columns: {
      length: worked(numbers(2, "length", { US: [0, 1000], SI: [0, 300] }, "How long is the bank along its steps?")),
      height: worked(numbers(3, "length", { US: [0, 10], SI: [0, 3] }, "How high are its stones?")),
    },
  }),
  lipStonesPerDrop: number("LipStonesPerDrop", "office", "count", [0, 20], "How many lip stones has each drop?", {
    whole: true,
  }),
  lipStoneLength: number("LipStoneLength", "office", "size", STONE_SIDE, "How long is one lip stone?"),
  lipStoneWidth: number("LipStoneWidth", "office", "size", STONE_SIDE, "How wide is it?"),
  lipStoneHeight: number("LipStoneHeight", "office", "size", STONE_SIDE, "How high is it?"),
  lipStoneShape: choice("LipStoneShape", "office", BOULDER_SHAPE_NAMES, "How much of its box does it fill?"),
  handLimit: number(
    "HandLimit",
    "book",
    "weight",
    { US: [5, 200], SI: [2, 90] },
    "What is the most that one person lifts?",
  ),
  boulderShape: choice("BoulderShape", "office", BOULDER_SHAPE_NAMES, "How much of their box do the boulders fill?"),
  boulderSizes: table({
    sheet: "Stone",
    knower: "office",
    name: "StoneMix",
    question: "Which sizes do the boulders come in?",
    rows: 5,
    columns: {
      size: numbers(
        1,
        "size",
        { US: [0.5, 120], SI: [15, 3000] },
        "What is the mean of their length, width and height?",
      ),
      share: numbers(2, "share", [0, 1], "What share of the weight are they?"),
    },
  }),
  bedGravelDepth: number("BedGravelDepth", "office", "size", LAYER, "How deep does gravel lie in the bed?"),
  coverDepth: number("CoverDepth", "office", "size", LAYER, "How deep does gravel lie over the basin?"),
  basinStone: choice("BasinStoneKind", "office", densityNames("stone"), "Which stone fills the basin round its parts?"),
  bagWeight: number("BagWeight", "book", "weight", { US: [1, 5000], SI: [1, 2500] }, "What does one bag hold?"),
  palletLoad: number("PalletLoad", "book", "load", [0.1, 5], "What does one pallet carry?"),
  truckPayload: number("TruckPayload", "book", "load", [0.25, 40], "What does one stone truck carry?"),
} as const;
