import { scopeClashes } from "../../calc/money/scopeClash";
import { declare } from "../contract/declaration";
import { textResult } from "../contract/result";
import { text } from "../contract/scalars";
import { list } from "../contract/tables";

const sentence = text("Sentence", { longest: 250 });

export const SCOPECLASH = declare({
  name: "SCOPECLASH",
  topic: "money",
  summary: "Finds work that a quote both prices and excludes, and says where.",
  formula: "the same work: two sentences that share the first 5 letters of a word of 5 or more",
  source: "Common practice, no source",
  limits:
    "It compares words, not meanings: it misses synonyms. Words that every such sentence holds (stone, water, pump …) do not " +
    'count. An exclusion with "beyond" or "other than" in it says itself what stays in the price and is passed over.',
  args: {
    excluded: list("What is not in the price, a sentence a cell", sentence, { most: 100 }),
    priced: list("What the priced lines are called", sentence),
  },
  result: textResult("the first clash in words, or nothing"),
  examples: [
    {
      args: [
        [["Rock."], ["Permits."]],
        [["Marsh plants"], ["Building permit"]],
      ],
      gives: '"Permits." is excluded and "Building permit" is priced',
      within: 0,
      from: 'by hand: "permits" and "permit" begin with the same 5 letters, and no other two words do',
    },
  ],
  compute({ excluded, priced }) {
    const [first] = scopeClashes(excluded, priced);
    return first ? `"${first.excluded}" is excluded and "${first.priced}" is priced` : "";
  },
});
