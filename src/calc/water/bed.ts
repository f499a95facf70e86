import { findNamed, namedRows } from "../named";
import { GRAVITY } from "../pipe/friction";
import { invalid, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";
import { solveBracketed } from "../solve";
import { BED_KINDS, OWN_ROUGHNESS } from "../tables/beds";

/** A stream bottom: flat across, with sides that rise straight up or slope out. */
export interface Bed {
  /** Width of the bottom, m. */
  readonly width: number;
  /** Fall along the bed per length of it, m/m. */
  readonly slope: number;
  /** Manning's n. */
  readonly roughness: number;
  /** How far a side goes out for each 1 it goes up; 0 is upright. */
  readonly sideSlope: number;
}

/** Flow that neither speeds up nor slows down. */
export interface NormalFlow {
  /** m */
  readonly depth: number;
  /** m/s */
  readonly speed: number;
  /** Cross-section of the water, m². */
  readonly area: number;
  /** Speed over the speed of a small wave; above 1 the water shoots. */
  readonly froude: number;
}

/** What the calculations accept, SI. A triangle (width 0) is allowed where the sides slope. */
export const BED_RANGE = {
  flow: { min: 0, max: 100 },
  width: { min: 0, max: 50 },
  slope: { min: 1e-5, max: 1 },
  sideSlope: { min: 0, max: 10 },
  depth: { max: 10 },
} as const;

/** Water shallower than this runs between the stones rather than over them, m (common practice, no source). */
export const SHALLOW = 0.05;

/** The bed kind used when none is named. */
export const USUAL_BED = "cobbles and boulders";

const kinds = namedRows(BED_KINDS);

/**
 * Manning's n of a bed kind; letter case and spacing do not matter.
 * @throws Problem "missing" that lists the names
 * @example findRoughness("cobbles and boulders") => 0.05; V. T. Chow, Open-Channel Hydraulics (1959), Table 5-6
 */
export function findRoughness(name: string, label = "roughness"): number {
  return findNamed(kinds, name, label, "or Manning's n").n;
}

/**
 * Mean speed of an even flow: V = (1/n) R^(2/3) S^(1/2).
 *
 * @param hydraulicRadius R, m: area over wetted edge, 0 or more
 * @param slope S, m/m
 * @param roughness n
 * @returns m/s
 * @example manningSpeed(1, 0.01, 0.03) => 3.3333; 1 × 0.1 / 0.03
 *
 * Source: Manning (1891), SI form; V. T. Chow, Open-Channel Hydraulics (1959), Eq. 5-6.
 */
export function manningSpeed(hydraulicRadius: number, slope: number, roughness: number): number {
  return (hydraulicRadius ** (2 / 3) * Math.sqrt(slope)) / roughness;
}

/**
 * The even flow of a depth in a bed: Q = A V with A = b y + z y² and R = A / (b + 2 y √(1 + z²)).
 *
 * @param depth y, m, 0 or more
 * @returns depth, speed, area and the Froude number V / √(g A / T), T the width of the water's surface
 * @throws Problem for a bed outside BED_RANGE
 * @example flowAtDepth({ width: 2, slope: 0.01, roughness: 0.03, sideSlope: 0 }, 1).speed => 2.1; (2 / 4)^(2/3) × 0.1
 *   / 0.03
 *
 * Source: as `manningSpeed`; Froude number with the hydraulic depth A/T, Chow (1959), section 3-3.
 */
export function flowAtDepth(bed: Bed, depth: number): NormalFlow {
  const { width, slope, roughness, sideSlope } = checked(bed);
  const area = (width + sideSlope * depth) * depth;
  const wetted = width + 2 * depth * Math.sqrt(1 + sideSlope * sideSlope);
  if (area === 0) return { depth, speed: 0, area: 0, froude: 0 };
  const speed = manningSpeed(area / wetted, slope, roughness);
  const surface = width + 2 * sideSlope * depth;
  return { depth, speed, area, froude: speed / Math.sqrt((GRAVITY * area) / surface) };
}

/**
 * Depth and speed at which a bed carries a flow evenly (normal depth): the y where A(y) V(y) = Q.
 *
 * The tables' n hold for water much deeper than its stones. In a cascade n is 0.06 to 0.15 rather than 0.05,
 * so that the true depth is 1.1 to 1.9 times this one and the speed that much less.
 *
 * @param flow Q, m³/s, 0 to 100
 * @param bed width 0 to 50 m, slope 0.00001 to 1, n 0.009 to 0.3, side slope 0 to 10
 * @throws Problem outside these ranges, or when the bed would have to be over 10 m deep
 * @example normalFlow(4.19974, { width: 2, slope: 0.01, roughness: 0.03, sideSlope: 0 }).depth => 1; 2 × 1 × 0.62996
 *   × 0.1 / 0.03 = 4.19974
 *
 * Source: as `flowAtDepth`.
 */
export function normalFlow(flow: number, bed: Bed): NormalFlow {
  requireRange("flow", flow, BED_RANGE.flow.min, BED_RANGE.flow.max, "m³/s");
  const carried = (depth: number): number => {
    const { area, speed } = flowAtDepth(bed, depth);
    return area * speed;
  };
  let high = 0.001;
  while (carried(high) < flow) {
    if (high >= BED_RANGE.depth.max) {
      throw invalid(
        `flow must fit the bed: ${sayBoth("flow", flow)} would stand over ${sayBoth("length", BED_RANGE.depth.max)} deep in it; ` +
          "give a wider or steeper bed",
      );
    }
    high = Math.min(2 * high, BED_RANGE.depth.max);
  }
  return flowAtDepth(
    bed,
    solveBracketed((depth) => carried(depth) - flow, 0, high, "the depth of the stream"),
  );
}

/**
 * How far to trust a bed's depth and speed, in words: "" where nothing is to be said.
 *
 * @example bedDoubt({ depth: 1, speed: 1, area: 2, froude: 0.3 }) => ""; deep and calm
 */
export function bedDoubt({ depth, froude }: NormalFlow): string {
  const doubts = [
    depth < SHALLOW ? "shallow over its stones: 1.1 to 1.9 times as deep" : "",
    froude > 1 ? "shoots (Froude number over 1)" : "",
  ];
  return doubts.filter(Boolean).join("; ");
}

function checked(bed: Bed): Bed {
  requireRange("bed width", bed.width, BED_RANGE.width.min, BED_RANGE.width.max, "m");
  requireRange("slope", bed.slope, BED_RANGE.slope.min, BED_RANGE.slope.max, "m/m");
  requireRange("roughness", bed.roughness, OWN_ROUGHNESS.min, OWN_ROUGHNESS.max);
  requireRange("side slope", bed.sideSlope, BED_RANGE.sideSlope.min, BED_RANGE.sideSlope.max);
  if (bed.width === 0 && bed.sideSlope === 0)
    throw invalid("bed width must be more than 0 where the sides are upright");
  return bed;
}
