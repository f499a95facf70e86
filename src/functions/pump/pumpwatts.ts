import { pumpWatts } from "../../calc/pump/power";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity, share } from "../contract/scalars";
import { FLOW } from "../pipe/arguments";
import { HEAD } from "./arguments";
import { ELECTRIC_CAUTION } from "./words";

export const PUMPWATTS = declare({
  name: "PUMPWATTS",
  topic: "pump",
  summary: "Gives the electric power a pump draws for a flow and head.",
  formula: "P = ρ g Q H / efficiency, water at 20 °C (68 °F)",
  source: "Hydraulic power, any text; in American units Q H / 3960 is horsepower (gpm, ft)",
  limits: "The efficiency is wire to water, pump times motor times drive; small pond pumps reach 0.2 to 0.5.",
  caution: ELECTRIC_CAUTION,
  args: {
    flow: quantity("flow", "Flow", FLOW),
    head: quantity("head", "Total dynamic head", HEAD),
    efficiency: share("Efficiency, wire to water: pump × motor × drive", { above: 0.001, max: 1 }),
  },
  result: quantityResult("power", "the power drawn"),
  examples: [
    {
      args: [3600, 20, 0.55],
      gives: 410.85,
      within: 0.001,
      from: "by hand: 60 gpm × 20 ft / 3960 × 745.7 W / 0.55 = 410.9 W",
    },
  ],
  compute: ({ flow, head, efficiency }) => pumpWatts(flow, head, efficiency),
});
