import { USUAL_PIPE } from "../../calc/tables/pipes";
import { findPipe } from "../../calc/pipe/bore";
import { pipeSpeed } from "../../calc/pipe/friction";
import { fromInside } from "../../calc/quantity/measures";
import { readDensity } from "../../calc/stone/density";
import { deriveBasin } from "../basin";
import type { JobRow } from "../facts";
import { moneyDigits } from "../money";
import { pipesOf } from "../pump";
import { attempt, known, derive } from "../derived";
import { cheapestBasins, type BasinPlan, type BasinWish, type Build, type Sheet } from "./basin";
import type { Flowing } from "./bed";
import type { OfferedPipe, OfferedPump } from "./offers";
import { bestPumping, cheaperThan, riserRow, routeRow, type PumpPlan, type PumpWish } from "./pumping";
import { pumpSets, type PumpSet } from "./pumpSets";
import type { Sketch } from "./sketch";
import { unitPrices } from "./unitPrices";
import { about, money, nominal, tape } from "./words";

/** Speed in the pipe that wears and knocks. Common practice, no source. */
const FASTEST = { US: 5 * 0.3048, SI: 1.5 } as const;
/** Pit and trench stay just under the depth at which their sides must be held: 29 CFR 1926.652, DIN 4124. */
const DEEPEST_PIT = { US: 3.95 * 0.3048, SI: 1.25 } as const;
/** Dry ground that is left over groundwater. */
const OVER_GROUNDWATER = { US: 0.5 * 0.3048, SI: 0.15 } as const;
/** Rain on the stream that the basin takes while it runs, m: one inch. Common practice, no source. */
const RAIN = 0.0254;
/** Pumps that the job has room for. */
const MOST_PUMPS = 6;
const CURVE_POINTS = 5;

/** How the pump runs, for which price of electricity. */
function runningRule(sketch: Sketch): PumpWish["running"] & { years: number } {
  return {
    hoursPerDay: sketch.assume("runHours", () => ({ value: 16, reason: "From early morning to bedtime." })),
    daysPerYear: sketch.assume("runDays", () => ({ value: 210, reason: "About seven months, until frost." })),
    tariff: sketch.assume("tariff", () => ({
      value: sketch.pick(0.17, 0.3),
      reason: "About what a household pays for a kilowatt-hour, taxes included; see the bill.",
    })),
    years: sketch.assume("ownYears", () => ({ value: 8, reason: "About as long as a pump lasts." })),
  };
}

/**
 * Pump, pipe and basin together, because each asks something of the others: a lower running level is more lift, and more
 * water in pipe and stream is a larger basin. Nothing is chosen while there is no flow or no pump on offer.
 */
export function worksRule(sketch: Sketch, { water, drain }: Flowing): void {
  const { job, usual } = sketch;
  const running = runningRule(sketch);
  const voids = usual.gravelVoids ?? 0.4;
  sketch.assume("gravelVoids", () => ({
    value: voids,
    low: 0.94 * voids,
    high: 1.06 * voids,
    reason: "Clean washed stone leaves about two fifths for water.",
    source: "US state stormwater manuals, clean open-graded stone (from memory)",
  }));
  const flow = known(water.designFlow);
  const [top, sheet, grade] = [known(water.topLipLevel), known(water.sheetMost), job.gradeLevel];
  if (flow === undefined || top === undefined || sheet === undefined || grade === undefined) return;
  const back = known(drain.drainBack) ?? 0;
  const loss = (known(deriveBasin(job, drain).lossPerDay) ?? 0) * (job.reserveDays ?? 0);
  const rain = RAIN * (job.run ?? 0) * (job.bedWidth ?? 0);
  const full = grade - (job.rimBelowGrade ?? 0);
  const wish = basinWish(sketch);
  const prices = unitPrices(job, sketch.offers.price, sketch.offers.linerArea);
  const plansFor = (kept: number, only?: Build): Map<Build, BasinPlan> =>
    cheapestBasins({ ...wish, room: kept + loss + rain }, sketch.offers, prices, only);
  const [small, large] = [plansFor(back), plansFor(1.3 * back + 0.05)];
  const leastOf = (plans: Map<Build, BasinPlan>): number => Math.min(...[...plans.values()].map(({ cost }) => cost));
  if (small.size === 0 || large.size === 0) return;
  const basinVolume = Math.max(0, (leastOf(large) - leastOf(small)) / (0.3 * back + 0.05));
  const common = pumpWish(sketch, { flow, back, basinVolume, running, setPump: prices.setPump });
  const askedOf = (plan: BasinPlan): PumpWish => {
    const sinks = plan.depth / plan.hold;
    const lift = top + sheet - (full - sinks * Math.min(plan.hold, back));
    return { ...common, riserLength: plan.depth + (job.rimBelowGrade ?? 0) + 0.3, lift, sinks };
  };
  // What the flow makes of pumps and pipes is the same for every basin.
  const sets = attempt(() => pumpSets(common, pumpsOnOffer(sketch)));
  const wanted = derive([sets], (all) => all.filter(isWanted(sketch)));
  const pipes = attempt(() => pipesFor(sketch, flow));
  const best = (asked: PumpWish): PumpPlan | undefined =>
    known(derive([wanted, pipes], (pumps, offered) => bestPumping(asked, pumps, offered)));
  // Every build with the pump that goes with it: what the basin saves, a stronger pump may cost.
  const pairsFor = (least: number, room = Math.max(least, 1.15 * back + 0.02)) =>
    [...plansFor(room)].map(([build, plan]) => {
      const pump = best(askedOf(plan));
      return { build, plan, pump, least, faults: pump?.faults ?? 0, cost: plan.cost + (pump?.cost ?? 0) };
    });
  /** A build with the pump that still goes with it once its basin holds what that pump keeps in stream and pipe. */
  const settled = ({ build, plan, pump, least }: ReturnType<typeof pairsFor>[number]): Works => {
    let [basin, pumping] = [plan, pump];
    for (let round = 0; round < 3 && pumping; round++) {
      const ratio = Math.max(1, pumping.duty.flow / flow);
      const kept = (back + pumping.standing) * ratio ** (2 / 3);
      // A five-hundredth more than calculated, so that the last digit decides nothing.
      basin = plansFor(Math.max(least, kept * 1.002), build).get(build) ?? basin;
      const next: PumpPlan | undefined = best(askedOf(basin));
      const same = next?.pump === pumping.pump && next.count === pumping.count && next.pipe === pumping.pipe;
      pumping = next ?? pumping;
      if (same && pumping.duty.flow / flow <= ratio * 1.003) break;
    }
    return { basin, pumping, faults: pumping?.faults ?? 0, cost: basin.cost + (pumping?.cost ?? 0) };
  };
  let works: Works | undefined;
  // Where it takes several pumps, a roomier basin, which sinks less, may do with one.
  for (const least of [0, 1.6 * back + 0.05, 2.2 * back + 0.1]) {
    if (works?.faults === 0 && works.pumping?.count === 1) break;
    for (const pair of pairsFor(least).sort((a, b) => a.faults - b.faults || a.cost - b.cost)) {
      // Settling moves a cost up, if at all: what begins dearer than the best is not looked at.
      if (works && works.faults === 0 && pair.cost >= works.cost) continue;
      const one = settled(pair);
      if (!works || one.faults < works.faults || (one.faults === works.faults && one.cost < works.cost)) works = one;
    }
  }
  if (!works) return;
  const { basin, pumping } = works;
  const asked = askedOf(basin);
  assumeBasin(sketch, basin, { back: back + (pumping?.standing ?? 0), loss, rain });
  if (pumping) assumePumping(sketch, pumping, asked, known(sets) ?? []);
}

/** A basin and the pump that goes with it. */
interface Works {
  readonly basin: BasinPlan;
  readonly pumping: PumpPlan | undefined;
  readonly faults: number;
  readonly cost: number;
}

function basinWish(sketch: Sketch): BasinWish {
  const { job, system, typed } = sketch;
  const density = (name: string | undefined): number => readDensity("stone", name ?? "washed gravel", system, "stone");
  const dugAbove = (job.rimBelowGrade ?? 0) + (job.beddingDepth ?? 0);
  const groundwater =
    typed.groundwaterDepth === undefined ? Infinity : typed.groundwaterDepth - OVER_GROUNDWATER[system];
  const deepest = typed.basinWaterDepth ?? Math.min(DEEPEST_PIT[system], groundwater) - dugAbove;
  return {
    room: 0,
    lowWater: job.lowWaterDepth ?? 0.15,
    deepest,
    ...(typed.basinWaterDepth === undefined ? {} : { depth: typed.basinWaterDepth }),
    voids: job.gravelVoids ?? 0.4,
    dugAbove,
    coverDepth: job.coverDepth ?? 0,
    overlap: job.linerOverlap ?? 0.3,
    cutRounding: job.cutRounding ?? 0.1,
    sheets: sheetsOf(sketch),
    fabricLayers: (job.fabricUnder ?? 0) + (job.fabricOver ?? 0),
    stoneDensity: density(job.basinStone),
    gravelDensity: density(job.gravelFigure ?? job.gravel),
    waste: job.stoneWaste ?? 0,
    way: typed.accessWidth,
    length: typed.basinLength,
    width: typed.basinWidth,
  };
}

/** Rolls that are typed, else those on offer. */
function sheetsOf({ typed, offers, system }: Sketch): Sheet[] {
  const isTyped = typed.rolls.length > 0;
  const rolls = isTyped ? typed.rolls : offers.rolls;
  return rolls.flatMap(({ width = 0, price = 0, per, longest = 30 }) => {
    if (!(width > 0)) return [];
    if (per === "roll") return [{ width, price: price / (width * Math.min(longest, 30)) }];
    // A typed price is for a unit of the system; on offer it is for one of SI.
    const measure = per === "area" ? "area" : "length";
    const each = isTyped ? price * fromInside(measure, 1, system) : price;
    return [{ width, price: per === "area" ? each : each / width }];
  });
}

type Common = Omit<PumpWish, "lift" | "sinks" | "riserLength">;
type Asked = Pick<Common, "flow" | "basinVolume" | "setPump"> & {
  readonly back: number;
  readonly running: ReturnType<typeof runningRule>;
};

/** What is asked of a pump whatever the basin. */
function pumpWish(sketch: Sketch, { flow, back, basinVolume, running, setPump }: Asked): Common {
  const { job, system, typed } = sketch;
  return {
    flow,
    routeLength: (job.trenchLength ?? 0) + (job.fallTyped ?? 0),
    fastest: FASTEST[system],
    checkValve: job.checkValve === "yes",
    basinVolume,
    drainBack: back,
    running,
    years: running.years,
    digits: moneyDigits(job),
    setPump,
    method: job.frictionMethod ?? "Hazen-Williams",
    ...(sketch.isTyped("route") ? { typed: { route: pipesOf(job, "route"), riser: pipesOf(job, "riser") } } : {}),
    ...(typed.pumpCount === undefined ? {} : { count: typed.pumpCount }),
  };
}

/** Of the sizes within the speed limit the few smallest; where none is, the widest. */
function pipesFor(sketch: Sketch, flow: number): OfferedPipe[] {
  const type = USUAL_PIPE[sketch.system];
  const sorted = [...sketch.offers.pipes].sort((a, b) => a.size - b.size);
  const own = sorted.filter((pipe) => pipe.type === type);
  const offered = own.length > 0 ? own : sorted;
  const slow = offered.filter(
    (pipe) => pipeSpeed(flow, findPipe({ size: pipe.size, isBore: false }, pipe.type).bore) <= FASTEST[sketch.system],
  );
  return slow.length > 0 ? slow.slice(0, 4) : offered.slice(-1);
}

/** Whether a pump may be taken: any, or the one that somebody has chosen. */
function isWanted({ typed: { chosenPump } }: Sketch): (sets: readonly PumpSet[]) => boolean {
  const name = chosenPump?.toLowerCase();
  return ([set]) => name === undefined || set?.pump.name.toLowerCase() === name;
}

function pumpsOnOffer(sketch: Sketch): readonly OfferedPump[] {
  return sketch.isTyped("pumps") ? sketch.typed.pumps.flatMap(asOffer) : sketch.offers.pumps;
}

/** A complete row of the job's pumps as an offer. */
export function asOffer(row: JobRow<"pumps">): OfferedPump[] {
  const { name, price, watts, shutOffHead } = row;
  if (name === undefined || price === undefined || watts === undefined || shutOffHead === undefined) return [];
  const pairs = ([1, 2, 3, 4, 5] as const).flatMap((place) => {
    const [flow, head] = [row[`flow${place}`], row[`head${place}`]];
    return flow === undefined || head === undefined ? [] : [{ flow, head }];
  });
  return [{ name, price, watts, points: [{ flow: 0, head: shutOffHead }, ...pairs] }];
}

/** An offer as a row of the job's pumps: of a longer curve five points, the last among them. */
export function asRow({ name, price, watts, points }: OfferedPump): JobRow<"pumps"> {
  const [first, ...rest] = points;
  const kept =
    rest.length <= CURVE_POINTS
      ? rest
      : Array.from(
          { length: CURVE_POINTS },
          (_, index) => rest[Math.round(((index + 1) * rest.length) / CURVE_POINTS) - 1],
        );
  const pairs = kept.flatMap((point, index) => [
    [`flow${index + 1}`, point?.flow],
    [`head${index + 1}`, point?.head],
  ]);
  return { name, price, watts, shutOffHead: first?.head ?? 0, ...(Object.fromEntries(pairs) as object) };
}

function assumePumping(sketch: Sketch, plan: PumpPlan, wish: PumpWish, sets: readonly (readonly PumpSet[])[]): void {
  const { system } = sketch;
  const { pump, count, pipe, duty, faults } = plan;
  sketch.assume("pumps", () => {
    // A cheaper pump that serves without the head to spare is left out, so that the list does not argue for it.
    const cheaper = cheaperThan(wish, plan, sets);
    const others = sketch.offers.pumps.filter((other) => other !== pump && !cheaper.has(other));
    return {
      value: [pump, ...others].slice(0, MOST_PUMPS).map(asRow),
      reason: "From the book: the one chosen, and others to compare it with.",
    };
  });
  const does = `${about("flow", duty.flow, system)} at ${about("head", duty.head, system)}`;
  const wanted = about("flow", wish.flow, system);
  const reason =
    faults < 1
      ? `Cheapest to own in the book of those that deliver ${wanted}: it gives ${does}, ${money(plan.ownCost, sketch.job.currency)} with electricity over ${wish.years} years.`
      : `None in the book does all that is asked for ${wanted}; this one comes nearest, with ${does}.`;
  sketch.assume("chosenPump", () => ({ value: pump.name, reason }));
  sketch.assume("pumpCount", () => ({
    value: count,
    reason: count === 1 ? "One is enough." : `It takes ${count} of them.`,
  }));
  sketch.assume("pumpSpeed", () => ({ value: 1, reason: "At the speed of its curve." }));
  if (wish.typed) return;
  sketch.assume("route", () => {
    const row = routeRow(wish, pipe, count);
    return {
      value: [row],
      reason: `${tape(row.length ?? 0, system)} of ${nominal(pipe.size, system)} ${pipe.type}: cheapest to own of the sizes that stay under ${about("speed", wish.fastest, system)}.`,
    };
  });
  if (count > 1) {
    sketch.assume("riser", () => ({
      value: [riserRow(wish, pipe)],
      reason: "Each of several pumps has its own riser with a check valve.",
    }));
  }
}

function assumeBasin(
  sketch: Sketch,
  basin: BasinPlan,
  { back, loss, rain }: { readonly back: number; readonly loss: number; readonly rain: number },
): void {
  const { system } = sketch;
  const litres = (volume: number): string => about("water", volume, system);
  const what = {
    gravel: "Gravel only",
    modules: "Void modules in gravel",
    tub: "One tub",
  }[basin.kind];
  const reason = `${what} costs least for ${litres(back)} that runs back, ${litres(loss)} of loss and ${litres(rain)} of rain.`;
  sketch.assume("basinLength", () => ({ value: basin.length, reason }));
  sketch.assume("basinWidth", () => ({ value: basin.width, reason }));
  sketch.assume("basinWaterDepth", () => ({
    value: basin.depth,
    reason: `${tape(basin.depth, system)} of water keeps the pit out of groundwater and shallow enough to work in.`,
  }));
  sketch.assume("basinParts", () => ({ value: basin.parts, reason }));
  const { module } = basin;
  if (!module) return;
  sketch.assume("moduleLength", () => ({ value: module.length, reason: "Of the module in the book." }));
  sketch.assume("moduleWidth", () => ({ value: module.width, reason: "Of the module in the book." }));
  sketch.assume("moduleHeight", () => ({ value: module.height, reason: "Of the module in the book." }));
}
