import { makeSystem } from "../../calc/pipe/route";
import { lastFlow } from "../../calc/pump/curve";
import { dutyPoint } from "../../calc/pump/duty";
import { fastestSpeed } from "../../calc/pipe/routeParts";
import { unitLabel, type Measure } from "../../calc/quantity/measures";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW, LIFT, method, pumps, riser, route, waterTemp } from "../pipe/arguments";
import { curve, speed } from "./arguments";
import { CURVE_LIMITS, dutyState, dutyVerdict, ELECTRIC_CAUTION, PARALLEL_LIMITS } from "./words";

export const DUTY = declare({
  name: "DUTY",
  topic: "pump",
  summary: "Gives the flow a pump really delivers through a route: where pump curve and system curve meet.",
  formula:
    "n² H₁(Q / (m n)) = lift + Σ hf + Σ K V²/2g + outlet V²/2g, solved for Q; Q / m in each riser; m pumps, n the share of speed",
  source:
    "Any text on pumps; DOE-HDBK-1012/3 for pumps in parallel and pump laws; curve between its points: Stineman (1980); " +
    "losses as in TDHTABLE",
  limits: `${CURVE_LIMITS} Beyond the last point the flow shown is the last known. ${PARALLEL_LIMITS}`,
  caution: ELECTRIC_CAUTION,
  args: {
    curve,
    lift: quantity("head", "Lift from the running water level to the outlet", LIFT),
    route,
    pumps,
    speed,
    target: optional(quantity("flow", "Flow wanted", FLOW), "no verdict on the flow"),
    method,
    water_temp: waterTemp,
    riser,
  },
  result: tableResult("the duty point", [{ title: "Duty point" }, { title: "Value" }, { title: "Unit" }]),
  examples: [
    {
      args: [
        [
          [0, 26],
          [2400, 22],
          [4800, 10],
        ],
        8,
        [[2, 100, "Sch 40 PVC", 6]],
        null,
        null,
        2400,
      ],
      gives: [
        { at: [1, 1], is: 3584.09 },
        { at: [2, 1], is: 17.0793 },
        { at: [3, 1], is: 5.7113 },
        { at: [5, 1], is: "meets the flow" },
        { at: [6, 1], is: "Meets the flow with 1180 gph (49%) to spare." },
      ],
      within: 0.002,
      from:
        "EPANET 2.3.5, its curve of three points: 59.735 gpm at 17.079 ft (K 7 there includes the outlet); " +
        "0.4085 × 59.735 / 2.067² = 5.711 ft/s",
    },
  ],
  compute({ curve, lift, route, pumps, speed, target, method, water_temp, riser }, units) {
    const system = makeSystem(lift, route, { method, waterTemperature: water_temp, riser });
    const duty = dutyPoint(curve, system, pumps, speed);
    const row = (label: string, measure: Measure, inside: number): TableCell[] => [
      label,
      { measure, inside },
      unitLabel(measure, units),
    ];
    return [
      row("Flow delivered", "flow", duty.flow),
      row("Head", "head", duty.head),
      row("Speed in the fastest pipe", "speed", fastestSpeed(system, duty.flow, pumps)),
      target === undefined ? ["Flow wanted", "", ""] : row("Flow wanted", "flow", target),
      ["State", dutyState(duty, target), ""],
      ["Verdict", dutyVerdict(duty, target, lift, lastFlow(curve, speed) * pumps, units), ""],
    ];
  },
});
