import { FABRIC_RANGE, fabricCut } from "../../calc/liner/fabric";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult } from "../contract/result";
import { number, quantity } from "../contract/scalars";
import { SIDE } from "./arguments";

export const FABRICCUT = declare({
  name: "FABRICCUT",
  topic: "liner",
  summary: "Covers an area with lapped strips of fabric, along or across, whichever takes less off the roll.",
  formula: "strips = ⌈(side − lap) / (roll width − lap)⌉ × layers; length to buy = strips × the other side",
  source: "Geometry. Lap of 1 ft (0.3 m): common practice, no source",
  limits: "Every strip is a full roll width; what the last strip leaves over is not used again.",
  args: {
    length: quantity("length", "Length to cover", SIDE),
    width: quantity("length", "Width to cover", SIDE),
    roll_width: quantity("length", "Width of the roll", FABRIC_RANGE.rollWidth),
    lap: optional(quantity("length", "Lap between strips", FABRIC_RANGE.lap), "1 ft | 0.3 m", {
      US: 1,
      SI: 0.3,
    }),
    layers: optional(number("Layers", { above: 0, max: 10 }, { whole: true }), "1", 1),
  },
  result: tableResult("the fabric strips", [
    { title: "Strips run" },
    { title: "Strips" },
    { title: "Strip length", measure: "length" },
    { title: "Length to buy", measure: "length" },
    { title: "Area to buy", measure: "area" },
  ]),
  examples: [
    {
      args: [17, 15, 6, 1, 2],
      gives: [
        { at: [1, 0], is: "along" },
        { at: [1, 1], is: 6 },
        { at: [1, 2], is: 17 },
        { at: [1, 3], is: 102 },
        { at: [1, 4], is: 612 },
      ],
      within: 1e-9,
      from: "by hand: along (15 − 1)/(6 − 1) = 2.8, 3 strips of 17 ft = 51 ft; across (17 − 1)/5 = 3.2, 4 of 15 ft = 60 ft; two layers of 51 ft",
    },
  ],
  compute({ length, width, roll_width, lap, layers }) {
    const { run, strips, stripLength, totalLength, area } = fabricCut(length, width, roll_width, lap, layers);
    return [[run, strips, stripLength, totalLength, area]];
  },
});
