import { partFullDepth } from "../../calc/pipe/partFull";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { DRAIN_LIMITS, FLOW, drainArguments, pipeOf } from "./arguments";

export const PARTDEPTH = declare({
  name: "PARTDEPTH",
  topic: "pipe",
  summary: "Gives the depth of water in a round pipe that runs part-full by its slope, such as an overflow.",
  formula: "the y where A R^(2/3) S^½ / n = Q, A = d² (θ - sin θ) / 8, P = d θ / 2, θ = 2 acos(1 - 2 y/d)",
  source: "Manning (1891); the round section: V. T. Chow, Open-Channel Hydraulics (1959), Table 2-1",
  limits: DRAIN_LIMITS,
  args: { flow: quantity("flow", "Flow in the pipe", FLOW), ...drainArguments },
  result: quantityResult("size", "the depth of the water in the pipe"),
  examples: [
    {
      args: [3028.5, "bore 4 in", 1, 0.011],
      gives: 2,
      within: 0.0005,
      from: "by hand: a pipe half full carries half of what it carries full, 6,057 gph (see PARTFLOW), and stands 2 in deep",
    },
    {
      args: [36000, "bore 200 mm", 0.1, 0.013, null, "SI"],
      gives: 157.83,
      within: 0.0001,
      from: "E. Maurer, Hydraulics and Water Resources: Examples Using R, Example 5.4: 0.01 m³/s in 0.2 m at 0.001, n 0.013: 0.158 m",
    },
  ],
  compute: ({ flow, size, slope_percent, roughness, pipe_type }) =>
    partFullDepth(flow, { bore: pipeOf(size, pipe_type).bore, slope: slope_percent / 100, roughness }),
});
