import type { System } from "../pipe/route";
import { invalid, plain } from "../problem";
import { solveBracketed } from "../solve";
import { headBetween } from "./shape";
import { checkSpeed, lastFlow, pumpHead, shutOffHead, type PumpCurve } from "./curve";

/** How pumps meet a system. */
export type DutyState =
  /** They deliver the flow. */
  | "delivers"
  /** The lift is more than the shut-off head: no flow at all. */
  | "cannot lift"
  /** The system takes more than the curve's last point: the true flow is more than this, and unknown. */
  | "off its curve";

/** Where the pump curve and the system curve meet. */
export interface DutyPoint {
  readonly state: DutyState;
  /** Flow of all pumps together, m³/s; 0 when they cannot lift; the last known one when off the curve. */
  readonly flow: number;
  /** Head of the pumps at that flow, m. */
  readonly head: number;
}

/** Identical pumps side by side that share the route, each with a riser of its own. */
export const PARALLEL_PUMPS = { min: 1, max: 12 } as const;

/** How close the flow is found, as a share of itself: far inside any maker's tolerance. */
const FLOW_TOLERANCE = 1e-9;

/**
 * The flow really delivered: where the head of the pumps equals the total dynamic head of the system.
 * Identical pumps in parallel each carry Q / m against the same head: H(Q) = n² H₁(Q / (m n)). So does each one's riser.
 * System head rises and pump head falls with flow, so there is at most one such point; the piece of the
 * curve it lies on is found by halving, the point on it by the bracketed solver.
 *
 * @param pumps m, 1 to 12, whole
 * @param speed n, 0.1 to 2 of the curve's speed
 * @throws Problem for counts and speeds outside their ranges
 * @example dutyPoint(makeCurve([{ flow: 0, head: 6 }, { flow: 0.002, head: 4 }]), makeSystem(7, [{ pipe: findPipe({
 *   size: 0.05, isBore: true }, "Bore"), length: 10, k: 1 }])).state => "cannot lift"; 7 m of lift, 6 m of head
 *
 * Source: any text on pumps; DOE-HDBK-1012/3 for pumps in parallel and pump laws.
 */
export function dutyPoint(curve: PumpCurve, system: System, pumps = 1, speed = 1): DutyPoint {
  checkSpeed(speed);
  checkPumps(pumps);
  const shutOff = shutOffHead(curve, speed);
  if (shutOff <= system.lift) return { state: "cannot lift", flow: 0, head: shutOff };

  const { flows, heads } = curve;
  const flowScale = pumps * speed;
  const headScale = speed * speed;
  const headAt = system.headFor(pumps);
  const surplus = (index: number): number => (heads[index] ?? 0) * headScale - headAt((flows[index] ?? 0) * flowScale);

  // The surplus falls along the points: `low` keeps one that still has some, `high` one that has none.
  let low = 0;
  let high = flows.length - 1;
  const atEnd = surplus(high);
  if (atEnd >= 0) {
    const flow = lastFlow(curve, speed) * pumps;
    return { state: atEnd === 0 ? "delivers" : "off its curve", flow, head: (heads[high] ?? 0) * headScale };
  }
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (surplus(middle) >= 0) low = middle;
    else high = middle;
  }
  const from = (flows[low] ?? 0) * flowScale;
  const to = (flows[high] ?? 0) * flowScale;
  const piece = headBetween(curve, low);
  const pumpsAt = (flow: number): number => piece(flow / flowScale) * headScale;
  const flow = solveBracketed((q) => pumpsAt(q) - headAt(q), from, to, "the duty point", FLOW_TOLERANCE);
  return { state: "delivers", flow, head: pumpsAt(flow) };
}

/** A point of the chart: heads in m at a flow in m³/s. */
export interface ChartPoint {
  readonly flow: number;
  readonly pumpHead: number;
  readonly systemHead: number;
}

/** Points a chart may have. */
export const CHART_POINTS = { min: 2, max: 200 } as const;

/**
 * Pump and system curves at even steps of flow, from none to the end of the pump curve.
 *
 * @param points 2 to 200, whole
 * @throws Problem as dutyPoint
 * @example chartPoints(makeCurve([{ flow: 0, head: 6 }, { flow: 0.002, head: 4 }]), makeSystem(3, [{ pipe: findPipe({
 *   size: 0.05, isBore: true }, "Bore"), length: 10, k: 1 }]), 1, 1, 3).map(({ pumpHead: head }) => head) => [6, 5,
 *   4]; a straight line
 */
export function chartPoints(
  curve: PumpCurve,
  system: System,
  pumps: number,
  speed: number,
  points: number,
): ChartPoint[] {
  checkPumps(pumps);
  const headAt = system.headFor(pumps);
  const end = lastFlow(curve, speed);
  return Array.from({ length: points }, (_, index) => {
    const flow = (end * index) / (points - 1);
    return { flow: flow * pumps, pumpHead: pumpHead(curve, flow, speed), systemHead: headAt(flow * pumps) };
  });
}

function checkPumps(pumps: number): void {
  if (Number.isInteger(pumps) && pumps >= PARALLEL_PUMPS.min && pumps <= PARALLEL_PUMPS.max) return;
  throw invalid(
    `pumps must be a whole number from ${PARALLEL_PUMPS.min} to ${PARALLEL_PUMPS.max}; got ${plain(pumps)}`,
  );
}
