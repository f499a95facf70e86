import { BASIN_DUTY_RANGE } from "../../calc/basin/check";
import { aboveZero } from "../contract/range";
import { basinDepth } from "../../calc/basin/hold";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { basinLength, basinSlope, basinWidth, VOID_LIMITS, voidFraction } from "./arguments";

export const BASINDEPTH = declare({
  name: "BASINDEPTH",
  topic: "basin",
  summary: "Gives the depth of water a volume takes up in a basin; the inverse of BASINHOLD.",
  formula: "the d where n (L W d + z d² (L + W) + 4/3 z² d³) = V, L and W of the bottom, z walls out per 1 up",
  source: "Geometry (prismoidal formula, exact for a level bottom); 1 gal = 231 in³",
  limits: `At most 20 ft (6.1 m) deep. ${VOID_LIMITS}`,
  args: {
    volume: quantity("water", "Water to hold", aboveZero(BASIN_DUTY_RANGE.water)),
    length: basinLength,
    width: basinWidth,
    void_fraction: voidFraction,
    side_slope: basinSlope,
  },
  result: quantityResult("length", "the depth of the water"),
  examples: [
    {
      args: [598.442, 10, 8, 0.4],
      gives: 2.5,
      within: 1e-5,
      from: "by hand: 598.442 gal / 7.480519 = 80 ft³; / 0.4 = 200 ft³; / (10 × 8 ft) = 2.5 ft",
    },
  ],
  compute: ({ volume, length, width, void_fraction, side_slope }) =>
    basinDepth(volume, { length, width, voidFraction: void_fraction, sideSlope: side_slope }),
});
