import { pipeSpeed } from "../../calc/pipe/friction";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW, pipeOf, pipeSize, pipeType } from "./arguments";

export const PIPESPEED = declare({
  name: "PIPESPEED",
  topic: "pipe",
  summary: "Gives the speed of the water in a pipe.",
  formula: "V = Q / (π d² / 4), d the bore",
  source: "Continuity, any hydraulics text",
  limits: "For a full pipe. Keep below 5 ft/s (1.5 m/s): common practice, no source.",
  args: { flow: quantity("flow", "Flow in the pipe", FLOW), size: pipeSize, pipe_type: pipeType },
  result: quantityResult("speed", "the speed in the pipe"),
  examples: [
    {
      args: [2400, 2],
      gives: 3.8244,
      within: 0.001,
      from: "by hand: 0.4085 × 40 gpm / (2.067 in)² = 3.824 ft/s",
    },
    {
      args: [10800, "bore 57 mm", null, "SI"],
      gives: 1.17566,
      within: 0.0001,
      from: "by hand: 0.003 m³/s / (π × 0.057² / 4 m²) = 1.1757 m/s",
    },
  ],
  compute: ({ flow, size, pipe_type }) => pipeSpeed(flow, pipeOf(size, pipe_type).bore),
});
