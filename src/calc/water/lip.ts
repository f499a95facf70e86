import { findNamed, namedRows } from "../named";
import { invalid, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";
import { LIP_SHAPES, OWN_COEFFICIENT, type LipShape } from "../tables/lips";
import { solveBracketed } from "../solve";

/** What a lip needs for its flow; the name and source stay in the table. */
export type Lip = Pick<LipShape, "coefficient" | "endContractions" | "thin">;

/** What the calculations accept, SI. A sheet deeper than the lip is wide is a notch, not a lip. */
export const LIP_RANGE = {
  width: { min: 0.01, max: 50 },
  depth: { min: 0, max: 1 },
  flow: { min: 0, max: 100 },
} as const;

/** Where the weir standards hold: sheets of at least 0.2 ft (60 mm), at most a third of the width (from memory). */
export const LIP_STANDARD_RANGE = { leastDepth: 0.06, mostDepthPerWidth: 1 / 3 } as const;

const shapes = namedRows(LIP_SHAPES);

/**
 * The lip shape a name stands for; letter case and spacing do not matter.
 * @throws Problem "missing" that lists the names
 * @example findLipShape("Flat stone").name => "broad"; its other word
 */
export function findLipShape(name: string, label = "lip shape"): LipShape {
  return findNamed(shapes, name, label, "or a coefficient of your own");
}

/** The usual lip: a flat stone, or the flat lip of a spillway box. */
export const USUAL_LIP = findLipShape("broad");

/**
 * A lip with a coefficient of the user's own, without end contractions.
 *
 * @param coefficient C of Q = C L H^1.5, m^½/s, 1.10 to 2.21
 * @throws Problem outside this range
 * @example ownLip(1.7).coefficient => 1.7; by definition
 */
export function ownLip(coefficient: number): Lip {
  return {
    coefficient: requireRange("coefficient", coefficient, OWN_COEFFICIENT.min, OWN_COEFFICIENT.max, "m^½/s"),
    endContractions: 0,
  };
}

/**
 * Flow over a lip: Q = C (L - 0.1 n H) H^1.5.
 *
 * Thin sheets cling and spread: below 60 mm (0.2 ft), where every cascade lies, expect ±10 to 20 % (common practice, no source).
 *
 * @param width L, m, 0.01 to 50
 * @param depth H, m, 0 to 1 and at most the width: the still water level above the lip, measured a little upstream
 * @param lip C in m^½/s and the number n of contracted ends
 * @returns m³/s
 * @throws Problem outside these ranges
 * @example lipFlow(1, 0.09, ownLip(1.7)) => 0.0459; 1.7 × 1 × 0.09^1.5 = 1.7 × 0.027
 *
 * Source: J. B. Francis, Lowell Hydraulic Experiments (1855), as in the EPA SWMM Reference Manual vol. II, section 6.3.2.
 */
export function lipFlow(width: number, depth: number, lip: Lip = USUAL_LIP): number {
  requireRange("lip width", width, LIP_RANGE.width.min, LIP_RANGE.width.max, "m");
  requireRange("sheet depth", depth, LIP_RANGE.depth.min, LIP_RANGE.depth.max, "m");
  if (depth > width) {
    throw invalid(
      `sheet depth must be at most the lip width, ${sayBoth("size", width)}; got ${sayBoth("size", depth)}: give a wider lip`,
    );
  }
  return lip.coefficient * (width - 0.1 * lip.endContractions * depth) * depth ** 1.5;
}

/**
 * Depth of the sheet that carries a flow over a lip: the inverse of `lipFlow`, H where C (L - 0.1 n H) H^1.5 = Q.
 *
 * @param flow Q, m³/s, 0 to 100
 * @param width L, m, 0.01 to 50
 * @returns m
 * @throws Problem outside these ranges, or when the flow stands deeper on the lip than the lip is wide
 * @example lipDepth(0.0459, 1, ownLip(1.7)) => 0.09; (0.0459 / 1.7)^(2/3)
 *
 * Source: as `lipFlow`.
 */
export function lipDepth(flow: number, width: number, lip: Lip = USUAL_LIP): number {
  requireRange("flow", flow, LIP_RANGE.flow.min, LIP_RANGE.flow.max, "m³/s");
  const deepest = deepestSheet(width);
  const most = lipFlow(width, deepest, lip);
  if (flow > most) {
    throw invalid(
      `flow must be at most ${sayBoth("flow", most)} over a lip ${sayBoth("size", width)} wide; ` +
        `got ${sayBoth("flow", flow)}: give a wider lip`,
    );
  }
  return solveBracketed((depth) => lipFlow(width, depth, lip) - flow, 0, deepest, "the sheet depth");
}

/** The deepest sheet a lip is worked out for, m. */
export function deepestSheet(width: number): number {
  requireRange("lip width", width, LIP_RANGE.width.min, LIP_RANGE.width.max, "m");
  return Math.min(width, LIP_RANGE.depth.max);
}

/**
 * How far to trust a sheet on a lip, in words: "" inside the range of the standards.
 *
 * @example lipDoubt(1, 0.1) => ""; inside the standards' range
 */
export function lipDoubt(width: number, depth: number): string {
  if (depth > width * LIP_STANDARD_RANGE.mostDepthPerWidth) return "deep for its width: ±20%";
  if (depth < LIP_STANDARD_RANGE.leastDepth) return "thin sheet: ±10 to 20%";
  return "";
}
