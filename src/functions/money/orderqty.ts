import { ORDER_RANGE, orderQuantity } from "../../calc/money/orderQuantity";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { numberResult } from "../contract/result";
import { number, share } from "../contract/scalars";

export const ORDERQTY = declare({
  name: "ORDERQTY",
  topic: "money",
  summary: "Gives the quantity to order: the need with waste, rounded up to whole packs, at least the minimum.",
  formula: "packs = ⌈max(need × (1 + waste), minimum) / pack⌉; order = packs × pack; a millionth of a pack is ignored",
  source: "Arithmetic; waste as an add-on to the need: common practice, no source",
  limits: "Waste is added to the need (100 and 10% make 110), not taken as a yield. Nothing needed orders nothing.",
  args: {
    need: number("Quantity needed in place, in the unit of sale", { min: 0, max: ORDER_RANGE.need }),
    waste: optional(share("Waste as a share of the need", { min: 0, max: ORDER_RANGE.waste }), "0", 0),
    pack: optional(number("Quantity in one pack", { above: 1e-6, max: ORDER_RANGE.pack }), "1", 1),
    minimum: optional(number("Least quantity the supplier sells", { min: 0, max: ORDER_RANGE.need }), "0", 0),
  },
  result: numberResult("the quantity to order"),
  examples: [
    { args: [23.2, null, 5], gives: 25, within: 0, from: "by hand: 23.2 / 5 is 4.64, so 5 packs of 5" },
    { args: [100, "10%", 10], gives: 110, within: 0, from: "by hand: 110 is 11 packs of 10 exactly, never 12" },
    { args: [3, null, 0.5, 8], gives: 8, within: 0, from: "by hand: the supplier's least load of 8 is 16 half tons" },
  ],
  compute: ({ need, waste, pack, minimum }) => orderQuantity(need, waste, pack, minimum),
});
