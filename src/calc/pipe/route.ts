import { invalid, plain } from "../problem";
import type { Pipe } from "./bore";
import { HAZEN_WILLIAMS_EXPONENT, darcyWeisbachLoss, hazenWilliamsResistance } from "./friction";
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
  /** Pipes each pump has for itself, from the pump to where the flows join; none when left out. */
  readonly riser?: readonly RoutePipe[];
}

/** What pumps work against: a lift, the pipes each has for itself, and the pipes in series that they share. */
export interface System {
  /** m */
  readonly lift: number;
  readonly pipes: readonly RoutePipe[];
  /** Each pump's own pipes, which carry its share of the flow. */
  readonly riser: readonly RoutePipe[];
  readonly method: FrictionMethod;
  /** m²/s */
  readonly viscosity: number;
  readonly outlets: number;
  /** Total dynamic head of one pump at a flow (m³/s), m. Rises with flow without a jump. */
  readonly headAt: HeadAt;
  /** The same for a number of pumps side by side, over the flow of all together. */
  readonly headFor: (pumps: number) => HeadAt;
}

export type HeadAt = (flow: number) => number;

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
 * Of m pumps side by side each has the same riser, which carries Q / m: TDH = lift + riser(Q / m) + shared(Q).
 * Friction is Hazen-Williams (SI form) or Darcy-Weisbach with Colebrook-White.
 * Losses where the size changes are not added; put their K into the row if they matter.
 *
 * @param lift m, 0 to 100: from the running water level up to the outlet
 * @param pipes shared by all pumps, at least one; length 0 to 5000 m, K 0 to 10,000; the risers' alike
 * @throws Problem outside these ranges
 * @example makeSystem(2, [{ pipe: findPipe({ size: 0.05, isBore: true }, "Bore"), length: 10, k: 1 }]).headAt(0) =>
 *   2; water at rest has the lift alone
 *
 * Source: energy equation, any hydraulics text; the parts as in friction.ts and fittings.ts.
 */
export function makeSystem(lift: number, pipes: readonly RoutePipe[], options: RouteOptions = {}): System {
  within("lift", lift, ROUTE_RANGE.lift, "m");
  if (pipes.length === 0) throw invalid("route is needed: at least one pipe");
  const { method = "Hazen-Williams", outlets = 1, waterTemperature, riser = [] } = options;
  for (const { length, k } of [...pipes, ...riser]) {
    within("length", length, ROUTE_RANGE.length, "m");
    within("sum of K of the fittings", k, ROUTE_RANGE.k, "");
  }
  const viscosity = waterTemperature === undefined ? standardViscosity : waterViscosity(waterTemperature);
  // Everything that does not depend on flow is worked out once: a duty point asks for the head many times.
  const shared = resistances(pipes, method, outlets);
  const own = resistances(riser, method, 0);
  const headFor = (pumps: number): HeadAt => {
    const minor = shared.minor + own.minor / (pumps * pumps);
    if (method === "Hazen-Williams") {
      const friction = shared.friction + own.friction / pumps ** HAZEN_WILLIAMS_EXPONENT;
      return (flow) => lift + friction * flow ** HAZEN_WILLIAMS_EXPONENT + minor * flow * flow;
    }
    return (flow) =>
      lift +
      darcyFriction(pipes, flow, viscosity) +
      darcyFriction(riser, flow / pumps, viscosity) +
      minor * flow * flow;
  };
  return { lift, pipes, riser, method, viscosity, outlets, headAt: headFor(1), headFor };
}

/** What Q^1.852 and Q² are multiplied with in pipes in series; friction only where Hazen-Williams is used. */
function resistances(
  pipes: readonly RoutePipe[],
  method: FrictionMethod,
  outlets: number,
): { friction: number; minor: number } {
  let [friction, minor] = [0, 0];
  pipes.forEach(({ pipe, length, k }, index) => {
    minor += minorResistance(index === pipes.length - 1 ? k + outlets : k, pipe.bore);
    if (method === "Hazen-Williams") {
      friction += hazenWilliamsResistance(length, pipe.bore, pipe.material.hazenWilliams);
    }
  });
  return { friction, minor };
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
 * @example totalDynamicHead(0.002, 2, [{ pipe: findPipe({ size: 0.05, isBore: true }, "Bore"), length: 0, k: 1 }]) =>
 *   2.1058; 2 + (1 + 1) × 1.0186² / (2 × 9.80665)
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
