import { LARGEST_AMOUNT, roundCents } from "../../calc/money/cents";
import { CONFIDENCE_RANGE, costOdds } from "../../calc/money/costOdds";
import { plain } from "../../calc/problem";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult } from "../contract/result";
import { number, share } from "../contract/scalars";
import { table } from "../contract/tables";

const money = { min: 0, max: LARGEST_AMOUNT } as const;

export const COSTODDS = declare({
  name: "COSTODDS",
  topic: "money",
  summary: "Gives the mean and spread of uncertain costs, and the cost you will keep with a given confidence.",
  formula:
    "per item mean = (low + 4 likely + high) / 6, spread = (high - low) / 6; means add, spreads add as squares; cost = mean + z × spread",
  source:
    "PERT three-point estimate (Malcolm et al., 1959; from memory); the sum taken as normal (central limit theorem)",
  limits:
    "A normal approximation for items that do not depend on each other: good to a few percent of the spread from about five items of like size on. " +
    "Costs that rise together (fuel, weather, one slow crew) spread wider.",
  args: {
    items: table("Uncertain costs: low, likely, high", {
      low: number("Lowest cost", money),
      likely: number("Likeliest cost", money),
      high: number("Highest cost", money),
    }),
    confidence: optional(share("Chance of keeping the cost", CONFIDENCE_RANGE), "0.8", 0.8),
  },
  result: tableResult("the odds of the cost", [{ title: "Cost" }, { title: "Amount" }]),
  examples: [
    {
      args: [
        [
          [2, 3, 5],
          [5, 8, 14],
          [3, 4, 6],
          [1, 2, 3],
        ],
        0.5,
      ],
      gives: [
        { at: [3, 1], is: 17.83 },
        { at: [4, 1], is: 1.69 },
        { at: [5, 1], is: 17.83 },
      ],
      within: 0.0005,
      from: "schematex PERT example: 17.83 days, sigma 1.69; at even odds the mean itself",
    },
  ],
  compute({ items, confidence }) {
    const odds = costOdds(items, confidence);
    const rows: readonly (readonly [string, number])[] = [
      ["Lowest", odds.low],
      ["Likeliest", odds.likely],
      ["Mean", odds.mean],
      ["Spread (standard deviation)", odds.spread],
      [`Kept with ${plain(confidence * 100)} % confidence`, odds.atConfidence],
      ["Reserve over the likeliest", Math.max(0, odds.atConfidence - odds.likely)],
    ];
    return rows.map(([label, amount]) => [label, roundCents(amount, "sum of the items")]);
  },
});
