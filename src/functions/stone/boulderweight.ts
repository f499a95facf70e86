import { boulderWeight, boulderWeightRange, WEIGHT_ERROR } from "../../calc/stone/boulder";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { quantityResult } from "../contract/result";
import { choice, quantity } from "../contract/scalars";
import { LIFTING_CAUTION, rockRange, shape, STONE_SIDE } from "./arguments";

const SIDES = ["estimate", "light", "heavy"] as const;

export const BOULDERWEIGHT = declare({
  name: "BOULDERWEIGHT",
  topic: "stone",
  summary: "Gives the weight of one stone from its length, width and height, or the most it can weigh.",
  formula:
    "W = k × length × width × height × rock density; k: rounded π/6, angular 0.76, box 1; " +
    "light: π/6 at the rock's lowest density; heavy: 1 at its highest",
  source:
    "W = π/6 γ D³: USACE, Streambank Manual, appendix A, Eq. A.1; box: geometry; angular, half way between: common practice, no source",
  limits:
    `Measure the box the stone just fits in. An estimate by shape is good to ${WEIGHT_ERROR}, beside what the rock's density ` +
    'differs by. Where a lift depends on it, ask for "heavy": no stone of that rock is heavier than its box.',
  caution: LIFTING_CAUTION,
  args: {
    length: quantity("size", "Length of the stone", STONE_SIDE),
    width: quantity("size", "Width of the stone", STONE_SIDE),
    height: quantity("size", "Height of the stone", STONE_SIDE),
    rock: rockRange,
    shape,
    side: optional(choice("The estimate by shape, or the least or most it can weigh", SIDES), "estimate", "estimate"),
  },
  result: quantityResult("weight", "the weight of the stone"),
  examples: [
    {
      args: [30, 24, 18, "165 lb/ft3", "rounded"],
      gives: 647.95,
      within: 1e-5,
      from: "by hand: π/6 × 2.5 × 2 × 1.5 ft × 165 lb/ft³ = 0.5236 × 7.5 × 165 = 647.95 lb",
    },
    {
      args: [10, 10, 10, "fieldstone", "", "heavy"],
      gives: 98.38,
      within: 1e-4,
      from: "by hand: (10 / 12)³ ft³ × 170 lb/ft³ (the highest of fieldstone) = 0.5787 × 170 = 98.38 lb",
    },
    {
      args: [600, 400, 250, 2.5, "box", "", "SI"],
      gives: 150,
      within: 1e-9,
      from: "by hand: 0.6 × 0.4 × 0.25 m = 0.06 m³; × 2,500 kg/m³ = 150 kg",
    },
  ],
  compute({ length, width, height, rock, shape, side }) {
    if (side === "estimate") return boulderWeight(length, width, height, rock.usual, shape);
    return boulderWeightRange(length, width, height, rock)[side];
  },
});
