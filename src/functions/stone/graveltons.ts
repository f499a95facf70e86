import { gravelWeight } from "../../calc/stone/bulk";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { AREA, stone, THICKNESS, waste } from "./arguments";

export const GRAVELTONS = declare({
  name: "GRAVELTONS",
  topic: "stone",
  summary: "Gives the weight of a layer of gravel from its area and depth.",
  formula: "W = A × d × density × (1 + waste); US: short tons of 2,000 lb, SI: tonnes of 1,000 kg",
  source:
    "Definition of bulk density (ASTM C29). Densities: US EPA volume-to-weight factors (crushed stone 2,700 lb/yd³) " +
    "and the sources named in the density table",
  limits:
    "Densities are of dry, loose stone; damp stone weighs 10 to 20% more and quarries differ by 10%. " +
    "Your quarry's own figure is better than any table: give it with its unit.",
  args: {
    area: quantity("area", "Area to cover", AREA),
    depth: quantity("size", "Depth of the layer", THICKNESS),
    stone,
    waste,
  },
  result: quantityResult("load", "the weight of the gravel"),
  examples: [
    {
      args: [120, 3, "1.35 ton/yd3"],
      gives: 1.5,
      within: 1e-6,
      from: "by hand: 120 × 3 / 324 = 1.1111 yd³; × 1.35 ton/yd³ = 1.5 ton",
    },
    {
      args: [12, 80, 1.5, "10%", "SI"],
      gives: 1.584,
      within: 1e-9,
      from: "by hand: 12 m² × 0.08 m = 0.96 m³; × 1.5 t/m³ × 1.1 = 1.584 t",
    },
  ],
  compute: ({ area, depth, stone, waste }) => gravelWeight(area, depth, stone, waste),
});
