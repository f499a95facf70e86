import { makeSystem } from "../../calc/pipe/route";
import { CHART_POINTS, chartPoints } from "../../calc/pump/duty";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult } from "../contract/result";
import { number, quantity } from "../contract/scalars";
import { LIFT, method, pumps, riser, route, waterTemp } from "../pipe/arguments";
import { curve, speed } from "./arguments";
import { PARALLEL_LIMITS } from "./words";

export const CURVETABLE = declare({
  name: "CURVETABLE",
  topic: "pump",
  summary: "Lists points of the pump curve and the system curve for a chart; they cross at the duty point.",
  formula: "even steps of flow from 0 to the end of the pump curve; heads as in DUTY",
  source: "Any text on pumps; losses as in TDHTABLE",
  limits:
    "As good as the points of the curve: makers hold them within 5 to 10%. The pump curve is drawn as far as its points go; where it ends, so does the table. " +
    PARALLEL_LIMITS,
  args: {
    curve,
    lift: quantity("head", "Lift from the running water level to the outlet", LIFT),
    route,
    pumps,
    speed,
    points: optional(number("How many points", { above: 0, ...CHART_POINTS }, { whole: true }), "21", 21),
    method,
    water_temp: waterTemp,
    riser,
  },
  result: tableResult("points of the two curves", [
    { title: "Flow", measure: "flow" },
    { title: "Pump head", measure: "head" },
    { title: "System head", measure: "head" },
  ]),
  examples: [
    {
      args: [
        [
          [0, 26],
          [4800, 10],
        ],
        8,
        [[2, 100, "Sch 40 PVC", 0]],
        null,
        null,
        3,
      ],
      gives: [
        { at: [1, 0], is: 0 },
        { at: [1, 1], is: 26 },
        { at: [1, 2], is: 8 },
        { at: [2, 0], is: 2400 },
        { at: [2, 1], is: 18 },
        { at: [2, 2], is: 10.847 },
        { at: [3, 1], is: 10 },
      ],
      within: 0.01,
      from:
        "by hand: half way the pump gives (26 + 10) / 2 = 18 ft; 40 gpm takes 8 ft + 2.62 ft friction " +
        "(Illinois Administrative Code 77, part 906, exhibit I) + 0.227 ft outlet",
    },
  ],
  compute({ curve, lift, route, pumps, speed, points, method, water_temp, riser }) {
    const system = makeSystem(lift, route, { method, waterTemperature: water_temp, riser });
    return chartPoints(curve, system, pumps, speed, points).map(({ flow, pumpHead, systemHead }) => [
      flow,
      pumpHead,
      systemHead,
    ]);
  },
});
