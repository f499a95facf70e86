import type { UnitSystem } from "../calc/quantity/unitSystem";
import { invalid } from "../calc/problem";
import { dimension, drawing, element, FAINT, figure, INK, label, line, STONE, WATER } from "./svg";

/** What the plan shows; every length in the default unit of the system (ft or m). */
export interface PlanFacts {
  readonly system: UnitSystem;
  readonly name: string;
  readonly treads: readonly number[];
  readonly bedWidth: number;
  readonly basinLength: number;
  readonly basinWidth: number;
}

const WIDTH = 360;
const LEFT = 34;
const RIGHT = 30;
const TOP = 40;

/** The feature from above: spillway box, bed with a lip at every drop and its station, and the basin's outline. */
export function planDrawing(facts: PlanFacts): string {
  const { treads, bedWidth, basinLength, basinWidth } = facts;
  for (const value of [...treads, bedWidth, basinLength, basinWidth]) {
    if (!(value > 0 && Number.isFinite(value))) throw invalid("the plan needs treads, a bed and a basin above 0");
  }
  if (treads.length === 0) throw invalid("the plan needs at least one tread");
  const unit = facts.system === "US" ? "ft" : "m";
  const run = treads.reduce((total, tread) => total + tread, 0);
  const box = 0.08 * (run + basinLength);
  const scale = (WIDTH - LEFT - RIGHT) / (box + run + basinLength);
  const widest = Math.max(bedWidth, basinWidth) * scale;
  const middle = TOP + widest / 2;
  const x = (along: number): number => LEFT + along * scale;
  const half = (bedWidth * scale) / 2;
  const basinHalf = (basinWidth * scale) / 2;
  const parts: string[] = [
    element("rect", {
      x: x(0),
      y: middle - half,
      width: box * scale,
      height: 2 * half,
      fill: "none",
      stroke: INK,
      "stroke-width": 1.5,
    }),
    element("rect", { x: x(box), y: middle - half, width: run * scale, height: 2 * half, fill: "none", stroke: STONE }),
    element("rect", {
      x: x(box + run),
      y: middle - basinHalf,
      width: basinLength * scale,
      height: 2 * basinHalf,
      fill: "none",
      stroke: INK,
      "stroke-width": 1.5,
      "stroke-dasharray": "6 3",
    }),
    line(x(box + run), middle - half, x(box + run), middle + half, { stroke: WATER, "stroke-width": 2 }),
    label(x(box + run) + 6, middle - 2, "basin, buried", { "font-size": 10 }),
    // An arrow of the flow, so that the drawing is read the right way round on site.
    line(x(box) + 8, middle, x(box) + 34, middle, { stroke: WATER, "stroke-width": 1.5 }),
    element("path", { d: `M${Math.round(x(box) + 40)} ${Math.round(middle)}l-8 -4v8z`, fill: WATER }),
  ];
  let station = 0;
  let lastLabel = -Infinity;
  const base = middle + Math.max(half, basinHalf);
  treads.forEach((tread, index) => {
    const at = x(box + station);
    parts.push(line(at, middle - half, at, middle + half, { stroke: WATER, "stroke-width": 2 }));
    if (at - lastLabel >= 30) {
      parts.push(line(at, middle + half, at, base + 6, { stroke: FAINT, "stroke-dasharray": "2 3" }));
      parts.push(label(at, base + 17, figure(station), { "text-anchor": "middle", "font-size": 10 }));
      parts.push(label(at + 4, middle - half - 4, String(index + 1), { "font-size": 10, fill: FAINT }));
      lastLabel = at;
    }
    station += tread;
  });
  parts.push(
    dimension(x(box), 18, x(box + run), 18, `run ${figure(run)} ${unit}`),
    dimension(18, middle - half, 18, middle + half, `${figure(bedWidth)} ${unit}`),
    dimension(WIDTH - 6, middle - basinHalf, WIDTH - 6, middle + basinHalf, `${figure(basinWidth)} ${unit}`),
    label(8, base + 32, `Stations from the top lip in ${unit}; numbers above the bed are drops.`, {
      fill: FAINT,
      "font-size": 10,
    }),
  );
  return drawing(
    WIDTH,
    base + 40,
    `Plan of ${facts.name}`,
    `A bed ${figure(bedWidth)} ${unit} wide and ${figure(run)} ${unit} long with ${treads.length} drops, ` +
      `ending in a basin of ${figure(basinLength)} by ${figure(basinWidth)} ${unit}.`,
    parts.join(""),
  );
}
