import { findPipe } from "../../calc/pipe/bore";
import { boreArea, pipeSpeed } from "../../calc/pipe/friction";
import { makeSystem, type RoutePipe } from "../../calc/pipe/route";
import { makeCurve, lastFlow, pumpHead } from "../../calc/pump/curve";
import { dutyPoint, type DutyPoint } from "../../calc/pump/duty";
import { fromCents } from "../../calc/money/cents";
import { runCostCents, RUNNING_RANGE } from "../../calc/pump/power";
import { Problem } from "../../calc/problem";
import type { Job, JobRow } from "../facts";
import { sumOfK } from "../pump";
import type { OfferedPipe, OfferedPump } from "./offers";

/** What pump and pipe must do; SI. */
export interface PumpWish {
  readonly flow: number;
  /** From the running level to the water over the top lip. */
  readonly lift: number;
  /** In the ground, without risers. */
  readonly routeLength: number;
  /** Up the pump well, where each of several pumps has a riser. */
  readonly riserLength: number;
  readonly fastest: number;
  readonly checkValve: boolean;
  /** Money for a m³ of basin, which what stands in the pipe and what a stronger pump keeps in the stream take up. */
  readonly basinVolume: number;
  /** Drain-back without the pipe, m³. */
  readonly drainBack: number;
  readonly running: { readonly hoursPerDay: number; readonly daysPerYear: number; readonly tariff: number };
  readonly years: number;
  readonly method: NonNullable<Job["frictionMethod"]>;
  /** Pipes that somebody has typed, in place of one of those on offer. */
  readonly typed?: { readonly route: readonly RoutePipe[]; readonly riser: readonly RoutePipe[] };
  /** How many side by side, where somebody has typed it. */
  readonly count?: number;
}

export interface PumpPlan {
  readonly pump: OfferedPump;
  readonly count: number;
  readonly pipe: OfferedPipe;
  readonly duty: DutyPoint;
  /** Rules it breaks, the worst counted most; 0 where none. */
  readonly faults: number;
  /** Pump and electricity over the years. */
  readonly ownCost: number;
  /** With pipe and what it asks of the basin. */
  readonly cost: number;
  /** Water that stands in the pipe and comes back, m³. */
  readonly standing: number;
}

/** Head to spare that a pump should have, flow that is far over the wanted one, flow that still counts as delivered. */
const SPARE_HEAD = 1.1;
const FAR_OVER = 1.5;
const NEARLY = 1 - 1e-6;
const FAULTS = { cannotLift: 1000, short: 300, offCurve: 100, spareHead: 3, farOver: 2, fast: 2, notFirst: 1 } as const;

/** Every pump on every pipe, as many side by side as could make sense: the one without faults that costs least to own. */
export function pumpPlans(wish: PumpWish, pumps: readonly OfferedPump[], pipes: readonly OfferedPipe[]): PumpPlan[] {
  const plans = wish.typed
    ? plansOn(wish, pumps, { size: 0, type: "", price: 0 })
    : pipes.flatMap((pipe) => plansOn(wish, pumps, pipe));
  return plans.sort((a, b) => a.faults - b.faults || a.cost - b.cost);
}

function plansOn(wish: PumpWish, pumps: readonly OfferedPump[], pipe: OfferedPipe): PumpPlan[] {
  const { typed } = wish;
  const lift = Math.max(0, wish.lift);
  const rows = (count: number): { route: readonly RoutePipe[]; riser: readonly RoutePipe[] } => {
    if (typed) return typed;
    const own = findPipe({ size: pipe.size, isBore: false }, pipe.type);
    const along = (row: JobRow<"route">): RoutePipe => ({ pipe: own, length: row.length ?? 0, k: sumOfK(row) ?? 0 });
    return {
      route: [along(routeRow(wish, pipe, count))],
      riser: count > 1 ? [along(riserRow(wish, pipe))] : [],
    };
  };
  const counts = wish.count === undefined ? [1, 2, 3] : [wish.count];
  const systems = counts.map((count) => {
    const { route, riser } = rows(count);
    return { count, works: makeSystem(lift, route, { method: wish.method, riser }), route, riser };
  });
  return pumps.flatMap((pump) => {
    const plans: PumpPlan[] = [];
    let curve;
    try {
      curve = makeCurve(pump.points);
    } catch (error) {
      if (error instanceof Problem) return [];
      throw error;
    }
    let served = false;
    for (const { count, works, route, riser } of systems) {
      if (count * pump.watts > RUNNING_RANGE.watts.max) break;
      const duty = dutyPoint(curve, works, count);
      const delivers = duty.state === "delivers" && duty.flow >= wish.flow * NEARLY;
      const each = wish.flow / count;
      const head = each > lastFlow(curve, 1) ? 0 : pumpHead(curve, each, 1);
      const speedAt = (flow: number): number =>
        Math.max(
          ...route.map(({ pipe: { bore } }) => pipeSpeed(flow, bore)),
          ...riser.map(({ pipe: { bore } }) => pipeSpeed(flow / count, bore)),
        );
      const speed = speedAt(Math.max(duty.flow, wish.flow));
      const faults =
        (duty.state === "cannot lift" ? FAULTS.cannotLift : 0) +
        (duty.flow < wish.flow * NEARLY ? FAULTS.short * (2 - duty.flow / wish.flow) : 0) +
        (duty.state === "off its curve" ? FAULTS.offCurve : 0) +
        (head < SPARE_HEAD * works.headFor(count)(wish.flow) ? FAULTS.spareHead : 0) +
        (duty.flow > FAR_OVER * wish.flow ? FAULTS.farOver : 0) +
        (speed > wish.fastest * (1 + 1e-9) ? FAULTS.fast * (speed / wish.fastest) : 0) +
        (served ? FAULTS.notFirst : 0);
      const yearly = fromCents(runCostCents(count * pump.watts, wish.running));
      const ownCost = count * pump.price + wish.years * yearly;
      const length = wish.routeLength + (count > 1 ? count * wish.riserLength : wish.riserLength);
      const standing = wish.checkValve || typed ? 0 : length * boreArea(route[0]?.pipe.bore ?? 0);
      const keptMore = wish.drainBack * (Math.max(1, duty.flow / wish.flow) ** (2 / 3) - 1);
      plans.push({
        pump,
        count,
        pipe,
        duty,
        faults,
        ownCost,
        standing,
        cost: ownCost + length * pipe.price + wish.basinVolume * (standing + keptMore),
      });
      served ||= delivers;
    }
    return plans;
  });
}

/** The route as one pipe, with the fittings that it commonly takes. Common practice, no source. */
export function routeRow(wish: PumpWish, { size, type }: OfferedPipe, count: number): JobRow<"route"> {
  const shared = { size, type, sweeps: 2, halfElbows: 2 };
  return count > 1
    ? { ...shared, length: wish.routeLength, teesBranch: 1, otherK: 0.2 }
    : {
        ...shared,
        length: wish.routeLength + wish.riserLength,
        elbows: 1,
        ballValves: 1,
        checkValves: wish.checkValve ? 1 : 0,
        unions: 1,
        intakes: 1,
        otherK: 0.2,
      };
}

/** What each of several pumps has for itself. */
export function riserRow(wish: PumpWish, { size, type }: OfferedPipe): JobRow<"riser"> {
  return { size, type, length: wish.riserLength, elbows: 1, ballValves: 1, checkValves: 1, unions: 1, intakes: 1 };
}
