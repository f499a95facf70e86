import { drainBackTotal } from "../../calc/basin/drainBack";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { DRAIN_LIMITS, drainArguments, drainParts } from "./arguments";

export const DRAINBACK = declare({
  name: "DRAINBACK",
  topic: "basin",
  summary: "Gives the water that runs back into the basin when the pump stops.",
  formula:
    "Σ pool area × lip depth (LIPDEPTH) + Σ bed length × width × depth (BEDDEPTH) + π/4 bore² × pipe length unless a check valve holds it",
  source: "Geometry, with the weir equation of LIPDEPTH and Manning's of BEDDEPTH",
  limits: DRAIN_LIMITS,
  args: drainArguments,
  result: quantityResult("water", "the drain-back"),
  examples: [
    {
      args: [3000, [[40, 12]], null, 2, 60],
      gives: 46.818,
      within: 1e-4,
      from:
        "by hand: 50 gpm over 1 ft of flat stone stands 1.4581 in = 0.121508 ft (see LIPDEPTH); × 40 ft² × 7.48052 = 36.359 gal; " +
        "60 ft of 2 in Sch 40 (2.067 in) 10.459 gal; 46.818 gal",
    },
  ],
  compute: (values, system) => drainBackTotal(drainParts(values, system).parts),
});
