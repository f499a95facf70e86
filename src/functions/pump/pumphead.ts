import { lastFlow, pumpHead } from "../../calc/pump/curve";
import { invalid } from "../../calc/problem";
import { say } from "../../calc/quantity/measures";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { curve, CURVE_FLOW, speed } from "./arguments";
import { CURVE_LIMITS } from "./words";

export const PUMPHEAD = declare({
  name: "PUMPHEAD",
  topic: "pump",
  summary: "Reads the head of a pump off its curve at a flow and speed; never beyond the curve's last point.",
  formula: "H(Q) = n² H₁(Q / n), H₁ the curve bent between its points as they bend, n the share of its speed",
  source:
    "Affinity laws: DOE-HDBK-1012/3, pump laws; Crane TP-410, example 7.33; between points: Stineman (1980), slopes of parabolas",
  limits: `${CURVE_LIMITS} The affinity laws hold best between 70 and 110% speed.`,
  args: { curve, flow: quantity("flow", "Flow through the pump", CURVE_FLOW), speed },
  result: quantityResult("head", "the head of the pump"),
  examples: [
    {
      args: [
        [
          [0, 26],
          [2400, 22],
          [4800, 10],
        ],
        3000,
      ],
      gives: 19.75,
      within: 1e-9,
      from: "by hand: the points lie on the parabola 26 - 4 (Q / 2400)², which the curve meets: 26 - 4 × 1.25² = 19.75 ft",
    },
    {
      args: [
        [
          [0, 24],
          [6000, 20],
        ],
        4800,
        0.8,
      ],
      gives: 12.8,
      within: 1e-9,
      from: "by hand: at 0.8 speed the point (6000 gph, 20 ft) moves to (4800 gph, 20 × 0.64 = 12.8 ft)",
    },
  ],
  compute({ curve, flow, speed }, system) {
    const end = lastFlow(curve, speed);
    // Said here in the user's units; the calculation's own guard speaks SI.
    if (flow > end * (1 + 1e-9)) {
      throw invalid(
        `flow ${say("flow", flow, system)} lies past the end of the curve, which is known up to ${say("flow", end, system)}`,
      );
    }
    return pumpHead(curve, Math.min(flow, end), speed);
  },
});
