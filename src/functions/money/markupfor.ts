import { MARGIN_RANGE, markupFor } from "../../calc/money/margin";
import { declare } from "../contract/declaration";
import { numberResult } from "../contract/result";
import { share } from "../contract/scalars";

export const MARKUPFOR = declare({
  name: "MARKUPFOR",
  topic: "money",
  summary: "Gives the markup on cost that a wanted gross margin (share of the price) needs.",
  formula: "markup = margin / (1 - margin)",
  source: "Definition: price = cost × (1 + markup) = cost / (1 - margin)",
  limits: "Exact. Using the margin itself as the markup prices too low: at a margin of 0.35 by 12% of the price.",
  args: { margin: share("Gross margin as a share of the price", MARGIN_RANGE) },
  result: numberResult("the markup as a share of cost"),
  examples: [
    { args: [0.2], gives: 0.25, within: 1e-9, from: "by hand: cost 80 of a price of 100; 20 on 80 is 0.25" },
    { args: ["35%"], gives: 0.538462, within: 1e-5, from: "by hand: 0.35 / 0.65" },
  ],
  compute: ({ margin }) => markupFor(margin),
});
