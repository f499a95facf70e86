import { partFull } from "../../calc/pipe/partFull";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { optional } from "../contract/optional";
import { BORE_RANGE } from "../../calc/pipe/bore";
import { aboveZero } from "../contract/range";
import { DRAIN_LIMITS, drainArguments, pipeOf } from "./arguments";

const { size, slope_percent, ...rest } = drainArguments;

export const PARTFLOW = declare({
  name: "PARTFLOW",
  topic: "pipe",
  summary: "Gives the flow that a round pipe carries by its slope at a depth of water, or just full.",
  formula: "Q = A R^(2/3) S^½ / n, A = d² (θ - sin θ) / 8, P = d θ / 2, θ = 2 acos(1 - 2 y/d)",
  source: "Manning (1891); the round section: V. T. Chow, Open-Channel Hydraulics (1959), Table 2-1",
  limits: DRAIN_LIMITS,
  args: {
    size,
    slope_percent,
    depth: optional(quantity("size", "Depth of the water in the pipe", aboveZero(BORE_RANGE)), "just full"),
    ...rest,
  },
  result: quantityResult("flow", "the flow in the pipe"),
  examples: [
    {
      args: ["bore 4 in", 1, "", 0.011],
      gives: 6057,
      within: 0.0005,
      from: "by hand: just full, A = 0.08727 ft², R = 0.08333 ft; 1.486 / 0.011 × 0.08727 × 0.1908 × 0.1 = 0.2249 cfs × 26,930",
    },
    {
      args: ["bore 600 mm", 0.25, 240, 0.013, null, "SI"],
      gives: 372446,
      within: 0.0001,
      from: "R package hydraulics, manningc, printed example: 0.1 m³/s; by hand θ = 2.738877, A = 0.105620 m², R = 0.128544 m",
    },
  ],
  compute({ size, depth, slope_percent, roughness, pipe_type }) {
    const { bore } = pipeOf(size, pipe_type);
    return partFull({ bore, slope: slope_percent / 100, roughness }, depth ?? bore).flow;
  },
});
