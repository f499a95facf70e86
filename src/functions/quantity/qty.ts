import { invalid } from "../../calc/problem";
import { readQuantity } from "../../calc/quantity/readQuantity";
import { declare } from "../contract/declaration";
import { numberResult } from "../contract/result";
import { text } from "../contract/scalars";
import { requireUnit } from "../../calc/quantity/units";

export const QTY = declare({
  name: "QTY",
  topic: "quantity",
  summary:
    "Reads a quantity written as text, such as 9'4, 2' 6 1/2\" or 12 ft + 8 ft 6 in, and gives it in the unit you name.",
  formula: "sum of the terms, each converted to the unit; terms side by side (2 ft 6 in) add up",
  source: "Unit factors: NIST SP 811 (2008), appendix B.8, through the mathjs unit library",
  limits:
    "A comma before three digits groups thousands (1,250 gph is 1250); before any other number of digits, and behind a " +
    "leading zero (0,750 m3), it is a decimal comma. A bare number behind feet is inches (9'4, 9 ft 4); a number without " +
    "a unit is taken in the unit you name. What can mean two things (9-4, 1,250 m) is refused with both.",
  args: {
    text: text("Quantity to read, such as 2' 6 1/2\", 45 cm, 40 gpm"),
    unit: text("Unit of the result, such as ft, in, m, gph, L/h, yd3, ton", { longest: 40 }),
  },
  result: numberResult("the quantity in the unit"),
  examples: [
    {
      args: ["2' 6 1/2\"", "in"],
      gives: 30.5,
      within: 1e-9,
      from: "by hand: 2 × 12 + 6.5 = 30.5 in",
    },
    {
      args: ["40 gpm", "gph"],
      gives: 2400,
      within: 1e-9,
      from: "by hand: 40 × 60 min/h = 2,400 gph",
    },
  ],
  compute({ text: written, unit }) {
    requireUnit(unit);
    if (!/\d|[½¼¾⅓⅔⅛⅜⅝⅞]/.test(written)) {
      throw invalid(`text must hold a number with its unit, such as 12 ft 6 in; got "${written.slice(0, 40)}"`);
    }
    return readQuantity(written, unit);
  },
});
