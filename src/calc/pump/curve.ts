import { invalid, plain } from "../problem";
import { headBetween, slopesAt } from "./shape";

/** One point of a maker's curve: m³/s, m. */
export interface CurvePoint {
  readonly flow: number;
  readonly head: number;
}

/** A checked pump curve, from the shut-off head at no flow to its last point; flows rise, heads never do. */
export interface PumpCurve {
  readonly flows: readonly number[];
  readonly heads: readonly number[];
  /** Head per flow at each point, m per m³/s, 0 or less. */
  readonly slopes: readonly number[];
}

/** Points a curve may have. */
export const CURVE_POINTS = { min: 2, max: 200 } as const;

/** Heads of a pump, m. */
export const CURVE_RANGE = { head: { min: 0, max: 200 } } as const;

/** Speeds the affinity laws are used for, as a share of the speed of the curve. */
export const SPEED_RANGE = { min: 0.1, max: 2 } as const;

/**
 * Checks and orders the points of a pump curve, and finds its slope at each, from which it is read in between.
 *
 * @param points at least two, in any order, the one of no flow (shut-off head) among them; m³/s and m
 * @param name names the curve in sentences
 * @throws Problem when a point is negative or twice, the shut-off head is missing, or head rises with flow
 * @example makeCurve([{ flow: 0, head: 6 }, { flow: 0.002, head: 4 }]).heads => [6, 4]; the points
 */
export function makeCurve(points: readonly CurvePoint[], name = "curve"): PumpCurve {
  if (points.length < CURVE_POINTS.min || points.length > CURVE_POINTS.max) {
    throw invalid(`${name} must have ${CURVE_POINTS.min} to ${CURVE_POINTS.max} points; got ${points.length}`);
  }
  points.forEach(({ flow, head }, index) => {
    if (flow >= 0 && head >= 0 && Number.isFinite(flow) && Number.isFinite(head)) return;
    throw invalid(`${name} point ${index + 1} must have a flow and a head of 0 or more`);
  });
  const sorted = [...points].sort((a, b) => a.flow - b.flow);
  if (sorted[0]?.flow !== 0) throw invalid(`${name} needs its shut-off head: a point with flow 0 and the highest head`);
  sorted.forEach(({ flow, head }, index) => {
    const before = sorted[index - 1];
    if (!before) return;
    const place = `between its points ${index} and ${index + 1} in the order of flow`;
    if (flow === before.flow) throw invalid(`${name} has two points with the same flow, ${place}`);
    if (head > before.head) {
      throw invalid(`${name} rises ${place}; head must fall as flow grows, so correct or leave out that point`);
    }
  });
  const flows = sorted.map((point) => point.flow);
  const heads = sorted.map((point) => point.head);
  return { flows, heads, slopes: slopesAt(flows, heads) };
}

/**
 * The flow of the curve's last point at a speed, m³/s: beyond it nothing is known.
 *
 * @example lastFlow(makeCurve([{ flow: 0, head: 6 }, { flow: 0.002, head: 4 }]), 0.5) => 0.001; 0.002 × 0.5
 */
export function lastFlow(curve: PumpCurve, speed = 1): number {
  return (curve.flows[curve.flows.length - 1] ?? 0) * speed;
}

/** The head at no flow at a speed, m. */
export function shutOffHead(curve: PumpCurve, speed = 1): number {
  return (curve.heads[0] ?? 0) * speed * speed;
}

/**
 * Head a pump gives at a flow and speed.
 * H(Q) = n² H₁(Q / n), H₁ the curve between its points (see headBetween), n the share of the curve's speed.
 *
 * @param flow m³/s, 0 to the curve's last flow × n; never extrapolated
 * @param speed n, 0.1 to 2
 * @returns m
 * @throws Problem for a flow past the end of the curve or a speed outside its range
 * @example pumpHead(makeCurve([{ flow: 0, head: 6 }, { flow: 0.002, head: 4 }]), 0.001) => 5; half way on a straight
 *   line
 *
 * Source: affinity laws, DOE-HDBK-1012/3, pump laws; Crane TP-410, example 7.33; between points R. W. Stineman (1980).
 */
export function pumpHead(curve: PumpCurve, flow: number, speed = 1): number {
  checkSpeed(speed);
  if (!(flow >= 0)) throw invalid(`flow must be 0 or more; got ${plain(flow)} m³/s`);
  const end = lastFlow(curve, speed);
  // A flow typed as the last point must not fall off its end for the last binary digit.
  if (flow > end * (1 + 1e-12)) {
    throw invalid(`flow ${plain(flow)} m³/s lies past the end of the curve, which is known up to ${plain(end)} m³/s`);
  }
  return headOnCurve(curve, Math.min(flow / speed, lastFlow(curve))) * speed * speed;
}

/** Refuses a speed, as a share of the curve's own, that the affinity laws do not reach. */
export function checkSpeed(speed: number): void {
  if (speed >= SPEED_RANGE.min && speed <= SPEED_RANGE.max) return;
  throw invalid(`speed must be ${SPEED_RANGE.min} to ${SPEED_RANGE.max} of the curve's; got ${plain(speed)}`);
}

/** Head at a flow that lies on the curve, at the curve's own speed. */
function headOnCurve(curve: PumpCurve, flow: number): number {
  let low = 0;
  let high = curve.flows.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((curve.flows[middle] ?? 0) <= flow) low = middle;
    else high = middle;
  }
  return headBetween(curve, low)(flow);
}
