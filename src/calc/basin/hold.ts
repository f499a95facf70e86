import { EARTH_RANGE, pitVolume } from "../earth/earthworks";
import { invalid, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";
import { solveBracketed } from "../solve";

/** A basin with a level bottom and walls that rise straight up or slope out. */
export interface BasinShape {
  /** Length of the bottom, m. */
  readonly length: number;
  /** Width of the bottom, m. */
  readonly width: number;
  /** Room for water per volume (porosity, not void ratio), 0.05 to 1. */
  readonly voidFraction: number;
  /** How far a wall goes out for each 1 it goes up; 0 is upright. */
  readonly sideSlope: number;
}

/** What the calculations accept; a gravel that holds less than a twentieth is no basin. */
export const BASIN_RANGE = { side: { min: 0.01, max: 500 }, voidFraction: { min: 0.05, max: 1 } } as const;

/** The deepest water a basin is worked out for, m. */
export const DEEPEST_BASIN = EARTH_RANGE.depth.max;

/**
 * Water a basin holds up to a depth: n (L W d + z d² (L + W) + 4/3 z² d³), exact for a level bottom.
 *
 * @param basin L, W 0.01 to 500 m; n 0.05 to 1; z 0 to 10
 * @param depth d, m, 0 to 6.1
 * @returns m³
 * @throws Problem outside these ranges
 * @example basinHold({ length: 3, width: 2, voidFraction: 0.95, sideSlope: 0 }, 0.6) => 3.42; 3 × 2 × 0.6 × 0.95
 *
 * Source: geometry (prismoidal formula); void fraction as porosity n = e / (1 + e) of a void ratio e.
 */
export function basinHold(basin: BasinShape, depth: number): number {
  requireRange("length", basin.length, BASIN_RANGE.side.min, BASIN_RANGE.side.max, "m");
  requireRange("width", basin.width, BASIN_RANGE.side.min, BASIN_RANGE.side.max, "m");
  requireRange("void fraction", basin.voidFraction, BASIN_RANGE.voidFraction.min, BASIN_RANGE.voidFraction.max);
  return basin.voidFraction * pitVolume(basin.length, basin.width, depth, basin.sideSlope);
}

/**
 * Depth of water that a volume takes up in a basin: the inverse of `basinHold`.
 *
 * @param volume m³, 0 or more
 * @returns m
 * @throws Problem when the volume would stand over 6.1 m deep, or a side is out of range
 * @example basinDepth(3.42, { length: 3, width: 2, voidFraction: 0.95, sideSlope: 0 }) => 0.6; 3.42 / (3 × 2 × 0.95)
 *
 * Source: as `basinHold`.
 */
export function basinDepth(volume: number, basin: BasinShape): number {
  const most = basinHold(basin, DEEPEST_BASIN);
  if (!(volume >= 0 && volume <= most)) {
    throw invalid(
      `volume must be 0 to ${sayBoth("water", most)}, which stands ${sayBoth("length", DEEPEST_BASIN)} deep in this basin; ` +
        `got ${sayBoth("water", volume)}: give a longer or wider basin`,
    );
  }
  return solveBracketed((depth) => basinHold(basin, depth) - volume, 0, DEEPEST_BASIN, "the depth of the basin");
}
