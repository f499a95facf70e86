import { unitLabel } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { invalid } from "../calc/problem";
import { sum } from "./steps";
import { dimension, drawing, element, FAINT, figure, INK, label, line, path, STONE, WATER } from "./svg";

/** What the section shows; every length in the default unit of the system (ft or m). */
export interface SectionFacts {
  readonly system: UnitSystem;
  readonly name: string;
  /** Heights of the drops from the top, with the tread behind each. */
  readonly drops: readonly number[];
  readonly treads: readonly number[];
  readonly basinLength: number;
  readonly basinDepth: number;
  /** How far the basin's rim lies below the finished grade. */
  readonly rimBelowGrade: number;
  /** How far the water level falls when the pump starts. */
  readonly levelDrop: number;
}

const WIDTH = 360;
const LEFT = 34;
const RIGHT = 16;
const TOP = 34;
const LEAST_LABEL_SPACE = 13;

/** The feature cut along its run: berm, steps, sheets of water, grade, and the basin with its two water levels. */
export function sectionDrawing(facts: SectionFacts): string {
  const { drops, treads, basinLength, basinDepth } = facts;
  if (drops.length === 0 || drops.length !== treads.length) {
    throw invalid("the section needs as many treads as drops, and at least one of each");
  }
  for (const value of [...drops, ...treads, basinLength, basinDepth]) {
    if (!(value > 0 && Number.isFinite(value))) throw invalid("the section needs drops, treads and a basin above 0");
  }
  const unit = unitLabel("length", facts.system);
  const fall = sum(drops);
  const run = sum(treads);
  const box = 0.08 * (run + basinLength);
  const acrossScale = (WIDTH - LEFT - RIGHT) / (box + run + basinLength);
  // Heights are drawn larger where the feature is long and low, so that the steps can be seen; the note says so.
  const downScale = Math.min(2.5 * acrossScale, Math.max(acrossScale, 110 / (fall + basinDepth)));
  const x = (along: number): number => LEFT + along * acrossScale;
  const y = (below: number): number => TOP + below * downScale;
  const grade = y(fall);
  const rim = y(fall + facts.rimBelowGrade);
  const bottom = y(fall + facts.rimBelowGrade + basinDepth);
  const basinLeft = x(box + run);
  const basinRight = x(box + run + basinLength);

  const bed: [number, number][] = [[x(0), y(0)]];
  const sheets: string[] = [];
  const labels: string[] = [];
  let along = box;
  let below = 0;
  let lastLabel = -Infinity;
  bed.push([x(along), y(0)]);
  drops.forEach((drop, index) => {
    const lip = y(below);
    below += drop;
    bed.push([x(along), y(below)]);
    sheets.push(
      path(
        [
          [x(along), lip - 2],
          [x(along) + 2.5, lip + 1],
          [x(along) + 2.5, y(below) - 1],
        ],
        { stroke: WATER, "stroke-width": 2 },
      ),
    );
    // Everything to the right of a lip lies lower, so a label at the lip's height crosses no step however short it is.
    const roomy = (treads[index] ?? 0) * acrossScale > 44;
    const middle = roomy ? (lip + y(below)) / 2 + 3.5 : lip + 1;
    if (middle - lastLabel >= LEAST_LABEL_SPACE) {
      labels.push(label(x(along) + 7, middle, `${index + 1}: ${figure(drop)}`));
      lastLabel = middle;
    }
    along += treads[index] ?? 0;
    bed.push([x(along), y(below)]);
  });

  const full = rim;
  const running = Math.min(bottom - 1, rim + facts.levelDrop * downScale);
  const parts = [
    element(
      "defs",
      {},
      element(
        "pattern",
        { id: "section-stone", width: 7, height: 7, patternUnits: "userSpaceOnUse" },
        element("circle", { cx: 3.5, cy: 3.5, r: 2.2, fill: "none", stroke: STONE, "stroke-width": 0.8 }),
      ),
    ),
    // The berm behind the spillway box, made of the basin's own spoil.
    path(
      [
        [x(0) - 12, grade],
        [x(0), y(0)],
      ],
      { stroke: FAINT, "stroke-dasharray": "4 3" },
    ),
    line(8, grade, basinRight + 8, grade, { stroke: FAINT, "stroke-dasharray": "4 3" }),
    label(WIDTH - 6, grade - 4, "finished grade", { "text-anchor": "end", fill: FAINT, "font-size": 10 }),
    element("rect", {
      x: basinLeft,
      y: rim,
      width: basinRight - basinLeft,
      height: bottom - rim,
      fill: "url(#section-stone)",
      stroke: INK,
      "stroke-width": 1.5,
    }),
    line(basinLeft, full, basinRight, full, { stroke: WATER, "stroke-width": 2 }),
    line(basinLeft, running, basinRight, running, { stroke: WATER, "stroke-width": 1.5, "stroke-dasharray": "6 3" }),
    label(basinLeft - 4, full + 9, "full", { "text-anchor": "end", "font-size": 10 }),
    label(basinLeft - 4, Math.max(running + 3.5, full + 20), "running", { "text-anchor": "end", "font-size": 10 }),
    path(bed, { "stroke-width": 2.2, "stroke-linejoin": "round" }),
    ...sheets,
    ...labels,
    dimension(14, y(0), 14, grade, `${figure(fall)} ${unit}`),
    dimension(x(box), 18, x(box + run), 18, `run ${figure(run)} ${unit}`),
    dimension(basinLeft, bottom + 20, basinRight, bottom + 20, `basin ${figure(basinLength)} ${unit}`),
    dimension(basinLeft - 40, rim, basinLeft - 40, bottom, `${figure(basinDepth)} ${unit}`),
  ];
  const stretched = downScale / acrossScale;
  if (stretched > 1.05) {
    parts.push(
      label(8, bottom + 38, `Heights drawn ${figure(stretched, 1)} times as large as lengths. Drops in ${unit}.`, {
        fill: FAINT,
        "font-size": 10,
      }),
    );
  }
  return drawing(
    WIDTH,
    bottom + 46,
    `Section of ${facts.name}`,
    `${drops.length} drops with a fall of ${figure(fall)} ${unit} over a run of ${figure(run)} ${unit}, into a basin ` +
      `${figure(basinLength)} ${unit} long and ${figure(basinDepth)} ${unit} deep; the level falls ` +
      `${figure(facts.levelDrop)} ${unit} when the pump starts.`,
    parts.join(""),
  );
}
