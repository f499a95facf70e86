import { invalid } from "../calc/problem";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { drawing, element, FAINT, figure, INK, label, line, niceStep, path, WATER } from "./svg";

/** Points of the two curves, and where they meet; flow in gph or L/h, head in ft or m. */
export interface CurveFacts {
  readonly system: UnitSystem;
  readonly pump: string;
  readonly points: readonly { readonly flow: number; readonly pumpHead: number; readonly systemHead: number }[];
  readonly duty?: { readonly flow: number; readonly head: number };
}

const WIDTH = 360;
const HEIGHT = 240;
const PLOT = { left: 44, right: 348, top: 22, bottom: 198 };

/** Pump curve and system curve over flow, with the duty point where they meet. */
export function curvesDrawing(facts: CurveFacts): string {
  const { points, duty } = facts;
  if (points.length < 2) throw invalid("the curves need at least two points");
  const flows = points.map((p) => p.flow);
  const heads = points.flatMap((p) => [p.pumpHead, p.systemHead]);
  if (![...flows, ...heads].every(Number.isFinite)) throw invalid("the curves need numbers for every flow and head");
  const [flowUnit, headUnit] = facts.system === "US" ? ["gph", "ft"] : ["L/h", "m"];
  const mostFlow = Math.max(...flows, 1e-9);
  // A steep system curve must not flatten the pump's: show little more than the pump's own head.
  const mostHead = Math.max(1.15 * Math.max(...points.map((p) => p.pumpHead)), (duty?.head ?? 0) * 1.2, 1e-9);
  const x = (flow: number): number => PLOT.left + (flow / mostFlow) * (PLOT.right - PLOT.left);
  const y = (head: number): number => PLOT.bottom - (head / mostHead) * (PLOT.bottom - PLOT.top);

  const parts: string[] = [];
  const flowStep = niceStep(mostFlow, 4);
  for (let flow = 0; flow <= mostFlow * 1.0001; flow += flowStep) {
    parts.push(line(x(flow), PLOT.top, x(flow), PLOT.bottom, { stroke: FAINT, "stroke-width": 0.4 }));
    parts.push(label(x(flow), PLOT.bottom + 13, figure(flow, 0), { "text-anchor": "middle", "font-size": 10 }));
  }
  const headStep = niceStep(mostHead, 5);
  for (let head = 0; head <= mostHead; head += headStep) {
    parts.push(line(PLOT.left, y(head), PLOT.right, y(head), { stroke: FAINT, "stroke-width": 0.4 }));
    parts.push(label(PLOT.left - 5, y(head) + 3.5, figure(head, 1), { "text-anchor": "end", "font-size": 10 }));
  }
  const inside = points.filter((p) => p.systemHead <= mostHead);
  parts.push(
    path(
      points.map((p) => [x(p.flow), y(p.pumpHead)] as const),
      { "stroke-width": 2 },
    ),
    path(
      inside.map((p) => [x(p.flow), y(p.systemHead)] as const),
      {
        stroke: WATER,
        "stroke-width": 2,
        "stroke-dasharray": "7 4",
      },
    ),
    label(PLOT.left + 6, PLOT.top - 8, `head (${headUnit})`, { "font-size": 10, fill: FAINT }),
    label(PLOT.right, PLOT.bottom + 27, `flow (${flowUnit})`, { "text-anchor": "end", "font-size": 10, fill: FAINT }),
    line(PLOT.left, HEIGHT - 12, PLOT.left + 22, HEIGHT - 12, { "stroke-width": 2 }),
    label(PLOT.left + 27, HEIGHT - 8, "pump"),
    line(PLOT.left + 70, HEIGHT - 12, PLOT.left + 92, HEIGHT - 12, {
      stroke: WATER,
      "stroke-width": 2,
      "stroke-dasharray": "7 4",
    }),
    label(PLOT.left + 97, HEIGHT - 8, "system"),
  );
  if (duty) {
    // A pump curve falls, so the corner above it is free; a thin leader ties the words to the point.
    const words = `delivers ${figure(duty.flow, 0)} ${flowUnit} at ${figure(duty.head, 1)} ${headUnit}`;
    const dutyX = x(duty.flow);
    const dutyY = y(duty.head);
    parts.push(
      line(dutyX + 3, dutyY - 4, PLOT.right - 40, PLOT.top + 17, { stroke: FAINT, "stroke-width": 0.7 }),
      element("circle", { cx: dutyX, cy: dutyY, r: 4.5, fill: "none", stroke: INK, "stroke-width": 1.6 }),
      label(PLOT.right, PLOT.top + 12, words, { "text-anchor": "end", "font-weight": "bold" }),
    );
  }
  return drawing(
    WIDTH,
    HEIGHT,
    `Pump and system curve: ${facts.pump}`,
    duty
      ? `The pump delivers ${figure(duty.flow, 0)} ${flowUnit} at ${figure(duty.head, 1)} ${headUnit}.`
      : "The curves do not meet: this pump does not deliver through this pipe.",
    parts.join(""),
  );
}
