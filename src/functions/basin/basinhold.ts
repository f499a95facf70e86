import { basinHold } from "../../calc/basin/hold";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { BASIN_DEPTH, basinLength, basinSlope, basinWidth, VOID_LIMITS, voidFraction } from "./arguments";

export const BASINHOLD = declare({
  name: "BASINHOLD",
  topic: "basin",
  summary: "Gives the water a basin holds between its low level and the overflow.",
  formula: "V = n (L W d + z d² (L + W) + 4/3 z² d³), L and W of the bottom, n void fraction, z walls out per 1 up",
  source: "Geometry (prismoidal formula, exact for a level bottom); 1 gal = 231 in³",
  limits: `Give the depth between low level and overflow, not down to the floor. ${VOID_LIMITS} Silt takes room over the years.`,
  args: {
    length: basinLength,
    width: basinWidth,
    water_depth: quantity("length", "Depth from low level to overflow", BASIN_DEPTH),
    void_fraction: voidFraction,
    side_slope: basinSlope,
  },
  result: quantityResult("water", "the water the basin holds"),
  examples: [
    {
      args: [10, 8, 2.5, 0.4],
      gives: 598.442,
      within: 1e-5,
      from: "by hand: 10 × 8 × 2.5 ft = 200 ft³; × 0.4 × 7.480519 gal/ft³",
    },
    {
      args: [10, 8, 2.5, 0.4, 0.5],
      gives: 782.338,
      within: 1e-5,
      from: "by hand: 200 + 0.5 × 6.25 × 18 + 4/3 × 0.25 × 15.625 = 261.4583 ft³; × 0.4 × 7.480519 = 782.338 gal",
    },
  ],
  compute: ({ length, width, water_depth, void_fraction, side_slope }) =>
    basinHold({ length, width, voidFraction: void_fraction, sideSlope: side_slope }, water_depth),
});
