import { declare } from "../contract/declaration";
import { tableResult } from "../contract/result";
import { facts, INVENTED, prices, pumps, values } from "./arguments";
import { drafting } from "./later";

export const DRAFT = declare({
  name: "DRAFT",
  topic: "job",
  summary: "Drafts a whole job from a few answers: every fact that you left open, with low, high and the reason.",
  formula:
    "a rule for each fact: drops of 6 to 8 in; flow Q = C L H^1.5 of lip and sheet; pipe and pump cheapest to own that deliver; " +
    "the cheapest basin that holds drain-back, a week of loss and an inch of rain",
  source: "Common practice where a reason names nothing else; formulas and tables as in the functions for each topic",
  limits:
    "One site in ten lies below low, one in ten above high: rules of thumb, not measurements. What you typed always wins. " +
    INVENTED,
  args: { facts, values, prices, pumps },
  result: tableResult("the draft", [
    { title: "Fact" },
    { title: "Value" },
    { title: "Low" },
    { title: "High" },
    { title: "Unit" },
    { title: "Reason" },
  ]),
  examples: [
    {
      args: [
        [
          ["fall", 2.75],
          ["run", 12],
          ["lip", 24],
        ],
      ],
      gives: [
        { at: [4, 0], is: "DropCount" },
        { at: [4, 1], is: 5 },
      ],
      within: 0.0001,
      from: "by hand: 33 in / 5 = 6.6 in, between 6 and 8 in and nearest to 7",
    },
  ],
  later: drafting,
  compute: (asked, system) => drafting.now.drafted(asked, system),
});
