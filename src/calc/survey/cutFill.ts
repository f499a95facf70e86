import { ofPart, plain, requireRange } from "../problem";
import { sectionArea, SECTION_RANGE, type SectionArea, type SideSlopes, type Station } from "./section";
import { requireBeyond, requireStations } from "./stations";

/** How the volume between two stations is worked out. */
export const VOLUME_METHODS = ["average end area", "prismoidal"] as const;
export type VolumeMethod = (typeof VOLUME_METHODS)[number];

/** A station with its section and the volume since the one before; m² and m³. */
export interface StationVolume {
  readonly station: number;
  /** Ground over design on the line: cut is positive, fill negative. */
  readonly depth: number;
  readonly area: SectionArea;
  readonly volume: SectionArea;
  readonly soFar: SectionArea;
}

/**
 * Volume between two sections: V = L (A1 + A2) / 2.
 *
 * @param length L, m
 * @param first A1, m²
 * @param second A2, m²
 * @example endAreaVolume(20, 10, 14) => 240; 20 × (10 + 14) / 2
 *
 * Source: average end area, any surveying text. Exact where width or height alone changes; else too large by up to a third
 * of the difference where a solid tapers to a point.
 */
export function endAreaVolume(length: number, first: number, second: number): number {
  return (length * (first + second)) / 2;
}

/**
 * Volume between two sections: V = L (A1 + 4 Am + A2) / 6, Am the section of the averaged dimensions, not the average area.
 *
 * @param middle Am, m²
 * @example prismoidalVolume(20, 10, 12, 14) => 240; 20 × (10 + 4 × 12 + 14) / 6
 *
 * Source: prismoidal formula (Simpson's rule), exact for solids with straight edges; any surveying text.
 */
export function prismoidalVolume(length: number, first: number, middle: number, second: number): number {
  return (length * (first + 4 * middle + second)) / 6;
}

/**
 * Cut and fill from station to station. Where the line passes from cut to fill, the point in between is found by
 * straight interpolation and both parts are worked out to it.
 *
 * @param stations at least two, in order along the line
 * @param slopes side slopes in cut and in fill, run per 1 of height, 0 to 10
 * @throws Problem for a single station, stations out of order or twice, and what sectionArea refuses, naming the station
 * @example cutFill([{ station: 0, ground: 11, design: 10, width: 2, riseLeft: 0, riseRight: 0 }, { station: 20,
 *   ground: 11, design: 10, width: 2, riseLeft: 0, riseRight: 0 }], { cut: 0, fill: 0 }, "average end
 *   area")[1].volume.cut => 40; 2 × 1 × 20
 *
 * Source: as endAreaVolume and prismoidalVolume.
 */
export function cutFill(stations: readonly Station[], slopes: SideSlopes, method: VolumeMethod): StationVolume[] {
  requireStations(stations);
  let before: Station | undefined;
  let soFar: SectionArea = { cut: 0, fill: 0 };
  return stations.map((at) => {
    const { min, max } = SECTION_RANGE.station;
    requireRange("station", at.station, min, max, "m");
    return ofPart(`station ${plain(at.station)} m`, () => {
      if (before) requireBeyond(at.station, before.station);
      const area = sectionArea(at, slopes);
      const volume = before ? between(before, at, slopes, method) : { cut: 0, fill: 0 };
      soFar = plus(soFar, volume);
      before = at;
      return { station: at.station, depth: at.ground - at.design, area, volume, soFar };
    });
  });
}

function between(from: Station, to: Station, slopes: SideSlopes, method: VolumeMethod): SectionArea {
  const [first, second] = [from.ground - from.design, to.ground - to.design];
  if (first * second < 0) {
    const crossing = blend(from, to, first / (first - second));
    return plus(reach(from, crossing, slopes, method), reach(crossing, to, slopes, method));
  }
  return reach(from, to, slopes, method);
}

function reach(from: Station, to: Station, slopes: SideSlopes, method: VolumeMethod): SectionArea {
  const length = to.station - from.station;
  const [a, b] = [sectionArea(from, slopes), sectionArea(to, slopes)];
  if (method === "average end area")
    return { cut: endAreaVolume(length, a.cut, b.cut), fill: endAreaVolume(length, a.fill, b.fill) };
  const middle = sectionArea(blend(from, to, 0.5), slopes);
  return {
    cut: prismoidalVolume(length, a.cut, middle.cut, b.cut),
    fill: prismoidalVolume(length, a.fill, middle.fill, b.fill),
  };
}

/** The station a share of the way on, every dimension in between. */
function blend(from: Station, to: Station, share: number): Station {
  const part = (name: keyof Station): number => from[name] + (to[name] - from[name]) * share;
  const design = part("design");
  return {
    station: part("station"),
    ground: part("ground"),
    design,
    width: part("width"),
    riseLeft: part("riseLeft"),
    riseRight: part("riseRight"),
  };
}

function plus(a: SectionArea, b: SectionArea): SectionArea {
  return { cut: a.cut + b.cut, fill: a.fill + b.fill };
}
