import { LARGEST_AMOUNT, roundMoney } from "../../calc/money/cents";
import { CONFIDENCE_RANGE, CORRELATION_RANGE, costOdds, MOST_ITEMS } from "../../calc/money/odds/costOdds";
import { plain } from "../../calc/problem";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult } from "../contract/result";
import { number, share } from "../contract/scalars";
import { table } from "../contract/tables";
import { currency, digitsOf } from "./arguments";

const money = { min: 0, max: LARGEST_AMOUNT } as const;

export const COSTODDS = declare({
  name: "COSTODDS",
  topic: "money",
  summary: "Gives the mean and spread of uncertain costs, and the cost you will keep with a given confidence.",
  formula:
    "each item is beta-PERT: density ∝ t^(a-1) (1-t)^(5-a), t = (cost - low) / (high - low), a = 1 + 4 (likely - low) / (high - low); " +
    "mean = (low + 4 likely + high) / 6; the sum by convolution; kept cost: the stated share of all sums lies at or below it",
  source:
    "PERT three-point estimate (Malcolm et al., Operations Research 7, 1959; from memory) and its beta distribution; " +
    "correlation by one common normal factor: common practice, no source",
  limits:
    "The stated share is kept to 0.2% of all cases, if costs are as the three guesses say: what nobody thought of is in no guess. " +
    "At correlation 0 items do not depend on each other, and highs and lows offset. One wet month, one slow crew or dearer fuel hits every line: " +
    "a correlation widens the spread. 0.3 is common practice, no source; 1 is all lines good or all bad together.",
  args: {
    items: table(
      "Uncertain costs: low, likely, high",
      {
        low: number("Lowest cost", money),
        likely: number("Likeliest cost", money),
        high: number("Highest cost", money),
      },
      { mostRows: MOST_ITEMS },
    ),
    confidence: optional(share("Chance of keeping the cost", CONFIDENCE_RANGE), "0.8", 0.8),
    correlation: optional(share("How much costs rise and fall together", CORRELATION_RANGE), "0, independent", 0),
    currency,
  },
  result: tableResult("the odds of the cost", [{ title: "Cost" }, { title: "Amount" }]),
  examples: [
    {
      args: [[[100, 100, 200]], 0.8],
      gives: [
        { at: [3, 1], is: 116.67 },
        { at: [4, 1], is: 14.09 },
        { at: [5, 1], is: 127.52 },
      ],
      within: 0.0001,
      from: "by hand: mean (100 + 400 + 200) / 6; spread √(16.67 × 83.33 / 7); likely at the low end keeps 100 + 100 (1 - 0.2^(1/5))",
    },
    {
      args: [
        [
          [90, 100, 110],
          [40, 50, 60],
        ],
        0.5,
        0.3,
      ],
      gives: [{ at: [5, 1], is: 150 }],
      within: 0.0001,
      from: "by hand: symmetric costs keep their mean at even odds, correlated or not",
    },
    {
      args: [[[100, 100, 200]], 0.8, 0, "JPY"],
      gives: [{ at: [3, 1], is: 117 }],
      within: 0,
      from: "by hand, yen: mean (100 + 400 + 200) / 6 = 116.67",
    },
  ],
  compute({ items, confidence, correlation, currency: said }) {
    const odds = costOdds(items, confidence, correlation);
    const rows: readonly (readonly [string, number])[] = [
      ["Lowest", odds.low],
      ["Likeliest", odds.likely],
      ["Mean", odds.mean],
      ["Spread (standard deviation)", odds.spread],
      [`Kept with ${plain(confidence * 100)}% confidence`, odds.atConfidence],
      ["Reserve over the likeliest", Math.max(0, odds.atConfidence - odds.likely)],
    ];
    return rows.map(([label, amount]) => [label, roundMoney(amount, digitsOf(said), "sum of the items")]);
  },
});
