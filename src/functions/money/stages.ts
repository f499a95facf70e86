import { fromCents, LARGEST_AMOUNT, toCents } from "../../calc/money/cents";
import { splitIntoStages } from "../../calc/money/stages";
import { declare } from "../contract/declaration";
import { tableResult } from "../contract/result";
import { number, share } from "../contract/scalars";
import { list } from "../contract/tables";
import { currency, digitsOf } from "./arguments";

export const STAGES = declare({
  name: "STAGES",
  topic: "money",
  summary: "Splits a total into payment stages that add up to it to the cent, or to the currency's own smallest unit.",
  formula:
    "each stage = whole cents of total × share; cents left over go to the largest remainders, earlier stages first",
  source: "Largest-remainder method (Hamilton), any text on apportionment",
  limits: "The shares must add up to 1. A blank share is a stage that is not used: its row stays, with amount 0.",
  args: {
    total: number("Total to split, in money", { min: 0, max: LARGEST_AMOUNT }),
    shares: list("Share of each stage; together 1", share("Share"), { most: 100, blankAs: 0 }),
    currency,
  },
  result: tableResult("the payment stages", [
    { title: "Stage" },
    { title: "Share" },
    { title: "Amount" },
    { title: "Paid so far" },
  ]),
  examples: [
    {
      args: [100, [[0.5], [0.25], [0.25]]],
      gives: [
        { at: [1, 2], is: 50 },
        { at: [3, 3], is: 100 },
      ],
      within: 0,
      from: "by hand: 50 + 25 + 25",
    },
    {
      args: [1000.01, [["30%"], ["30%"], ["40%"]]],
      gives: [
        { at: [1, 2], is: 300 },
        { at: [2, 2], is: 300 },
        { at: [3, 2], is: 400.01 },
      ],
      within: 0,
      from: "by hand: 300.003, 300.003 and 400.004; the one cent left goes to the largest remainder, 0.4 cents",
    },
    {
      args: [100_001, [["30%"], ["30%"], ["40%"]], "JPY"],
      gives: [
        { at: [1, 2], is: 30_000 },
        { at: [3, 2], is: 40_001 },
      ],
      within: 0,
      from: "by hand, yen: 30,000.3, 30,000.3 and 40,000.4; the one yen left goes to the largest remainder, 0.4",
    },
  ],
  compute({ total, shares, currency: said }) {
    const digits = digitsOf(said);
    let soFar = 0;
    return splitIntoStages(toCents(total, "total", digits), shares).map((cents, index) => {
      soFar += cents;
      return [index + 1, shares[index] ?? 0, fromCents(cents, digits), fromCents(soFar, digits)];
    });
  },
});
