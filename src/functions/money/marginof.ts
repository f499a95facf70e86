import { MARKUP_RANGE, marginOf } from "../../calc/money/margin";
import { declare } from "../contract/declaration";
import { numberResult } from "../contract/result";
import { share } from "../contract/scalars";

export const MARGINOF = declare({
  name: "MARGINOF",
  topic: "money",
  summary: "Gives the gross margin (share of the price) that a markup on cost brings.",
  formula: "margin = markup / (1 + markup)",
  source: "Definition: price = cost × (1 + markup) = cost / (1 - margin)",
  limits: "Exact. Markup is a share of cost, margin a share of the price; they are never the same number.",
  args: { markup: share("Markup as a share of cost", MARKUP_RANGE) },
  result: numberResult("the gross margin as a share of the price"),
  examples: [
    { args: [0.25], gives: 0.2, within: 1e-9, from: "by hand: cost 100, price 125; 25 of 125 is 0.2" },
    { args: ["50%"], gives: 0.333333, within: 1e-5, from: "by hand: cost 100, price 150; 50 of 150 is 1/3" },
  ],
  compute: ({ markup }) => marginOf(markup),
});
