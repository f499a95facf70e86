import { findPipe } from "../../calc/pipe/bore";
import { boreArea, pipeSpeed } from "../../calc/pipe/friction";
import { makeSystem, type RoutePipe, type System } from "../../calc/pipe/route";
import { dutyPoint, type DutyPoint } from "../../calc/pump/duty";
import { wholePacks } from "../../calc/money/orderQuantity";
import type { Job, JobRow } from "../facts";
import { sumOfK } from "../pump";
import { total } from "../rows";
import type { FittingColumn } from "../takeoff/fittings";
import type { OfferedPipe, OfferedPump } from "./offers";
import { countsFor, type PumpSet, type SetWish } from "./pumpSets";

/** What pump and pipe must do; SI. */
export interface PumpWish extends SetWish {
  /** From the running level to the water over the top lip, while nothing stands in the pipe. */
  readonly lift: number;
  /** How far the running level sinks for each m³ that stands in the pipe, m. */
  readonly sinks: number;
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
  /** Money for setting and starting one pump. */
  readonly setPump: number;
  readonly method: NonNullable<Job["frictionMethod"]>;
  /** Pipes that somebody has typed, in place of one of those on offer. */
  readonly typed?: { readonly route: readonly RoutePipe[]; readonly riser: readonly RoutePipe[] };
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
  /** With its setting, with pipe, what it asks of the basin, and with the valve that is closed where it gives far too much. */
  readonly cost: number;
  /** Water that stands in the pipe and comes back, m³. */
  readonly standing: number;
}

/** Head to spare that a pump should have, flow that is far over the wanted one, flow that still counts as delivered. */
const SPARE_HEAD = 1.1;
const FAR_OVER = 1.5;
const NEARLY = 1 - 1e-6;
const FAULTS = { cannotLift: 1000, short: 300, offCurve: 100, spareHead: 3, fast: 2, notFirst: 1 } as const;
/**
 * What flow far over the wanted one is worth, as a share of the pump's price: nothing at the limit, the whole price at
 * twice the flow above it. A valve cures it, and nobody pays for three small pumps to be spared closing one.
 */
const THROTTLED = 1;

/**
 * Of every pump on every pipe, as many side by side as could make sense, the one without faults that costs least; where
 * none is without, the one with the fewest.
 */
export function bestPumping(
  wish: PumpWish,
  sets: readonly (readonly PumpSet[])[],
  pipes: readonly OfferedPipe[],
): PumpPlan | undefined {
  const lines = (wish.typed ? [{ size: 0, type: "", price: 0 }] : pipes).map((pipe) => linesOn(wish, pipe));
  const hopeful = lines.flatMap((line) => triesOn(wish, sets, line, true)).sort((a, b) => a.floor - b.floor);
  let best: PumpPlan | undefined;
  // Whatever its duty point, a plan never costs less than its floor: most are never solved.
  for (const each of hopeful) {
    if (best && each.floor >= best.cost) break;
    const plan = solved(wish, each);
    if (plan.faults === 0 && (!best || plan.cost < best.cost)) best = plan;
  }
  if (best) return best;
  const all = lines.flatMap((line) => triesOn(wish, sets, line, false));
  return all.map((each) => solved(wish, each)).sort((a, b) => a.faults - b.faults || a.cost - b.cost)[0];
}

/** Pumps that serve on a pipe, by as few of them as will, for less than a cost; the spare head does not count. */
export function cheaperThan(
  wish: PumpWish,
  plan: PumpPlan,
  sets: readonly (readonly PumpSet[])[],
): ReadonlySet<OfferedPump> {
  const heads = new Map(linesOn(wish, plan.pipe).map(({ count, wantedHead }) => [count, wantedHead]));
  const serving = sets.flatMap((ofPump) => {
    const fewest = ofPump.find(({ count, head }) => head >= (heads.get(count) ?? Infinity));
    return fewest && fewest.ownCost < plan.ownCost ? [fewest.pump] : [];
  });
  return new Set(serving);
}

/** A plan whose duty point is not worked out yet. */
interface Try {
  readonly set: PumpSet;
  readonly line: Line;
  /** Faults that show without a duty point. */
  readonly faults: number;
  /** Cost as far as it shows without a duty point. */
  readonly floor: number;
}

/** Every set on a pipe, or only those without a fault so far. */
function triesOn(
  wish: PumpWish,
  sets: readonly (readonly PumpSet[])[],
  lines: readonly Line[],
  faultless: boolean,
): Try[] {
  const tries: Try[] = [];
  for (const ofPump of sets) {
    // Fewer of the same pump deliver too.
    let served = false;
    for (const set of ofPump) {
      const line = lines.find(({ count }) => count === set.count);
      if (!line) continue;
      const { head, count, ownCost } = set;
      const faults = (head < SPARE_HEAD * line.wantedHead ? FAULTS.spareHead : 0) + (served ? FAULTS.notFirst : 0);
      served ||= head >= line.wantedHead;
      if (faultless && faults > 0) continue;
      const floor = ownCost + count * wish.setPump + line.pipework + wish.basinVolume * line.standing;
      tries.push({ set, line, faults, floor });
    }
  }
  return tries;
}

/** All pipe as it lies in the ground, m. */
function lengthFor({ routeLength, riserLength }: PumpWish, count: number): number {
  return routeLength + count * riserLength;
}

/** All pipe as it is bought, the risers of several pumps by themselves. */
function pipeCost(wish: PumpWish, count: number, { price, pack = 0, waste = 0 }: OfferedPipe): number {
  const { routeLength, riserLength } = wish;
  const lines = count > 1 ? [routeLength, count * riserLength] : [routeLength + riserLength];
  const bought = lines.map((need) => (pack > 0 ? pack * wholePacks(need, waste, pack) : need * (1 + waste)));
  return price * total(bought);
}

/** Water that stands in the pipe and runs back, m³; of typed pipes it is in the drain-back already. */
function standingIn(wish: PumpWish, count: number, bore: number): number {
  return wish.checkValve || wish.typed ? 0 : lengthFor(wish, count) * boreArea(bore);
}

/** A pipe as it is laid for so many pumps side by side. */
interface Line {
  readonly pipe: OfferedPipe;
  readonly count: number;
  readonly works: System;
  /** Total dynamic head at the wanted flow, m. */
  readonly wantedHead: number;
  /** Money for pipe and fittings. */
  readonly pipework: number;
  /** Water that stands in it and comes back, m³. */
  readonly standing: number;
}

const fittingCosts = new WeakMap<OfferedPipe, Map<number, number>>();

/** What all fittings cost with so many pumps side by side, worked out once for a pipe. */
function fittingsCost(pipe: OfferedPipe, count: number): number {
  const known = fittingCosts.get(pipe) ?? new Map<number, number>();
  fittingCosts.set(pipe, known);
  let cost = known.get(count);
  if (cost === undefined) {
    const of = (row: JobRow<"route">): number =>
      total(Object.entries(pipe.fittings ?? {}).map(([column, price]) => price * (row[column as FittingColumn] ?? 0)));
    cost = of(routeRow(PLAIN, pipe, count)) + (count > 1 ? count * of(riserRow(PLAIN, pipe)) : 0);
    known.set(count, cost);
  }
  return cost;
}

function linesOn(wish: PumpWish, pipe: OfferedPipe): Line[] {
  const { typed } = wish;
  const rows = (count: number): { route: readonly RoutePipe[]; riser: readonly RoutePipe[] } => {
    if (typed) return typed;
    const own = findPipe({ size: pipe.size, isBore: false }, pipe.type);
    const along = (length: number, k: number): RoutePipe => ({ pipe: own, length, k });
    if (count > 1) return { route: [along(wish.routeLength, KS.shared)], riser: [along(wish.riserLength, KS.riser)] };
    const k = wish.checkValve ? KS.aloneWithValve : KS.alone;
    return { route: [along(wish.routeLength + wish.riserLength, k)], riser: [] };
  };
  return countsFor(wish).map((count) => {
    const { route, riser } = rows(count);
    const standing = standingIn(wish, count, route[0]?.pipe.bore ?? 0);
    const lift = Math.max(0, wish.lift + wish.sinks * standing);
    const works = makeSystem(lift, route, { method: wish.method, riser });
    const pipework = typed ? 0 : pipeCost(wish, count, pipe) + fittingsCost(pipe, count);
    return { pipe, count, works, wantedHead: works.headFor(count)(wish.flow), pipework, standing };
  });
}

function solved(wish: PumpWish, { set, line, faults, floor }: Try): PumpPlan {
  const { pump, count, curve, ownCost } = set;
  const { pipe, works, standing } = line;
  const duty = dutyPoint(curve, works, count);
  const flow = Math.max(duty.flow, wish.flow);
  const speed = Math.max(
    ...works.pipes.map(({ pipe: { bore } }) => pipeSpeed(flow, bore)),
    ...works.riser.map(({ pipe: { bore } }) => pipeSpeed(flow / count, bore)),
  );
  const keptMore = wish.drainBack * (Math.max(1, duty.flow / wish.flow) ** (2 / 3) - 1);
  const throttled = THROTTLED * count * pump.price * Math.max(0, duty.flow / wish.flow - FAR_OVER);
  return {
    ...{ pump, count, pipe, duty, ownCost, standing },
    faults:
      faults +
      (duty.state === "cannot lift" ? FAULTS.cannotLift : 0) +
      (duty.flow < wish.flow * NEARLY ? FAULTS.short * (2 - duty.flow / wish.flow) : 0) +
      (duty.state === "off its curve" ? FAULTS.offCurve : 0) +
      (speed > wish.fastest * (1 + 1e-9) ? FAULTS.fast * (speed / wish.fastest) : 0),
    cost: floor + wish.basinVolume * keptMore + throttled,
  };
}

type Lengths = Pick<PumpWish, "routeLength" | "riserLength" | "checkValve">;

/** The route as one pipe, with the fittings that it commonly takes. Common practice, no source. */
export function routeRow(wish: Lengths, { size, type }: OfferedPipe, count: number): JobRow<"route"> {
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
export function riserRow(wish: Lengths, { size, type }: OfferedPipe): JobRow<"riser"> {
  return { size, type, length: wish.riserLength, elbows: 1, ballValves: 1, checkValves: 1, unions: 1, intakes: 1 };
}

const ANY = { size: 1, type: "", price: 0 } as const;
const PLAIN: Lengths = { routeLength: 0, riserLength: 0, checkValve: false };

/** Sums of K of these fittings, which are the same for every size. */
const KS = {
  alone: sumOfK(routeRow(PLAIN, ANY, 1)) ?? 0,
  aloneWithValve: sumOfK(routeRow({ ...PLAIN, checkValve: true }, ANY, 1)) ?? 0,
  shared: sumOfK(routeRow(PLAIN, ANY, 2)) ?? 0,
  riser: sumOfK(riserRow(PLAIN, ANY)) ?? 0,
} as const;
