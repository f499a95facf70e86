import { lipDepth } from "../../calc/water/lip";
import { sharpCrestDepth } from "../../calc/water/sharpCrest";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW } from "../pipe/arguments";
import { crestArguments, LIP_LIMITS, lipShape, lipWidth, sharpCrest } from "./arguments";

export const LIPDEPTH = declare({
  name: "LIPDEPTH",
  topic: "water",
  summary: "Gives the depth of the sheet that a flow makes on a lip; the inverse of LIPFLOW.",
  formula:
    "the H where C (L - 0.1 n H) H^1.5 = Q, L lip width, n ends where the sheet draws in; with a crest height the " +
    "H of LIPFLOW's formula for it",
  source:
    "J. B. Francis (1855), suppressed and contracted weir; Brater & King (1976), broad lip: both as in the EPA SWMM " +
    "Reference Manual vol. II (2017), section 6.3 and Table 6-3. With a crest height: T. Rehbock (1929, from memory); " +
    "with a pool width: C. E. Kindsvater and R. W. Carter (1959), constants of Table 6-2 there",
  limits: LIP_LIMITS,
  args: {
    flow: quantity("flow", "Flow over the lip", FLOW),
    lip_width: lipWidth,
    lip_shape: lipShape,
    ...crestArguments,
  },
  result: quantityResult("size", "the depth of the sheet"),
  examples: [
    {
      args: [3000, 12, "sharp"],
      gives: 1.2459,
      within: 1e-4,
      from: "by hand: 50 gpm per foot = 0.111401 ft³/s; (0.111401 / 3.33)^(2/3) = 0.103826 ft = 1.2459 in",
    },
    {
      args: [3000, 12],
      gives: 1.4581,
      within: 1e-4,
      from: "by hand: (0.111401 / 2.63)^(2/3) = 0.121508 ft = 1.4581 in",
    },
  ],
  compute({ flow, lip_width, lip_shape, crest_height, pool_width }) {
    const crest = sharpCrest(lip_shape, lip_width, crest_height, pool_width);
    return crest ? sharpCrestDepth(flow, crest) : lipDepth(flow, lip_width, lip_shape);
  },
});
