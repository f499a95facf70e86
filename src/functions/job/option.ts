import { declare } from "../contract/declaration";
import { tableResult } from "../contract/result";
import { changes, facts, INVENTED, prices, pumps, values } from "./arguments";
import { drafting } from "./later";

export const OPTION = declare({
  name: "OPTION",
  topic: "job",
  summary: "Sets a drafted job beside the same job with some facts changed: price, margin, flow, stone, days and pump.",
  formula:
    "both jobs drafted as by DRAFT (or, with values, taken as the workbook holds them) and calculated whole; difference = changed - as it is",
  source: "As DRAFT; the difference by arithmetic",
  limits: `Before tax. Whatever follows from a changed fact changes with it, unless it stands among the facts. ${INVENTED}`,
  args: { facts, changes, values, prices, pumps },
  result: tableResult("the options", [
    { title: "What" },
    { title: "As it is" },
    { title: "Changed" },
    { title: "Difference" },
  ]),
  examples: [
    {
      args: [
        [
          ["fall", 2.75],
          ["run", 12],
          ["lip", 24],
        ],
        [["lip", 24]],
      ],
      gives: [
        { at: [1, 0], is: "Price" },
        { at: [1, 3], is: 0 },
        { at: [5, 3], is: 0 },
      ],
      within: 0.0001,
      from: "by hand: the same lip is no change, and no change makes no difference",
    },
  ],
  later: drafting,
  compute: ({ changes: changed, ...asked }, system) => drafting.now.option(asked, changed, system),
});
