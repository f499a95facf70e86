import { requireRange } from "../problem";
import { footprint, sectionArea, SECTION_RANGE, type SectionArea, type SideSlopes, type Station } from "./section";
import { alongLine } from "./stations";

/** How the volume between two stations is worked out. */
export const VOLUME_METHODS = ["average end area", "prismoidal"] as const;
export type VolumeMethod = (typeof VOLUME_METHODS)[number];

/** How the earth ends before the first station: in a wall or bank, or in a slope of its own. */
export const END_KINDS = ["square", "sloped"] as const;
export type EndKind = (typeof END_KINDS)[number];

/** A station of the designed surface with the ground there. */
export interface DesignStation extends Station {
  /** Height of the upright face at this station: the surface before it ends so much higher, or lower where negative. */
  readonly step?: number | undefined;
}

/** A station with its section and the volume since the one before; m, m² and m³. */
export interface StationVolume extends Station {
  /** Ground over design on the line, topsoil off: cut is positive, fill negative. */
  readonly depth: number;
  readonly area: SectionArea;
  readonly volume: SectionArea;
  readonly soFar: SectionArea;
  /** Topsoil stripped so far, as it lay. */
  readonly topsoilSoFar: number;
}

export interface CutFillOptions {
  /** Topsoil stripped first wherever is cut or filled, m. */
  readonly topsoil?: number;
  readonly firstEnd?: EndKind;
}

export const CUT_FILL_RANGE = {
  topsoil: { min: 0, max: 1 },
  step: { min: -6, max: 6 },
} as const;

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
 * What lies beyond the first station where the end slopes like the sides: V = z h² w / 2 + z² h³ / 3, the integral of
 * w y + z y² over the run z h. The ground counts as level there.
 *
 * @param height h, m
 * @param width w of the formation, m
 * @param slope z, run per 1 of height
 * @example slopedEndVolume(3, 2, 2) => 54; 2 × 9 × 2 / 2 + 4 × 27 / 3 = 18 + 36
 *
 * Source: by integration; half a pit less its middle, see pitVolume.
 */
export function slopedEndVolume(height: number, width: number, slope: number): number {
  return (slope * height ** 2 * width) / 2 + (slope ** 2 * height ** 3) / 3;
}

/**
 * Cut and fill from station to station. Where the line passes from cut to fill, the point in between is found by
 * straight interpolation and both parts are worked out to it. A station with a step has two rows, above and below it.
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
export function cutFill(
  stations: readonly DesignStation[],
  slopes: SideSlopes,
  method: VolumeMethod,
  { topsoil = 0, firstEnd = "square" }: CutFillOptions = {},
): StationVolume[] {
  requireRange("topsoil", topsoil, CUT_FILL_RANGE.topsoil.min, CUT_FILL_RANGE.topsoil.max, "m");
  const rows: StationVolume[] = [];
  /** The surface that the reach below the station before begins on. */
  let from: Station | undefined;
  let soFar: SectionArea = { cut: 0, fill: 0 };
  let topsoilSoFar = 0;
  const add = (at: Station, stripped: Station, volume: SectionArea): void => {
    soFar = plus(soFar, volume);
    const area = sectionArea(stripped, slopes);
    rows.push({ ...at, depth: stripped.ground - stripped.design, area, volume, soFar, topsoilSoFar });
  };
  alongLine(stations, SECTION_RANGE.station, (at) => {
    const step = at.step ?? 0;
    requireRange("step", step, CUT_FILL_RANGE.step.min, CUT_FILL_RANGE.step.max, "m");
    const below = stripped(at, topsoil);
    const above = { ...below, design: below.design + step };
    let volume: SectionArea;
    if (from) {
      volume = between(from, above, slopes, method);
      const length = at.station - from.station;
      topsoilSoFar += topsoil * endAreaVolume(length, footprint(from, slopes), footprint(above, slopes));
    } else volume = firstEnd === "sloped" ? slopedEnd(above, slopes) : NOTHING;
    add({ ...at, design: above.design }, above, volume);
    if (step !== 0) add(at, below, NOTHING);
    from = below;
  });
  return rows;
}

const NOTHING: SectionArea = { cut: 0, fill: 0 };

function stripped(at: Station, topsoil: number): Station {
  return { ...at, ground: at.ground - topsoil };
}

function slopedEnd(at: Station, slopes: SideSlopes): SectionArea {
  const depth = at.ground - at.design;
  return depth > 0
    ? { cut: slopedEndVolume(depth, at.width, slopes.cut), fill: 0 }
    : { cut: 0, fill: slopedEndVolume(-depth, at.width, slopes.fill) };
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
