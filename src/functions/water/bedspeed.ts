import { normalFlow } from "../../calc/water/bed";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW } from "../pipe/arguments";
import { BED_LIMITS, bedArguments } from "./arguments";

export const BEDSPEED = declare({
  name: "BEDSPEED",
  topic: "water",
  summary: "Gives the mean speed of the water where a stream bed carries a flow evenly.",
  formula: "V = R^(2/3) S^½ / n at the depth of BEDDEPTH",
  source: "Manning (1891); n from V. T. Chow, Open-Channel Hydraulics (1959), Table 5-6",
  limits: BED_LIMITS,
  args: { flow: quantity("flow", "Flow in the stream", FLOW), ...bedArguments },
  result: quantityResult("speed", "the speed of the water"),
  examples: [
    {
      args: [3600, 1.5, 5, 0.05, 1],
      gives: 1.12298,
      within: 1e-4,
      from: "by hand: 60 gpm = 0.133681 ft³/s over A = 0.119041 ft² (see BEDDEPTH)",
    },
  ],
  compute: ({ flow, bed_width, slope_percent, roughness, side_slope }) =>
    normalFlow(flow, { width: bed_width, slope: slope_percent / 100, roughness, sideSlope: side_slope }).speed,
});
