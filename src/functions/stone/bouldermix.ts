import { WEIGHT_ERROR } from "../../calc/stone/boulder";
import { boulderMix, HAND_LIMIT, MIX_RANGE } from "../../calc/stone/mix";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { aboveZero } from "../contract/range";
import { tableResult, type TableCell } from "../contract/result";
import { quantity, share } from "../contract/scalars";
import { table } from "../contract/tables";
import { LIFTING_CAUTION, rockRange, shape, TONS } from "./arguments";

export const BOULDERMIX = declare({
  name: "BOULDERMIX",
  topic: "stone",
  summary: "Splits tons of boulders into sizes: how many of each, what one weighs, and which need a machine.",
  formula:
    "weight = share × total; each = k × rock density × size³, k: rounded π/6, angular 0.76, box 1; " +
    "lightest: π/6, lowest density; heaviest: the whole box, highest density; count = weight / each, rounded up or down",
  source:
    "W = π/6 γ D³: USACE, Streambank Manual, appendix A, Eq. A.1. Hand limit: NIOSH lifting equation (1994), 51 lb (23 kg) under ideal conditions",
  limits:
    `Size is the mean of a stone's length, width and height; its weight is good to ${WEIGHT_ERROR}. By hand is only what at its ` +
    "heaviest keeps within the hand limit. Shares are of weight and must add up to 100%. Counts are less than one stone from their " +
    "share and, all together, at most half of the biggest stone from the total; a size with too few tons for one gets none.",
  caution: LIFTING_CAUTION,
  args: {
    tons: quantity("load", "Weight of all boulders", TONS),
    mix: table("Sizes", {
      size: quantity("size", "Mean of length, width and height", MIX_RANGE.size),
      share: share("Share of the weight"),
    }),
    rock: rockRange,
    hand_limit: optional(quantity("weight", "Most one person lifts", aboveZero(HAND_LIMIT)), "50 lb | 23 kg", {
      US: 50,
      SI: 23,
    }),
    shape,
  },
  result: tableResult("the stones by size", [
    { title: "Size", measure: "size" },
    { title: "Share" },
    { title: "Weight", measure: "load" },
    { title: "Each", measure: "weight" },
    { title: "Lightest", measure: "weight" },
    { title: "Heaviest", measure: "weight" },
    { title: "Count" },
    { title: "Lifting" },
  ]),
  examples: [
    {
      args: [
        2,
        [
          [12, 0.25],
          [24, 0.75],
        ],
        "165 lb/ft3",
      ],
      gives: [
        { at: [1, 2], is: 0.5 },
        { at: [1, 3], is: 125.7 },
        { at: [1, 4], is: 86.39 },
        { at: [1, 5], is: 165 },
        { at: [1, 6], is: 8 },
        { at: [2, 3], is: 1005.6 },
        { at: [2, 6], is: 3 },
        { at: [3, 0], is: "Total" },
        { at: [3, 2], is: 2 },
        { at: [3, 6], is: 11 },
      ],
      within: 0.0005,
      from:
        "by hand: 0.7618 × 165 × 2³ = 1,005.6 lb, 3,000 / 1,005.6 = 2.98, so 3; " +
        "0.7618 × 165 × 1³ = 125.7 lb, 1,000 / 125.7 = 7.96, so 8; as ellipsoid 86.39, as box 165 lb; 8 + 3 = 11",
    },
  ],
  compute({ tons, mix, rock, hand_limit, shape }) {
    const parts = boulderMix(tons, mix, rock, hand_limit, shape);
    const rows = parts.map(({ size, share, weight, each, light, heavy, count, tooHeavyByHand }): TableCell[] => [
      size,
      share,
      weight,
      each,
      light,
      heavy,
      count,
      tooHeavyByHand ? "Machine and rigging" : "By hand",
    ]);
    const count = parts.reduce((all, part) => all + part.count, 0);
    return [...rows, ["Total", 1, tons, "", "", "", count, ""]];
  },
});
