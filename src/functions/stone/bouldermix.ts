import { HAND_LIMIT, MIX_RANGE } from "../../calc/stone/mix";
import { aboveZero } from "../contract/range";
import { boulderMix } from "../../calc/stone/mix";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { quantity, share } from "../contract/scalars";
import { table } from "../contract/tables";
import { LIFTING_CAUTION, rock, TONS } from "./arguments";

export const BOULDERMIX = declare({
  name: "BOULDERMIX",
  topic: "stone",
  summary: "Splits tons of boulders into sizes: how many of each, what one weighs, and which need a machine.",
  formula: "weight = share × total; each = π/6 × rock density × size³; count = weight / each, rounded up",
  source:
    "W = π/6 γ D³: USACE, Streambank Manual, appendix A, Eq. A.1. Hand limit: NIOSH lifting equation (1994), 51 lb (23 kg) under ideal conditions",
  limits:
    "Size is the diameter of a ball of the stone's volume; real stones scatter by a third in weight. " +
    "Shares are of weight and must add up to 100 %. Counts are rounded up, so they weigh a little more than the total.",
  caution: LIFTING_CAUTION,
  args: {
    tons: quantity("load", "Weight of all boulders", TONS),
    mix: table("Sizes", {
      size: quantity("size", "Mean diameter", MIX_RANGE.size),
      share: share("Share of the weight"),
    }),
    rock,
    hand_limit: optional(quantity("weight", "Most one person lifts", aboveZero(HAND_LIMIT)), "50 lb | 23 kg", {
      US: 50,
      SI: 23,
    }),
  },
  result: tableResult("the stones by size", [
    { title: "Size", measure: "size" },
    { title: "Share" },
    { title: "Weight", measure: "load" },
    { title: "Each", measure: "weight" },
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
        { at: [1, 3], is: 86.39 },
        { at: [1, 4], is: 12 },
        { at: [2, 3], is: 691.2 },
        { at: [2, 4], is: 5 },
        { at: [3, 0], is: "Total" },
        { at: [3, 2], is: 2 },
        { at: [3, 4], is: 17 },
      ],
      within: 0.0005,
      from:
        "by hand: π/6 × 165 × 1³ = 86.39 lb, 1,000 / 86.39 = 11.6, so 12; " +
        "π/6 × 165 × 2³ = 691.2 lb, 3,000 / 691.2 = 4.3, so 5; 12 + 5 = 17",
    },
  ],
  compute({ tons, mix, rock, hand_limit }) {
    const parts = boulderMix(tons, mix, rock, hand_limit);
    const rows = parts.map(({ size, share, weight, each, count, tooHeavyByHand }): TableCell[] => [
      size,
      share,
      weight,
      each,
      count,
      tooHeavyByHand ? "Machine and rigging" : "By hand",
    ]);
    const count = parts.reduce((all, part) => all + part.count, 0);
    return [...rows, ["Total", 1, tons, "", count, ""]];
  },
});
