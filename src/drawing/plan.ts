import { unitLabel } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { invalid } from "../calc/problem";
import { boxLength, poolShapes, type Pool } from "./planPools";
import { lipStations, sum } from "./steps";
import { dimension, drawing, element, FAINT, figure, INK, label, line, STONE, WATER } from "./svg";

/** What the plan shows; every length in the default unit of the system (ft or m), areas in its square. */
export interface PlanFacts {
  readonly system: UnitSystem;
  readonly name: string;
  readonly treads: readonly number[];
  readonly bedWidth: number;
  readonly basinLength: number;
  readonly basinWidth: number;
  /** From the top: the spillway box first, then the pool behind the lip of each next drop. */
  readonly pools: readonly Pool[];
}

const WIDTH = 360;
const LEFT = 34;
const RIGHT = 30;
const TOP = 40;
/** Room for the numbers of the drops between the widest part and the stations. */
const MARGIN = 14;

/** The feature from above: spillway box, bed with a lip at every drop and its station, pools, and the basin's outline. */
export function planDrawing(facts: PlanFacts): string {
  const { treads, bedWidth, basinLength, basinWidth, pools } = facts;
  for (const value of [...treads, bedWidth, basinLength, basinWidth]) {
    if (!(value > 0 && Number.isFinite(value))) throw invalid("the plan needs treads, a bed and a basin above 0");
  }
  if (treads.length === 0) throw invalid("the plan needs at least one tread");
  const unit = unitLabel("length", facts.system);
  const run = sum(treads);
  // The box is as long as its water needs at the width of the bed; where its water is not known, it is a sign only.
  const box = boxLength(pools, bedWidth, run) ?? 0.08 * (run + basinLength);
  const scale = (WIDTH - LEFT - RIGHT) / (box + run + basinLength);
  const lips = lipStations(treads);
  const shapes = poolShapes(pools, lips);
  const widest = Math.max(bedWidth, basinWidth, ...shapes.map(({ width }) => width)) * scale;
  const middle = TOP + widest / 2;
  const x = (along: number): number => LEFT + (box + along) * scale;
  const half = (bedWidth * scale) / 2;
  const basinHalf = (basinWidth * scale) / 2;
  const tip = Math.max(x(0) + 16, Math.min(x(0) + 40, x(treads[0] ?? 0) - 6));
  const outline = { fill: "none", stroke: INK, "stroke-width": 1.5 };
  const parts: string[] = [
    element("rect", { x: x(-box), y: middle - half, width: box * scale, height: 2 * half, ...outline }),
    element("rect", { x: x(0), y: middle - half, width: run * scale, height: 2 * half, fill: "none", stroke: STONE }),
    element("rect", {
      x: x(run),
      y: middle - basinHalf,
      width: basinLength * scale,
      height: 2 * basinHalf,
      ...outline,
      "stroke-dasharray": "6 3",
    }),
    ...shapes.map(({ start, length, width }) =>
      element("ellipse", {
        cx: x(start + length / 2),
        cy: middle,
        rx: (length / 2) * scale,
        ry: (width / 2) * scale,
        fill: WATER,
        "fill-opacity": 0.16,
        stroke: WATER,
        "stroke-width": 1.2,
      }),
    ),
    line(x(run), middle - half, x(run), middle + half, { stroke: WATER, "stroke-width": 2 }),
    label(x(run) + 6, middle - 2, "basin, buried", { "font-size": 10 }),
    // An arrow of the flow, so that the drawing is read the right way round on site.
    line(x(0) + 6, middle, tip - 6, middle, { stroke: WATER, "stroke-width": 1.5 }),
    element("path", { d: `M${Math.round(tip)} ${Math.round(middle)}l-8 -4v8z`, fill: WATER }),
  ];
  const top = middle - widest / 2;
  const base = middle + widest / 2;
  let lastLabel = -Infinity;
  lips.forEach((station, index) => {
    const at = x(station);
    // A lip as wide as its pool says, and as the bed where nothing is said.
    const lip = Math.min(half, ((pools[index]?.lip || Infinity) * scale) / 2);
    parts.push(line(at, middle - lip, at, middle + lip, { stroke: WATER, "stroke-width": 3 }));
    if (at - lastLabel < 30) return;
    lastLabel = at;
    parts.push(line(at, top - 4, at, base + 6, { stroke: FAINT, "stroke-dasharray": "2 3" }));
    parts.push(label(at, base + 17, figure(station), { "text-anchor": "middle", "font-size": 10 }));
    parts.push(label(at + 4, top - 1, String(index + 1), { "font-size": 10, fill: FAINT }));
  });
  const notes = [
    `Stations from the top lip in ${unit}; numbers above are drops.`,
    pools.length > 0 ? "Pools behind their lips, water surface to scale, shape free." : "",
    pools.length > treads.length ? `Not drawn: ${pools.length - treads.length} more pools than lips.` : "",
  ].filter(Boolean);
  parts.push(
    dimension(x(0), 18, x(run), 18, `run ${figure(run)} ${unit}`),
    dimension(18, middle - half, 18, middle + half, `${figure(bedWidth)} ${unit}`),
    dimension(WIDTH - 6, middle - basinHalf, WIDTH - 6, middle + basinHalf, `${figure(basinWidth)} ${unit}`),
    ...notes.map((note, index) => label(8, base + 20 + MARGIN * (index + 1), note, { fill: FAINT, "font-size": 10 })),
  );
  return drawing(
    WIDTH,
    base + 28 + MARGIN * notes.length,
    `Plan of ${facts.name}`,
    `A bed ${figure(bedWidth)} ${unit} wide and ${figure(run)} ${unit} long with ${treads.length} drops and ` +
      `${shapes.length} pools below the spillway box, ending in a basin of ${figure(basinLength)} by ${figure(basinWidth)} ${unit}.`,
    parts.join(""),
  );
}
