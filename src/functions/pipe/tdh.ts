import { totalDynamicHead } from "../../calc/pipe/route";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW, LIFT, PIPE_LENGTH, fittings, method, onePipe, pipeSize, pipeType, waterTemp } from "./arguments";

export const TDH = declare({
  name: "TDH",
  topic: "pipe",
  summary: "Gives the total dynamic head of one pipe: lift, friction, fittings and the outlet's velocity head.",
  formula: "TDH = lift + hf + ΣK V²/2g + V²/2g at the outlet, counted once",
  source: "Energy equation, any hydraulics text; the parts as in PIPELOSS and FITLOSS",
  limits:
    "The lift is as good as your levels, friction to about 10% (the bore), fittings to about a third. " +
    "Measure the lift from the running water level, which lies below the full level by the drain-back. " +
    "A pipe outlet among the fittings is not counted a second time. For pipes of several sizes use TDHTABLE.",
  args: {
    flow: quantity("flow", "Flow wanted", FLOW),
    lift: quantity("head", "Lift from the running water level to the outlet", LIFT),
    size: pipeSize,
    length: quantity("length", "Pipe length", PIPE_LENGTH),
    fittings: optional(fittings, "none"),
    pipe_type: pipeType,
    method,
    water_temp: waterTemp,
  },
  result: quantityResult("head", "the total dynamic head"),
  examples: [
    {
      args: [2400, 6, 2, 100],
      gives: 8.847,
      within: 0.011,
      from:
        "by hand: 6 ft lift + 2.62 ft friction (Illinois Administrative Code 77, part 906, exhibit I, 40 gpm in 2 in) " +
        "+ 3.8244² / 64.348 = 0.227 ft outlet",
    },
  ],
  compute: ({ flow, lift, size, length, fittings, pipe_type, method, water_temp }) =>
    totalDynamicHead(flow, lift, [onePipe(size, pipe_type, length, fittings)], {
      method,
      waterTemperature: water_temp,
    }),
});
