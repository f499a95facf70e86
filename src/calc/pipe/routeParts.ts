import type { Pipe } from "./bore";
import { minorResistance } from "./fittings";
import {
  HAZEN_WILLIAMS_EXPONENT,
  HAZEN_WILLIAMS_RANGE,
  boreArea,
  darcyWeisbachLoss,
  hazenWilliamsResistance,
  pipeSpeed,
} from "./friction";
import type { FrictionMethod, RoutePipe, System } from "./route";

/** What a part of the route takes of the head. */
export interface RoutePart {
  readonly label: string;
  /** m */
  readonly head: number;
  /** m/s; undefined for the lift. */
  readonly speed?: number;
  /** What to know about this part; "" when nothing. */
  readonly remark: string;
}

/** Speed above which a pipe wears, knocks and costs, m/s (5 ft/s). Common practice, no source. */
export const USUAL_SPEED_LIMIT = 1.524;

/**
 * The total dynamic head of a system taken apart: the lift, friction and fittings of each pipe of the riser and of the
 * shared route, and the outlet.
 *
 * @param flow of all pumps together, m³/s, above 0
 * @param pumps side by side, each with a riser of its own
 * @returns parts whose heads add up to system.headFor(pumps)(flow)
 * @example routeParts(makeSystem(2, [{ pipe: findPipe({ size: 0.05, isBore: true }, "Bore"), length: 10, k: 1 }]),
 *   0.002)[0].head => 2; the lift
 */
export function routeParts(system: System, flow: number, pumps = 1): RoutePart[] {
  const { pipes, outlets } = system;
  const parts: RoutePart[] = [
    { label: "Lift", head: system.lift, remark: "" },
    ...system.riser.flatMap((row) => pipeParts(system, row, flow / pumps, "riser, ")),
    ...pipes.flatMap((row) => pipeParts(system, row, flow, "")),
  ];
  const last = pipes[pipes.length - 1];
  if (last && outlets > 0) {
    const speed = flow / boreArea(last.pipe.bore);
    parts.push({
      label: "Outlet velocity head",
      head: minorResistance(outlets, last.pipe.bore) * flow * flow,
      speed,
      remark: "",
    });
  }
  return parts;
}

/** Friction of a pipe and, where it has any, its fittings. */
function pipeParts(
  { method, viscosity }: System,
  { pipe, length, k }: RoutePipe,
  flow: number,
  where: string,
): RoutePart[] {
  const speed = pipeSpeed(flow, pipe.bore);
  const friction =
    method === "Hazen-Williams"
      ? hazenWilliamsResistance(length, pipe.bore, pipe.material.hazenWilliams) * flow ** HAZEN_WILLIAMS_EXPONENT
      : darcyWeisbachLoss(flow, pipe.bore, length, pipe.material.roughness, viscosity);
  const remark = speedRemark(speed, pipe, method, viscosity);
  const parts: RoutePart[] = [{ label: `Friction in ${where}${pipe.label}`, head: friction, speed, remark }];
  if (k > 0) {
    const head = minorResistance(k, pipe.bore) * flow * flow;
    parts.push({ label: `Fittings on ${where}${pipe.label}`, head, speed, remark: "" });
  }
  return parts;
}

/**
 * The speed in the fastest pipe, m/s, for the flow of all pumps together.
 *
 * @example fastestSpeed(makeSystem(2, [{ pipe: findPipe({ size: 0.05, isBore: true }, "Bore"), length: 10, k: 1 }]),
 *   0.002) => 1.0186; 0.002 / 0.00196350
 */
export function fastestSpeed(system: System, flow: number, pumps = 1): number {
  const most = (rows: readonly RoutePipe[], carried: number): number =>
    rows.reduce((fastest, { pipe }) => Math.max(fastest, pipeSpeed(carried, pipe.bore)), 0);
  return Math.max(most(system.pipes, flow), most(system.riser, flow / pumps));
}

function speedRemark(speed: number, pipe: Pipe, method: FrictionMethod, viscosity: number): string {
  if (speed > HAZEN_WILLIAMS_RANGE.mostSpeed) return "much too fast: take a bigger pipe";
  if (speed > USUAL_SPEED_LIMIT) return "fast: over 5 ft/s (1.5 m/s)";
  const reynolds = (speed * pipe.bore) / viscosity;
  if (method === "Hazen-Williams" && speed > 0 && reynolds < HAZEN_WILLIAMS_RANGE.leastReynolds) {
    return "not turbulent: Darcy-Weisbach is the better method here";
  }
  return "";
}
