import { LEVEL_RANGE } from "../levels/setOut";
import { requireRange } from "../problem";
import type { DesignStation } from "./cutFill";
import type { GroundLine } from "./groundLine";

/** What is designed at a station, whatever the ground; m. */
export type DesignedSurface = Pick<DesignStation, "station" | "design" | "width" | "step">;

/**
 * The designed surface with the ground that shots tell under it: its own stations, and those of the shots between them.
 *
 * @param surface in order along the line
 * @example overGround([{ station: 0, design: 11, width: 2 }, { station: 10, design: 9, width: 2 }], { stations: [4], at:
 *   () => ({ ground: 10, riseLeft: 0, riseRight: 0 }) })[1].design => 10.2; 11 - 2 × 4/10, at the shot
 */
export function overGround(surface: readonly DesignedSurface[], line: GroundLine): DesignStation[] {
  const stations: DesignStation[] = [];
  let next = 0;
  let before: DesignedSurface | undefined;
  for (const at of surface) {
    requireRange("level", at.design, LEVEL_RANGE.level.min, LEVEL_RANGE.level.max, "m");
    for (; next < line.stations.length; next++) {
      const station = line.stations[next] ?? Infinity;
      if (station >= at.station) break;
      if (!before || station <= before.station) continue;
      const share = (station - before.station) / (at.station - before.station);
      const mixed = (a: number, b: number): number => a + (b - a) * share;
      const design = mixed(before.design, at.design + (at.step ?? 0));
      stations.push({ station, design, width: mixed(before.width, at.width), ...line.at(station) });
    }
    stations.push({ ...at, ...line.at(at.station) });
    before = at;
  }
  return stations;
}
