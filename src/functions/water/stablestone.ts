import { ISBASH, STABLE_STONE_RANGE, stableStone, type Turbulence } from "../../calc/water/stableStone";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { quantityResult } from "../contract/result";
import { choice, quantity } from "../contract/scalars";
import { rock } from "../stone/arguments";

const TURBULENCES = Object.keys(ISBASH) as Turbulence[];

export const STABLESTONE = declare({
  name: "STABLESTONE",
  topic: "water",
  summary: "Gives the smallest stone that stays where water strikes it at a speed, as below a drop.",
  formula: "D = V² / (2 g C² (S - 1)), C 0.86 in high and 1.20 in low turbulence, S rock density / water density",
  source:
    "S. V. Isbash, Construction of Dams by Depositing Rock in Running Water (1936), as in Blevins (2003) and NCHRP Report 568",
  limits:
    "Stones as round as a ball; the speed is the mean of the cross-section, below a drop that of the fall. Not for beds: at the " +
    "same flow a rougher bed runs slower and would be given a smaller stone; take BEDSTONE there. Smaller stone where a drop " +
    "lands belongs in mortar.",
  args: {
    speed: quantity("speed", "Mean speed of the water", STABLE_STONE_RANGE.speed),
    rock,
    turbulence: optional(choice("Turbulence", TURBULENCES), '"high"', "high"),
  },
  result: quantityResult("size", "the diameter of the smallest stone"),
  examples: [
    {
      args: [4, "2.65 t/m3", "low"],
      gives: 1.2558,
      within: 2e-4,
      from: "by hand: 16 / (2 × 32.174 × 1.2² × 1.65) = 0.10465 ft = 1.2558 in",
    },
    {
      args: [4, "2.65 t/m3"],
      gives: 2.445,
      within: 2e-4,
      from: "by hand: 16 / (2 × 32.174 × 0.86² × 1.65) = 0.20375 ft = 2.4450 in",
    },
  ],
  compute: ({ speed, rock, turbulence }) => stableStone(speed, rock, turbulence),
});
