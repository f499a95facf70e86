import { SHEET_RANGE } from "../../calc/liner/liner";
import { linerCut } from "../../calc/liner/liner";
import { sheetWeight } from "../../calc/liner/weight";
import { USUAL_LINER_WEIGHT } from "../../calc/tables/sheets";
import { declare } from "../contract/declaration";
import { quantity } from "../contract/scalars";
import { CARRYING_CAUTION, overlap, roundTo, SIDE, sideSlope } from "./arguments";
import { cutResult } from "./cutResult";

export const LINERCUT = declare({
  name: "LINERCUT",
  topic: "liner",
  summary: "Sizes the liner of a basin: bottom, developed sides and overlaps, rounded up, with area and weight.",
  formula: "length + 2 × depth × √(1 + side slope²) + 2 × overlap, and the same with the width; each rounded up",
  source:
    "Geometry. Overlap of 1 ft (0.3 m): common practice, no source. Weight: 0.29 lb/ft² of 45 mil EPDM, from memory",
  limits:
    "Length and width are those of the bottom; the corners are folded, not cut. Loose ground and folds take up sheet, " +
    "which is what the overlap is for. Other liners weigh differently.",
  caution: CARRYING_CAUTION,
  args: {
    length: quantity("length", "Length of the bottom", SIDE),
    width: quantity("length", "Width of the bottom", SIDE),
    depth: quantity("length", "Depth from rim to bottom", SHEET_RANGE.depth),
    overlap,
    side_slope: sideSlope,
    round_to: roundTo,
  },
  result: cutResult("the size of the liner"),
  examples: [
    {
      args: [10, 8, 2.5, 1],
      gives: [
        { at: [1, 0], is: 17 },
        { at: [1, 1], is: 15 },
        { at: [1, 2], is: 255 },
        { at: [1, 3], is: 73.95 },
      ],
      within: 1e-9,
      from: "by hand: 10 + 2 × 2.5 + 2 × 1 = 17 ft; 8 + 5 + 2 = 15 ft; 17 × 15 = 255 ft²; 255 × 0.29 = 73.95 lb",
    },
    {
      args: [6, 4, 2.5, 1, 0.5, "1 in"],
      gives: [{ at: [1, 0], is: 13 + 8 / 12 }],
      within: 1e-9,
      from: "by hand: 6 + 2 × 2.79508 + 2 = 13.59017 ft = 13 ft 7.08 in, up to 13 ft 8 in",
    },
  ],
  compute({ length, width, depth, overlap, side_slope, round_to }) {
    const cut = linerCut({ length, width, depth, overlap, sideSlope: side_slope, roundTo: round_to });
    const area = cut.length * cut.width;
    return [[cut.length, cut.width, area, sheetWeight(area, USUAL_LINER_WEIGHT)]];
  },
});
