import { BOULDER_SHAPE_NAMES, boulderWeight } from "../../calc/stone/boulder";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { quantityResult } from "../contract/result";
import { choice, quantity } from "../contract/scalars";
import { LIFTING_CAUTION, rock, STONE_SIDE } from "./arguments";

export const BOULDERWEIGHT = declare({
  name: "BOULDERWEIGHT",
  topic: "stone",
  summary: "Gives the weight of one stone from its length, width and height.",
  formula: "W = k × length × width × height × rock density; k: rounded π/6, angular 0.76, box 1",
  source:
    "W = π/6 γ D³: USACE, Streambank Manual, appendix A, Eq. A.1; box: geometry; angular, half way between: common practice, no source",
  limits:
    "Measure the box the stone just fits in. A box weighs 1.9 times as much as a rounded stone of the same sides: " +
    "where a lift depends on it, take the box.",
  caution: LIFTING_CAUTION,
  args: {
    length: quantity("size", "Length of the stone", STONE_SIDE),
    width: quantity("size", "Width of the stone", STONE_SIDE),
    height: quantity("size", "Height of the stone", STONE_SIDE),
    rock,
    shape: optional(choice("Shape", BOULDER_SHAPE_NAMES), "rounded", "rounded"),
  },
  result: quantityResult("weight", "the weight of the stone"),
  examples: [
    {
      args: [30, 24, 18, "165 lb/ft3"],
      gives: 647.95,
      within: 1e-5,
      from: "by hand: π/6 × 2.5 × 2 × 1.5 ft × 165 lb/ft³ = 0.5236 × 7.5 × 165 = 647.95 lb",
    },
    {
      args: [600, 400, 250, 2.5, "box", "SI"],
      gives: 150,
      within: 1e-9,
      from: "by hand: 0.6 × 0.4 × 0.25 m = 0.06 m³; × 2,500 kg/m³ = 150 kg",
    },
  ],
  compute: ({ length, width, height, rock, shape }) => boulderWeight(length, width, height, rock, shape),
});
