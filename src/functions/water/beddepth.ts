import { normalFlow } from "../../calc/water/bed";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW } from "../pipe/arguments";
import { BED_LIMITS, bedArguments } from "./arguments";

export const BEDDEPTH = declare({
  name: "BEDDEPTH",
  topic: "water",
  summary: "Gives the depth at which a stream bed carries a flow evenly (Manning's normal depth).",
  formula: "the y where A R^(2/3) S^½ / n = Q, A = b y + z y², R = A / (b + 2 y √(1 + z²))",
  source: "Manning (1891); n from V. T. Chow, Open-Channel Hydraulics (1959), Table 5-6",
  limits: BED_LIMITS,
  args: { flow: quantity("flow", "Flow in the stream", FLOW), ...bedArguments },
  result: quantityResult("size", "the depth of the stream"),
  examples: [
    {
      args: [3600, 1.5, 5, 0.05, 1],
      gives: 0.90666,
      within: 1e-4,
      from:
        "put back by hand: y = 0.075555 ft, A = 0.119041 ft², P = 1.713702 ft; " +
        "1.486 / 0.05 × 0.119041 × 0.069464^(2/3) × 0.223607 = 0.13368 ft³/s = 60 gpm",
    },
  ],
  compute: ({ flow, bed_width, slope_percent, roughness, side_slope }) =>
    normalFlow(flow, { width: bed_width, slope: slope_percent / 100, roughness, sideSlope: side_slope }).depth,
});
