import { makeSystem } from "../../calc/pipe/route";
import { routeParts } from "../../calc/pipe/routeParts";
import { declare } from "../contract/declaration";
import { tableResult, type TableCell } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW, LIFT, method, pumps, riser, route, waterTemp } from "./arguments";

export const TDHTABLE = declare({
  name: "TDHTABLE",
  topic: "pipe",
  summary: "Takes the total dynamic head of a route apart: lift, friction and fittings of each pipe, outlet, total.",
  formula:
    "TDH = lift + Σ hf + Σ K V²/2g + V²/2g at the outlet, counted once; a riser carries flow / pumps; share = part / total",
  source: "Energy equation, any hydraulics text; the parts as in PIPELOSS and FITLOSS",
  limits:
    "The lift is as good as your levels, friction to about 10% (the bore), fittings to about a third. " +
    "Losses where the pipe changes size are not added; put their K into the row if they matter. " +
    "The remark says where a pipe runs too fast or the method does not fit.",
  args: {
    flow: quantity("flow", "Flow wanted", FLOW),
    lift: quantity("head", "Lift from the running water level to the outlet", LIFT),
    route,
    method,
    water_temp: waterTemp,
    riser,
    pumps,
  },
  result: tableResult("the parts of the total dynamic head", [
    { title: "Part" },
    { title: "Head", measure: "head" },
    { title: "Share" },
    { title: "Speed", measure: "speed" },
    { title: "Remark" },
  ]),
  examples: [
    {
      args: [2400, 6, [[2, 100, "Sch 40 PVC", 5.2]]],
      gives: [
        { at: [1, 0], is: "Lift" },
        { at: [2, 0], is: "Friction in 2 in Sch 40 PVC" },
        { at: [2, 1], is: 2.62 },
        { at: [3, 1], is: 1.182 },
        { at: [4, 1], is: 0.2273 },
        { at: [5, 1], is: 10.03 },
      ],
      within: 0.02,
      from:
        "by hand: 6 ft + 2.62 ft (Illinois Administrative Code 77, part 906, exhibit I) " +
        "+ 5.2 × 3.8244² / 64.348 = 1.182 ft + 0.227 ft = 10.03 ft",
    },
  ],
  compute({ flow, lift, route, method, water_temp, riser, pumps }) {
    const system = makeSystem(lift, route, { method, waterTemperature: water_temp, riser });
    const total = system.headFor(pumps)(flow);
    const rows = routeParts(system, flow, pumps).map(({ label, head, speed, remark }): TableCell[] => [
      label,
      head,
      head / total,
      speed ?? "",
      remark,
    ]);
    return [...rows, ["Total dynamic head", total, 1, "", ""]];
  },
});
