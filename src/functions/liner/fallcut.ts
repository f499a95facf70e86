import { FALL_RANGE, fallCut } from "../../calc/liner/fall";
import { sheetWeight } from "../../calc/liner/weight";
import { USUAL_LINER_WEIGHT } from "../../calc/tables/sheets";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { aboveZero } from "../contract/range";
import { quantity } from "../contract/scalars";
import { list } from "../contract/tables";
import { CARRYING_CAUTION, overlap, roundTo, SIDE } from "./arguments";
import { cutResult } from "./cutResult";

// Blank rows of a fixed table can arrive as 0; they are no drops.
const STEP = aboveZero(FALL_RANGE.step);

export const FALLCUT = declare({
  name: "FALLCUT",
  topic: "liner",
  summary: "Sizes the liner of a stepped bed along its drops and treads, with slack at each drop, banks and overlaps.",
  formula:
    "along = Σ drops + Σ treads + slack × number of drops + 2 × overlap; across = bed width + 2 × bank height + 2 × overlap; each rounded up",
  source: "Geometry. Overlap and slack: common practice, no source. Weight: 0.29 lb/ft² of 45 mil EPDM, from memory",
  limits:
    "The bed is taken as straight in plan; give a curved bed its length along the outer bank. A piece wider than a roll " +
    "needs a seam or a wider roll.",
  caution: CARRYING_CAUTION,
  args: {
    drops: list("Height of each drop", quantity("length", "Drop", STEP), { most: 200 }),
    treads: list("Length of each tread", quantity("length", "Tread", STEP), { most: 200 }),
    bed_width: quantity("length", "Width of the bed", SIDE),
    bank_height: quantity("length", "Height the sheet climbs each bank", FALL_RANGE.bank),
    overlap,
    slack_per_drop: optional(quantity("length", "Loose sheet at each drop", FALL_RANGE.slack), "0.25 ft | 0.08 m", {
      US: 0.25,
      SI: 0.08,
    }),
    round_to: roundTo,
  },
  result: cutResult("the size of the liner along the fall"),
  examples: [
    {
      args: [[[8 / 12], [8 / 12], [8 / 12], [8 / 12], [8 / 12]], [[1.5], [1.5], [1.5], [1.5], [1.5]], 3, 0.75, 1, 0.25],
      gives: [
        { at: [1, 0], is: 14.5 },
        { at: [1, 1], is: 6.5 },
        { at: [1, 2], is: 94.25 },
      ],
      within: 1e-9,
      from: "by hand: 5 × 8 in + 5 × 18 in = 10.8333 ft; + 5 × 0.25 + 2 = 14.083, up to 14.5 ft; 3 + 1.5 + 2 = 6.5 ft",
    },
  ],
  compute({ drops, treads, bed_width, bank_height, overlap, slack_per_drop, round_to }) {
    const cut = fallCut({
      drops,
      treads,
      bedWidth: bed_width,
      bankHeight: bank_height,
      overlap,
      slackPerDrop: slack_per_drop,
      roundTo: round_to,
    });
    const area = cut.length * cut.width;
    return [[cut.length, cut.width, area, sheetWeight(area, USUAL_LINER_WEIGHT)]];
  },
});
