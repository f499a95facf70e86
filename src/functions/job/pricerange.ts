import { declare } from "../contract/declaration";
import { tableResult } from "../contract/result";
import { facts, INVENTED, prices, pumps, values } from "./arguments";
import { drafting } from "./later";

export const PRICERANGE = declare({
  name: "PRICERANGE",
  topic: "job",
  summary: "Prices a drafted job with its 80% range, names its main numbers, and ranks what to measure next.",
  formula:
    "price of DRAFT with every fact as likely; low and high: one job in ten below and above, from what the price is multiplied by " +
    "when each fact stands at its lowest and highest tenth, and from trials that move all facts at once",
  source: "Effects laid together by draws from the normal curve; which facts go together: common practice, no source",
  limits:
    "Before tax. The share kept is 80% on average, on one job within about 5 points of it. Facts that nobody drafts, such as hidden rock, " +
    `are in no range. ${INVENTED}`,
  args: { facts, values, prices, pumps },
  result: tableResult("the price range", [
    { title: "What" },
    { title: "Value" },
    { title: "Unit" },
    { title: "Price if low" },
    { title: "Price if high" },
    { title: "Share of range" },
  ]),
  examples: [
    {
      args: [[["fall", 2.75]]],
      gives: [
        { at: [1, 0], is: "Low" },
        { at: [2, 0], is: "Likely" },
        { at: [3, 0], is: "High" },
      ],
      within: 0.0001,
      from: "the order of the rows; the range itself is held against plain draws of whole drafts in the tests",
    },
  ],
  later: drafting,
  compute: (asked, system) => drafting.now.ranged(asked, system),
  ahead: (asked, system) => drafting.now.rangeAhead(asked, system),
});
