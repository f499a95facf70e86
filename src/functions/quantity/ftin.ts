import { formatFeetInches, TAPE_FRACTIONS } from "../../calc/quantity/feetInches";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { textResult } from "../contract/result";
import { number, quantity } from "../contract/scalars";

export const FTIN = declare({
  name: "FTIN",
  topic: "quantity",
  summary: "Writes a length as feet, inches and the nearest fraction of an inch, as a tape reads.",
  formula: "steps = round(inches × nearest), half away from zero; then carried into whole inches and feet",
  source: "Arithmetic: 1 ft = 12 in = 0.3048 m (NIST SP 811, appendix B.8)",
  limits: "Rounds to the nearest fraction, so the text can be off by half of it; keep the number for calculations.",
  args: {
    length: quantity("length", "Length to write", { min: -30_480, max: 30_480 }),
    nearest: optional(
      number(`Parts of an inch: ${TAPE_FRACTIONS.join(", ")}`, { above: 0, max: 64 }, { whole: true }),
      "16",
      16,
    ),
  },
  result: textResult("the length as feet, inches and a fraction"),
  examples: [
    {
      args: [2.5416666667],
      gives: "2'-6 1/2\"",
      within: 0,
      from: "by hand: 0.5416667 ft × 12 = 6.5 in",
    },
    {
      args: [5.99999],
      gives: "6'-0\"",
      within: 0,
      from: "by hand: 5.99999 ft is 71.99988 in; to the nearest 1/16 it carries to 72 in",
    },
  ],
  compute: ({ length, nearest }) => formatFeetInches(length, nearest),
});
