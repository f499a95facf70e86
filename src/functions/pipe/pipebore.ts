import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { pipeOf, pipeSize, pipeType } from "./arguments";

export const PIPEBORE = declare({
  name: "PIPEBORE",
  topic: "pipe",
  summary: "Gives the inside diameter of a pipe from its nominal size and type.",
  formula: "bore = outside diameter - 2 × least wall of the standard",
  source:
    "ASTM D1785 (Sch 40, Sch 80), D2241 (SDR), D2239 (PE SIDR, from memory), ISO 1452-2 (PVC-U), ISO 4427-2 (PE100)",
  limits:
    "Real pipe is made a little thicker than the least wall, so the true bore is up to 2% smaller. " +
    "Flexible PVC fixes only the outside diameter: its bore is taken as Schedule 40's.",
  args: { size: pipeSize, pipe_type: pipeType },
  result: quantityResult("size", "the inside diameter"),
  examples: [
    {
      args: [2],
      gives: 2.067,
      within: 0.0005,
      from: "ASTM D1785: outside diameter 2.375 in less 2 × 0.154 in",
    },
    {
      args: [63, "PVC-U PN10", "SI"],
      gives: 57,
      within: 0.0005,
      from: "ISO 1452-2: 63 mm less 2 × 3.0 mm",
    },
  ],
  compute: ({ size, pipe_type }) => pipeOf(size, pipe_type).bore,
});
