import { invalid, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";
import { solveBracketed } from "../solve";
import { deepestSheet, lipFlow, LIP_RANGE, USUAL_LIP, type Lip } from "./lip";

/** A lip that shares its pool with others. */
export interface SharedLip {
  /** m */
  readonly width: number;
  /** Height above any fixed level, m; only differences matter. */
  readonly level: number;
}

/** What one of the lips gets. */
export interface LipShare {
  /** m³/s */
  readonly flow: number;
  /** m; 0 where the lip stays dry */
  readonly depth: number;
  /** Part of the whole flow, 0 to 1. */
  readonly share: number;
}

/** How many lips may share a pool, and how far apart their levels may lie, m. */
export const SHARED_LIPS = { most: 50, level: { min: 0, max: 1 } } as const;

/**
 * How a flow splits over lips that share one pool: the water level z where Σ Qi(z - level i) = Q;
 * lips above z stay dry.
 *
 * @param flow Q, m³/s, above 0, at most 100
 * @param lips 1 to 50: width 0.01 to 50 m, level 0 to 1 m
 * @returns one share for each lip, in order; the flows add up to Q
 * @throws Problem outside these ranges, or when a lip would stand in water deeper than it is wide
 * @example splitFlow(0.01, [{ width: 1, level: 0 }, { width: 1, level: 0 }])[0].share => 0.5; two lips alike
 *
 * Source: continuity with the weir equation of `lipFlow`; the pool's own slope and speed are left out.
 */
export function splitFlow(flow: number, lips: readonly SharedLip[], shape: Lip = USUAL_LIP): LipShare[] {
  requireRange("flow", flow, LIP_RANGE.flow.min, LIP_RANGE.flow.max, "m³/s");
  if (flow === 0) throw invalid("flow must be more than 0");
  if (lips.length === 0 || lips.length > SHARED_LIPS.most) {
    throw invalid(`lips must be 1 to ${SHARED_LIPS.most} rows; got ${lips.length}`);
  }
  lips.forEach(({ level }, index) => {
    requireRange(`level of lip ${index + 1}`, level, SHARED_LIPS.level.min, SHARED_LIPS.level.max, "m");
  });

  const lowest = Math.min(...lips.map((lip) => lip.level));
  const depthsAt = (level: number): number[] =>
    lips.map((lip) => Math.min(Math.max(0, level - (lip.level - lowest)), deepestSheet(lip.width)));
  const flowsAt = (level: number): number[] => {
    const depths = depthsAt(level);
    return lips.map((lip, index) => lipFlow(lip.width, depths[index] ?? 0, shape));
  };
  const total = (flows: readonly number[]): number => flows.reduce((sum, part) => sum + part, 0);

  // No lip is worked out for a sheet deeper than it is wide, so the narrowest or lowest lip ends the search.
  const highest = Math.min(...lips.map((lip) => lip.level - lowest + deepestSheet(lip.width)));
  const most = total(flowsAt(highest));
  if (flow > most) {
    throw invalid(
      `flow must be at most ${sayBoth("flow", most)} over these lips; got ${sayBoth("flow", flow)}: ` +
        "the narrowest would stand in water deeper than it is wide",
    );
  }
  const level = solveBracketed((z) => total(flowsAt(z)) - flow, 0, highest, "the common water level");
  const flows = flowsAt(level);
  const depths = depthsAt(level);
  const sum = total(flows);
  return flows.map((part, index) => ({
    // The solver leaves a last digit over; scaling hands it out, so that the parts add up to the flow.
    flow: (part / sum) * flow,
    depth: depths[index] ?? 0,
    share: part / sum,
  }));
}
