import type { Feature } from "./feature";
import type { Frame } from "./frame";
import { pipeLine, pumpWell } from "./basin";
import { allAlike, type Labels, lengthText, LETTERING } from "./labels";
import type { Box } from "./outline";

/** What the parts are called, and the height of each drop, where there is room in the ground. */
export function names(feature: Feature, { x, y, across, bottom, left, right, scale }: Frame, labels: Labels): void {
  const { facts, rim, lips, levels, depths, run, foot } = feature;
  const area = (from: number, to: number, top: number, floor: number): Box => ({
    x: x(from),
    y: y(top),
    width: x(to) - x(from),
    height: y(floor) - y(top),
  });
  const basin = area(run, run + facts.basinLength, rim, rim - facts.basinDepth);
  const well = pumpWell(feature);
  const pump = well.from + well.wide / 2;
  labels.plate("water under gravel", [(basin.x + x(pump)) / 2 - 6, y(rim - 0.5 * facts.basinDepth)], {
    ...basin,
    width: x(well.from) - basin.x,
  });
  labels.plate("pump", [x(pump), y(bottom) - 2], area(pump - 9 * foot, right, rim - facts.basinDepth, bottom));
  const top = across(-facts.basinWidth / 2);
  const open = { ...basin, y: top, width: x(well.from) - basin.x, height: facts.basinWidth * scale };
  labels.plate("basin, no open pond", [open.x + 0.5 * open.width - 2, across(0) + LETTERING / 3], open);
  const [low, high] = pipeLine(feature);
  if (low && high) {
    const [station, level] = [0.55 * low[0] + 0.45 * high[0], 0.55 * low[1] + 0.45 * high[1]];
    const to = [x(station), y(level)] as const;
    labels.plate("buried pipe", [to[0] - 18, to[1] + 22], area(left, run, level - 0.2 * foot, bottom), to);
  }
  if (allAlike(facts.drops)) return;
  facts.drops.forEach((drop, index) => {
    const level = (levels[index + 1] ?? 0) - (depths[index] ?? 0) - 0.25 * foot;
    const [lip, end] = [lips[index] ?? 0, lips[index + 1] ?? run];
    labels.plate(
      lengthText(drop, facts.system),
      [(x(lip) + x(end)) / 2, y(level) + LETTERING],
      area(lip, end, level, bottom),
    );
  });
}
