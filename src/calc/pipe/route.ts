import { invalid, plain } from "../problem";
import type { Pipe } from "./bore";
import {
  HAZEN_WILLIAMS_EXPONENT,
  HAZEN_WILLIAMS_RANGE,
  boreArea,
  darcyWeisbachLoss,
  hazenWilliamsResistance,
  pipeSpeed,
} from "./friction";
import { minorResistance } from "./fittings";
import { USUAL_WATER_TEMPERATURE, waterViscosity } from "./waterProperties";

export type FrictionMethod = "Hazen-Williams" | "Darcy-Weisbach";
export const FRICTION_METHODS: readonly FrictionMethod[] = ["Hazen-Williams", "Darcy-Weisbach"];

/** One pipe of a route, in the order the water takes. */
export interface RoutePipe {
  readonly pipe: Pipe;
  /** m */
  readonly length: number;
  /** Sum of K of its fittings, without the outlet. */
  readonly k: number;
}

export interface RouteOptions {
  readonly method?: FrictionMethod;
  /** °C, for Darcy-Weisbach. */
  readonly waterTemperature?: number;
  /**
   * Velocity heads lost where the last pipe ends: 1 for any outlet, in the air or drowned.
   * 0 only for networks that list the outlet among their fittings.
   */
  readonly outlets?: 0 | 1;
}

/** What a pump works against: a lift and a route of pipes in series. */
export interface System {
  /** m */
  readonly lift: number;
  readonly pipes: readonly RoutePipe[];
  readonly method: FrictionMethod;
  /** m²/s */
  readonly viscosity: number;
  readonly outlets: number;
  /** Total dynamic head at a flow (m³/s), m. Rises with flow without a jump. */
  readonly headAt: (flow: number) => number;
}

/** Limits of a route that the calculations check; SI. */
export const ROUTE_RANGE = {
  lift: { min: 0, max: 100 },
  length: { min: 0, max: 5000 },
  k: { min: 0, max: 10_000 },
} as const;

const standardViscosity = waterViscosity(USUAL_WATER_TEMPERATURE);

/**
 * Total dynamic head of a route as a function of flow:
 * TDH = lift + Σ friction + Σ K V²/2g + the outlet's velocity head, counted once.
 * Friction is Hazen-Williams (SI form) or Darcy-Weisbach with Colebrook-White.
 * Losses where the size changes are not added; put their K into the row if they matter.
 *
 * @param lift m, 0 to 100: from the running water level up to the outlet
 * @param pipes at least one; length 0 to 5000 m, K 0 to 10,000
 * @throws Problem outside these ranges
 *
 * Source: energy equation, any hydraulics text; the parts as in friction.ts and fittings.ts.
 */
export function makeSystem(lift: number, pipes: readonly RoutePipe[], options: RouteOptions = {}): System {
  within("lift", lift, ROUTE_RANGE.lift, "m");
  if (pipes.length === 0) throw invalid("route is needed: at least one pipe");
  for (const { length, k } of pipes) {
    within("length", length, ROUTE_RANGE.length, "m");
    within("sum of K of the fittings", k, ROUTE_RANGE.k, "");
  }
  const { method = "Hazen-Williams", outlets = 1, waterTemperature } = options;
  const viscosity = waterTemperature === undefined ? standardViscosity : waterViscosity(waterTemperature);
  // Everything that does not depend on flow is worked out once: a duty point asks for the head many times.
  let minor = 0;
  pipes.forEach(({ pipe, k }, index) => {
    minor += minorResistance(index === pipes.length - 1 ? k + outlets : k, pipe.bore);
  });
  let resistance = 0;
  if (method === "Hazen-Williams") {
    for (const { pipe, length } of pipes) {
      resistance += hazenWilliamsResistance(length, pipe.bore, pipe.material.hazenWilliams);
    }
  }
  const headAt =
    method === "Hazen-Williams"
      ? (flow: number): number => lift + resistance * flow ** HAZEN_WILLIAMS_EXPONENT + minor * flow * flow
      : (flow: number): number => lift + darcyFriction(pipes, flow, viscosity) + minor * flow * flow;
  return { lift, pipes, method, viscosity, outlets, headAt };
}

function darcyFriction(pipes: readonly RoutePipe[], flow: number, viscosity: number): number {
  let sum = 0;
  for (const { pipe, length } of pipes) {
    sum += darcyWeisbachLoss(flow, pipe.bore, length, pipe.material.roughness, viscosity);
  }
  return sum;
}

function within(name: string, value: number, range: { min: number; max: number }, unit: string): void {
  if (value >= range.min && value <= range.max) return;
  const tail = unit ? ` ${unit}` : "";
  throw invalid(`${name} must be ${range.min} to ${range.max}${tail}; got ${plain(value)}${tail}`);
}

/** Flows the pipe and pump calculations take, m³/s: up to 1 m³/s (about 950,000 gph). */
export const FLOW_RANGE = { min: 0, max: 1 } as const;

/**
 * Head a pump has to give for a flow through a route: see makeSystem.
 *
 * @param flow m³/s, 0 to 1
 * @returns m
 * @throws Problem for a flow, lift or route outside its range
 */
export function totalDynamicHead(
  flow: number,
  lift: number,
  pipes: readonly RoutePipe[],
  options: RouteOptions = {},
): number {
  within("flow", flow, FLOW_RANGE, "m³/s");
  return makeSystem(lift, pipes, options).headAt(flow);
}

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
 * The total dynamic head of a system taken apart: the lift, each pipe's friction and fittings, and the outlet.
 *
 * @param flow m³/s, above 0
 * @returns parts whose heads add up to system.headAt(flow)
 */
export function routeParts(system: System, flow: number): RoutePart[] {
  const { pipes, method, viscosity, outlets } = system;
  const parts: RoutePart[] = [{ label: "Lift", head: system.lift, remark: "" }];
  for (const { pipe, length, k } of pipes) {
    const speed = pipeSpeed(flow, pipe.bore);
    const friction =
      method === "Hazen-Williams"
        ? hazenWilliamsResistance(length, pipe.bore, pipe.material.hazenWilliams) * flow ** HAZEN_WILLIAMS_EXPONENT
        : darcyWeisbachLoss(flow, pipe.bore, length, pipe.material.roughness, viscosity);
    const remark = speedRemark(speed, pipe, method, viscosity);
    parts.push({ label: `Friction in ${pipe.label}`, head: friction, speed, remark });
    if (k > 0) {
      parts.push({
        label: `Fittings on ${pipe.label}`,
        head: minorResistance(k, pipe.bore) * flow * flow,
        speed,
        remark: "",
      });
    }
  }
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

function speedRemark(speed: number, pipe: Pipe, method: FrictionMethod, viscosity: number): string {
  if (speed > HAZEN_WILLIAMS_RANGE.mostSpeed) return "much too fast: take a bigger pipe";
  if (speed > USUAL_SPEED_LIMIT) return "fast: over 5 ft/s (1.5 m/s)";
  const reynolds = (speed * pipe.bore) / viscosity;
  if (method === "Hazen-Williams" && speed > 0 && reynolds < HAZEN_WILLIAMS_RANGE.leastReynolds) {
    return "not turbulent: Darcy-Weisbach is the better method here";
  }
  return "";
}
