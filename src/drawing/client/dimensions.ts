import { FAINT, line } from "../svg";
import type { Feature } from "./feature";
import type { Frame } from "./frame";
import { allAlike, type Labels, lengthText, textWidth } from "./labels";

/** Writes the measures of the feature around section and plan. */
export function dimensions({ facts, fall, rim, lips, run }: Feature, frame: Frame, labels: Labels): void {
  const { x, y, across, treadsAt, lengthsAt, fallAt, deepAt } = frame;
  const text = (length: number): string => lengthText(length, facts.system);
  const ends = [...lips, run];
  labels.dimension([x(0), lengthsAt], [x(run), lengthsAt], text(run));
  labels.dimension([x(run), lengthsAt], [x(run + facts.basinLength), lengthsAt], text(facts.basinLength), true);
  const { treads } = facts;
  const alike = treads.length > 1 && allAlike(treads);
  treads.forEach((tread, index) => {
    const [from = 0, to = 0] = [ends[index], ends[index + 1]];
    labels.dimension([x(from), treadsAt], [x(to), treadsAt], alike || treads.length === 1 ? "" : text(tread));
  });
  if (alike) {
    // Across the ends of the treads, so it stands on a plate.
    const row = { x: x(0), y: treadsAt - 14, width: x(run) - x(0), height: 14 };
    const words = `${treads.length} × ${text(treads[0] ?? 0)}`;
    // Where it is too long for that, it stands behind their end.
    const behind = { ...row, x: x(run), y: treadsAt - 10, width: Infinity };
    if (!labels.plate(words, [(x(0) + x(run)) / 2, treadsAt - 4], row))
      labels.plate(words, [x(run) + 7 + 0.5 * textWidth(words), treadsAt + 1], behind);
  }
  labels.dimension([fallAt, y(0)], [fallAt, y(-fall)], text(fall));
  labels.dimension([deepAt, y(rim)], [deepAt, y(rim - facts.basinDepth)], text(facts.basinDepth));
  labels.dimension([fallAt, across(-facts.bedWidth / 2)], [fallAt, across(facts.bedWidth / 2)], text(facts.bedWidth));
  labels.dimension(
    [deepAt, across(-facts.basinWidth / 2)],
    [deepAt, across(facts.basinWidth / 2)],
    text(facts.basinWidth),
  );
}

/** Thin lines from what is measured to where its length is written. */
export function extensions(
  { facts, fall, rim, run, lips, box }: Feature,
  { x, y, across, left, treadsAt, lengthsAt, fallAt, deepAt, bottom }: Frame,
): string {
  const look = { stroke: FAINT, "stroke-width": 0.45, "stroke-dasharray": "2 2" };
  const half = facts.bedWidth / 2;
  return [
    line(fallAt, y(0), x(-box), y(0), look),
    line(fallAt, y(-fall), x(left), y(-fall), look),
    line(x(run + facts.basinLength), y(rim), deepAt, y(rim), look),
    line(
      x(run + facts.basinLength - facts.basinLean),
      y(rim - facts.basinDepth),
      deepAt,
      y(rim - facts.basinDepth),
      look,
    ),
    ...[-half, half].map((side) => line(fallAt, across(side), x(-box), across(side), look)),
    ...[-1, 1].map((side) =>
      line(
        x(run + facts.basinLength),
        across((side * facts.basinWidth) / 2),
        deepAt,
        across((side * facts.basinWidth) / 2),
        look,
      ),
    ),
    ...[...lips, run].map((station) => line(x(station), y(bottom) + 2, x(station), treadsAt + 3, look)),
    ...[0, run, run + facts.basinLength].map((station) =>
      line(x(station), y(bottom) + 2, x(station), lengthsAt + 3, look),
    ),
  ].join("");
}
