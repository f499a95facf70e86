import { makeSystem } from "../../calc/pipe/route";
import { lastFlow } from "../../calc/pump/curve";
import { dutyPoint } from "../../calc/pump/duty";
import { fastestSpeed } from "../../calc/pump/rank";
import { unitLabel, type Measure } from "../../calc/quantity/measures";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW, LIFT, method, route } from "../pipe/arguments";
import { curve, pumps, speed } from "./arguments";
import { dutyState, dutyVerdict, ELECTRIC_CAUTION } from "./words";

export const DUTY = declare({
  name: "DUTY",
  topic: "pump",
  summary: "Gives the flow a pump really delivers through a route: where pump curve and system curve meet.",
  formula:
    "n² H₁(Q / (m n)) = lift + Σ hf(Q) + Σ K V²/2g + outlet V²/2g, solved for Q; m pumps in parallel, n the share of speed",
  source: "Any text on pumps; DOE-HDBK-1012/3 for pumps in parallel and pump laws; losses as in TDHTABLE",
  limits:
    "Straight lines between the curve's points, nothing beyond its last one: there the flow shown is the last known. " +
    "Makers' curves hold within 5 to 10 %. Pumps in parallel share the whole route.",
  caution: ELECTRIC_CAUTION,
  args: {
    curve,
    lift: quantity("head", "Lift from the running water level to the outlet", LIFT),
    route,
    pumps,
    speed,
    target: optional(quantity("flow", "Flow wanted", FLOW), "no verdict on the flow"),
    method,
  },
  result: tableResult("the duty point", [{ title: "Duty point" }, { title: "Value" }, { title: "Unit" }]),
  examples: [
    {
      args: [
        [
          [0, 26],
          [1200, 25],
          [2400, 22.5],
          [3600, 18],
          [4800, 11],
          [5700, 3],
        ],
        8,
        [[2, 100, "Sch 40 PVC", 6]],
        null,
        null,
        3500,
      ],
      gives: [
        { at: [1, 1], is: 3678.55 },
        { at: [2, 1], is: 17.54177 },
        { at: [3, 1], is: 5.86185 },
        { at: [5, 1], is: "meets the flow" },
        { at: [6, 1], is: "Meets the flow with 179 gph (5 %) to spare." },
      ],
      within: 0.002,
      from: "EPANET 2.3.5: 61.309 gpm at 17.542 ft and 5.862 ft/s (K 7 there includes the outlet)",
    },
  ],
  compute({ curve, lift, route, pumps, speed, target, method }, units) {
    const system = makeSystem(lift, route, { method });
    const duty = dutyPoint(curve, system, pumps, speed);
    const row = (label: string, measure: Measure, inside: number): TableCell[] => [
      label,
      { measure, inside },
      unitLabel(measure, units),
    ];
    return [
      row("Flow delivered", "flow", duty.flow),
      row("Head", "head", duty.head),
      row("Speed in the fastest pipe", "speed", fastestSpeed(system, duty.flow)),
      target === undefined ? ["Flow wanted", "", ""] : row("Flow wanted", "flow", target),
      ["State", dutyState(duty, target), ""],
      ["Verdict", dutyVerdict(duty, target, lift, lastFlow(curve, speed) * pumps, units), ""],
    ];
  },
});
