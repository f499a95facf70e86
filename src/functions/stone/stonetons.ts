import { BULK_RANGE } from "../../calc/stone/bulk";
import { stoneWeight } from "../../calc/stone/bulk";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { stone, waste } from "./arguments";

export const STONETONS = declare({
  name: "STONETONS",
  topic: "stone",
  summary: "Gives the weight of loose stone that fills a volume, such as the space around void modules.",
  formula: "W = V × density × (1 + waste); US: short tons of 2,000 lb, SI: tonnes of 1,000 kg",
  source:
    "Definition of bulk density (ASTM C29). Densities: US EPA volume-to-weight factors (crushed stone 2,700 lb/yd³) " +
    "and the sources named in the density table",
  limits:
    "The volume is the space to fill, gaps between the stones included; take modules and pump well off first. " +
    "Densities are of dry, loose stone; your quarry's own figure is better than any table.",
  args: {
    volume: quantity("earth", "Space to fill", BULK_RANGE.volume),
    stone,
    waste,
  },
  result: quantityResult("load", "the weight of the stone"),
  examples: [
    {
      args: [10, "crushed stone"],
      gives: 13.5,
      within: 1e-6,
      from: "US EPA volume-to-weight factors: crushed stone 2,700 lb/yd³; × 10 yd³ / 2,000 lb = 13.5 ton",
    },
    {
      args: [2.4, "1.45 t/m3", 0.05, "SI"],
      gives: 3.654,
      within: 1e-9,
      from: "by hand: 2.4 m³ × 1.45 t/m³ × 1.05 = 3.654 t",
    },
  ],
  compute: ({ volume, stone, waste }) => stoneWeight(volume, stone, waste),
});
