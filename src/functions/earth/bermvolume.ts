import { bermVolume } from "../../calc/earth/earthworks";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { bermSlope, DEPTH, SIDE } from "./arguments";

export const BERMVOLUME = declare({
  name: "BERMVOLUME",
  topic: "earth",
  summary: "Gives the compacted volume of a berm from its crest, height and side slope, its ends square.",
  formula: "V = (crest width + z × height) × height × crest length; z = run per 1 of height",
  source: "Area of a trapezoid times length, any surveying text. Usual slope 2 to 1: common practice, no source",
  limits:
    "Compacted volume, as it stands; digging and hauling differ (see SOILBALANCE). The ends count as square; " +
    "for a free-standing berm that slopes at its ends too, take PITVOLUME with the crest's length and width.",
  caution: "Build it in compacted layers; loose fill under a spillway box settles and tilts the lip.",
  args: {
    crest_length: quantity("length", "Length of the crest", SIDE),
    crest_width: quantity("length", "Width of the crest", SIDE),
    height: quantity("length", "Height", DEPTH),
    side_slope: bermSlope,
  },
  result: quantityResult("earth", "the compacted volume of the berm"),
  examples: [
    {
      args: [15, 2, 2, 2],
      gives: 6.6667,
      within: 1e-5,
      from: "by hand: (2 + 2 × 2) × 2 = 12 ft²; × 15 ft = 180 ft³; / 27 = 6.667 yd³",
    },
    {
      args: [4, 1, 0.5, 1.5, "SI"],
      gives: 3.5,
      within: 1e-12,
      from: "by hand: (1 + 1.5 × 0.5) × 0.5 = 0.875 m²; × 4 m = 3.5 m³",
    },
  ],
  compute: ({ crest_length, crest_width, height, side_slope }) =>
    bermVolume(crest_length, crest_width, height, side_slope),
});
