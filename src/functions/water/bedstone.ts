import { BED_STONE_RANGE, bedStone } from "../../calc/water/bedStone";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { aboveZero } from "../contract/range";
import { quantityResult } from "../contract/result";
import { number, quantity } from "../contract/scalars";
import { rock } from "../stone/arguments";
import { SLOPE_PERCENT } from "./arguments";

export const BEDSTONE = declare({
  name: "BEDSTONE",
  topic: "water",
  summary: "Gives the smallest loose stone that stays on a bed, by the pull of the water on it.",
  formula: "D = safety × d S / (0.047 (SG - 1)), d depth of the water, S slope, SG rock density / water density",
  source: "FHWA HEC-15, 3rd ed. (2005), Eq. 3.1, 6.7 and 6.8; Shields number 0.047 from its Table 6.1 (from memory)",
  limits:
    "For an even flow (BEDDEPTH) at least 1.5 times as deep as the stone: beds of up to about 5%. On steeper ones the stone " +
    "comes out on the heavy side, two to three times what rock chutes of 40% held. Over rough stones the water is 1.1 to 1.9 " +
    "times as deep, and asks for that much more stone. Where a drop lands take STABLESTONE.",
  args: {
    depth: quantity("size", "Depth of the water (BEDDEPTH)", aboveZero(BED_STONE_RANGE.depth)),
    slope_percent: number("Fall in percent of the length", SLOPE_PERCENT),
    rock,
    safety: optional(number("Factor of safety", { above: 0, ...BED_STONE_RANGE.safety }), "1", 1),
  },
  result: quantityResult("size", "the mean diameter of the smallest stone"),
  examples: [
    {
      args: [2.4, 6, "2.65 t/m3"],
      gives: 1.85687,
      within: 1e-4,
      from: "by hand: 0.2 ft × 0.06 / (0.047 × 1.65) = 0.154739 ft = 1.8569 in",
    },
  ],
  compute: ({ depth, slope_percent, rock, safety }) => bedStone(depth, slope_percent / 100, rock, safety),
});
