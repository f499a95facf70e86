import { minorResistance, sumOfK } from "../../calc/pipe/fittings";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW, fittings, pipeOf, pipeSize, pipeType } from "./arguments";

export const FITLOSS = declare({
  name: "FITLOSS",
  topic: "pipe",
  summary: "Gives the head that elbows, tees, valves and other fittings of one pipe take.",
  formula: "hm = ΣK V²/2g, V the speed in the pipe; rows of Crane: K = (L/D) × fT",
  source:
    "K: EPANET 2.2 User Manual (EPA/600/R-20/133), Table 3.3; ball and butterfly valves: Crane TP-410; unions: Perry's Handbook (from memory)",
  limits:
    "Books differ by a third and more for the same fitting. Valves count as fully open. " +
    "TDH counts the outlet's velocity head by itself; list a pipe outlet here only where you add up by hand.",
  args: {
    flow: quantity("flow", "Flow in the pipe", FLOW),
    size: pipeSize,
    fittings,
    pipe_type: pipeType,
  },
  result: quantityResult("head", "the head of the fittings"),
  examples: [
    {
      args: [
        2400,
        2,
        [
          ["90 elbow", 3],
          ["swing check valve", 1],
        ],
      ],
      gives: 1.1819,
      within: 0.001,
      from: "by hand: K = 3 × 0.9 + 2.5 = 5.2; V = 3.8244 ft/s; 5.2 × 3.8244² / (2 × 32.174) = 1.182 ft",
    },
  ],
  compute({ flow, size, fittings, pipe_type }) {
    const { bore } = pipeOf(size, pipe_type);
    return minorResistance(sumOfK(fittings, bore, true), bore) * flow * flow;
  },
});
