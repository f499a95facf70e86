import { findPipe } from "../calc/pipe/bore";
import { findFitting, fittingK } from "../calc/pipe/fittings";
import { makeSystem, type RoutePipe, type System } from "../calc/pipe/route";
import { fastestSpeed, routeParts } from "../calc/pipe/routeParts";
import { fromCents, toCents } from "../calc/money/cents";
import { moneyDigits, roundingOf } from "./money";
import { missing } from "../calc/problem";
import { lastFlow, makeCurve, pumpHead, type CurvePoint, type PumpCurve } from "../calc/pump/curve";
import { dutyPoint, type DutyPoint } from "../calc/pump/duty";
import { runCostCents } from "../calc/pump/power";
import { RANKED_PUMPS, rankPumps, type PumpOffer, type RankedPump, type RankTerms } from "../calc/pump/rank";
import { USUAL_PIPE } from "../calc/tables/pipes";
import type { Basin } from "./basin";
import type { Job, JobRow } from "./facts";
import { attempt, isKnown, lazily, derive, type Derived } from "./derived";
import { filledRows, mostOf, needed, total } from "./rows";
import type { Water } from "./water";

/** The route, the head it takes, and what the chosen pump does on it. SI. */
export interface Pump {
  /** From the running level up to the water over the top lip. */
  readonly lift: Derived<number>;
  readonly pipeLength: Derived<number>;
  readonly route: Derived<readonly RoutePipe[]>;
  /** What each of several pumps has for itself. */
  readonly risers: Derived<readonly RoutePipe[]>;
  /** Total dynamic head at the design flow. */
  readonly designHead: Derived<number>;
  readonly pipeSpeed: Derived<number>;
  /** The chosen pump's row of the pumps on offer. */
  readonly chosen: Derived<JobRow<"pumps">>;
  readonly curve: Derived<PumpCurve>;
  readonly price: Derived<number>;
  /** Power of all pumps, W. */
  readonly watts: Derived<number>;
  /** Head of the pumps at the wanted flow; 0 past the end of their curve. */
  readonly headAtWanted: Derived<number>;
  readonly duty: Derived<DutyPoint>;
  readonly deliveredFlow: Derived<number>;
  readonly dutyHead: Derived<number>;
  readonly dutySpeed: Derived<number>;
  readonly yearlyEnergyCost: Derived<number>;
  readonly ownCost: Derived<number>;
  /** How many pumps are on offer; a problem where the ranking would refuse one: a price waits for that, and makes no ranking. */
  readonly comparable: Derived<number>;
  /** Made when it is called for: it takes longer than all the rest of a job, and no price needs it. */
  readonly ranking: () => Derived<readonly RankedOffer[]>;
}

/** A pump on offer as it ranks, with what it costs to own as money. */
export interface RankedOffer extends Pick<RankedPump, "meets" | "duty"> {
  readonly ownCost: number;
}

export function derivePump(job: Job, water: Water, basin: Basin): Pump {
  const { designFlow } = water;
  const digits = moneyDigits(job);
  const lift = derive(
    [water.topLipLevel, water.sheetMost, basin.runningLevel],
    (top, sheet, running) => top + sheet - running,
  );
  const system = systemOf(job, designFlow, lift);
  const heads = derive([system, designFlow], (works, flow) => ({
    total: works.headFor(job.pumpCount ?? 1)(flow),
    speed: Math.max(...routeParts(works, flow, job.pumpCount ?? 1).map(({ speed = 0 }) => speed)),
  }));
  const chosen = chosenOf(job);
  const curve = derive([chosen], curveOf);
  const duty = derive([system, chosen], (works, offer) =>
    dutyPoint(curveOf(offer), works, job.pumpCount ?? 1, job.pumpSpeed ?? 1),
  );
  const watts = derive([chosen, job.pumpCount, job.pumpSpeed], ({ watts: each }, count, speed) =>
    each === undefined ? undefined : each * count * speed ** 3,
  );
  const energy = derive([watts, job.runHours, job.runDays, job.tariff], (drawn, hoursPerDay, daysPerYear, tariff) =>
    fromCents(runCostCents(drawn, { hoursPerDay, daysPerYear, tariff }, digits), digits),
  );
  const price = derive([chosen], (offer) => offer.price);
  const offers = derive([system, designFlow], () => offersOf(job));
  const terms = termsOf(job);
  return {
    lift,
    pipeLength: pipeLength(job),
    route: derive([system], ({ pipes }) => pipes),
    risers: derive([system], ({ riser }) => riser),
    designHead: derive([heads], (head) => head.total),
    pipeSpeed: derive([heads], ({ speed }) => speed),
    chosen,
    curve,
    price,
    watts,
    headAtWanted: derive([chosen, job.pumpCount, job.pumpSpeed, designFlow], headAt),
    duty,
    deliveredFlow: derive([duty], ({ flow }) => flow),
    dutyHead: derive([duty], ({ head }) => head),
    dutySpeed: derive([duty, system], ({ flow }, works) => fastestSpeed(works, flow, job.pumpCount ?? 1)),
    yearlyEnergyCost: energy,
    ownCost: derive([price, job.ownYears, energy, job.pumpCount], (each, years, yearly, count) =>
      roundingOf(job)(each * count + years * yearly),
    ),
    comparable: derive([offers], (all) => {
      // What the ranking would refuse is a problem of the job, asked for or not.
      for (const { price: each, watts: drawn } of all) {
        toCents(each, "price", digits);
        runCostCents(drawn, terms.running, digits);
      }
      return all.length;
    }),
    ranking: lazily(() =>
      derive([offers, system, designFlow], (all, works, flow) =>
        rankPumps(all, flow, works, terms).map(({ meets, duty: point, ownCents }): RankedOffer => ({
          meets,
          duty: point,
          ownCost: fromCents(ownCents, digits),
        })),
      ),
    ),
  };
}

/** All pipe as it lies in the ground: a riser once for each pump; nothing while the route has no length. */
function pipeLength({ route, riser, pumpCount }: Job): Derived<number> {
  const lengths = route.flatMap(({ length }) => (length === undefined ? [] : [length]));
  if (lengths.length === 0) return undefined;
  return total(lengths) + (pumpCount ?? 0) * total(riser.map(({ length = 0 }) => length));
}

/** What the pump works against, once there is a pipe with a size and a length. */
function systemOf(job: Job, designFlow: Derived<number>, lift: Derived<number>): Derived<System> {
  const hasPipe = mostOf(job.route.map(({ size }) => size)) !== undefined && isKnown(pipeLength(job));
  if (!hasPipe) return undefined;
  return derive([designFlow, lift], (_, height) =>
    makeSystem(height, pipesOf(job, "route"), {
      method: job.frictionMethod ?? "Hazen-Williams",
      riser: pipesOf(job, "riser"),
    }),
  );
}

export function pipesOf(job: Job, table: "route" | "riser"): RoutePipe[] {
  const rows = job[table].map((row) => ({ size: row.size, length: row.length, type: row.type, k: sumOfK(row) }));
  return filledRows(rows).map(({ size, length, type, k = 0, row }) => ({
    pipe: findPipe({ size: needed(size, table, row, "size"), isBore: false }, type ?? USUAL_PIPE[job.system]),
    length: needed(length, table, row, "length"),
    k,
  }));
}

/** The fittings that are counted, by the name that gives their K. */
const COUNTED = [
  ["elbows", "90 elbow"],
  ["sweeps", "90 sweep"],
  ["halfElbows", "45 elbow"],
  ["teesThrough", "tee, straight through"],
  ["teesBranch", "tee, through branch"],
  ["ballValves", "ball valve"],
  ["checkValves", "swing check valve"],
  ["unions", "union or coupling"],
  ["intakes", "pipe entrance"],
] as const;

/** Bore that the K of a fitting is taken at, m: from 1 1/2 to 4 in they change by 0.01. */
const USUAL_BORE = 0.0525;

const KS = new Map(COUNTED.map(([key, name]) => [key, Number(fittingK(findFitting(name), USUAL_BORE).toFixed(2))]));

/** K of the fittings on a pipe: what was typed, or the count of each times its own; none without a size. */
export function sumOfK(pipe: JobRow<"route">): number | undefined {
  if (pipe.sumOfK !== undefined) return pipe.sumOfK ?? undefined;
  if (pipe.size === undefined) return undefined;
  return total(COUNTED.map(([key]) => (pipe[key] ?? 0) * (KS.get(key) ?? 0))) + (pipe.otherK ?? 0);
}

function chosenOf({ chosenPump, pumps }: Job): Derived<JobRow<"pumps">> {
  if (chosenPump === undefined) return undefined;
  return attempt(() => {
    const found = pumps.find(({ name }) => name?.toLowerCase() === chosenPump.toLowerCase());
    if (!found) throw missing(`"${chosenPump}" is not among the pumps on offer`);
    return found;
  });
}

/** The points of a pump's curve behind its shut-off head. */
function pointsOf(pump: JobRow<"pumps">): { flow?: number | undefined; head?: number | undefined }[] {
  return [
    { flow: pump.flow1, head: pump.head1 },
    { flow: pump.flow2, head: pump.head2 },
    { flow: pump.flow3, head: pump.head3 },
    { flow: pump.flow4, head: pump.head4 },
    { flow: pump.flow5, head: pump.head5 },
  ];
}

const curves = new WeakMap<JobRow<"pumps">, PumpCurve>();

/** The curve of a pump, made once: duty and head ask for it too, and so do the drafts of a range where the pumps are typed. */
function curveOf(pump: JobRow<"pumps">): PumpCurve {
  const known = curves.get(pump) ?? makeCurve(curvePoints(pump));
  curves.set(pump, known);
  return known;
}

export function curvePoints(pump: JobRow<"pumps">): CurvePoint[] {
  const points = filledRows(pointsOf(pump)).map(({ flow, head, row }) => ({
    flow: needed(flow, "curve", row, "flow"),
    head: needed(head, "curve", row, "head"),
  }));
  return [{ flow: 0, head: needed(pump.shutOffHead, "curve", 1, "shut-off head") }, ...points];
}

function headAt(pump: JobRow<"pumps">, count: number, speed: number, flow: number): number {
  const head = attempt(() => {
    const curve = curveOf(pump);
    const each = flow / count;
    // A flow typed as the last point must not fall off its end for the last binary digit.
    const end = lastFlow(curve, speed);
    return each > end * (1 + 1e-9) ? 0 : pumpHead(curve, Math.min(each, end), speed);
  });
  return isKnown(head) ? head : 0;
}

/** Running hours and prices that a blank stands for. Common practice, no source. */
const USUAL_RUNNING = { hoursPerDay: 24, daysPerYear: 365, tariff: { US: 0.17, SI: 0.3 }, years: 10 } as const;

/** The rows of pumps that say something, in full; undefined while none has a curve. */
function offersOf({ pumps }: Job): PumpOffer[] | undefined {
  if (!pumps.some(({ shutOffHead }) => shutOffHead !== undefined)) return undefined;
  return filledRows(pumps).map((pump) => ({
    name: needed(pump.name, "pumps", pump.row, "name"),
    price: needed(pump.price, "pumps", pump.row, "price"),
    watts: needed(pump.watts, "pumps", pump.row, "power"),
    points: curvePoints(pump),
  }));
}

function termsOf(job: Job): RankTerms {
  return {
    running: {
      hoursPerDay: job.runHours ?? USUAL_RUNNING.hoursPerDay,
      daysPerYear: job.runDays ?? USUAL_RUNNING.daysPerYear,
      tariff: job.tariff ?? USUAL_RUNNING.tariff[job.system],
    },
    years: job.ownYears ?? USUAL_RUNNING.years,
    most: RANKED_PUMPS.usual,
    digits: moneyDigits(job),
  };
}
