import { COST_KINDS, readCostKind, TAX_BASES, type CostKind } from "../calc/money/costKinds";
import { costOdds, type CostOdds } from "../calc/money/odds/costOdds";
import { Problem } from "../calc/problem";
import { fromCents, toCents } from "../calc/money/cents";
import { raisedToStep } from "../calc/money/raise";
import { splitIntoStages } from "../calc/money/stages";
import type { Job } from "./facts";
import type { Labor } from "./labor";
import type { ChangedFact } from "./options/changed";
import { effectOf, type CalculatedWork, type Work } from "./options/effect";
import { moneyDigits, roundingOf } from "./money";
import { attempt, isKnown, known, lazily, derive, type Derived } from "./derived";
import { total } from "./rows";
import { isNamed, type Standing } from "./standing";
import { costOf, costOfKind, type Takeoff } from "./takeoff";
import { jobCostOf, wantedOf, type Wanted } from "./wanted";

/** The ways to build that stand side by side. */
export const OPTIONS = ["A", "B", "C"] as const;
export type Option = (typeof OPTIONS)[number];

/** From cost to price, for one way to build. Money. */
export interface OptionPrice {
  /** Cost of each kind, then overhead, then contingency. */
  readonly costs: readonly number[];
  /** The same with their markups. */
  readonly prices: readonly number[];
  readonly totalCost: number;
  /** Direct cost and contingency: what the job itself costs. */
  readonly jobCost: number;
  readonly beforeTax: number;
  readonly tax: number;
  readonly withTax: number;
  readonly grossMargin: Derived<number>;
  readonly netMargin: Derived<number>;
  readonly crewDays: Derived<number>;
  readonly dayProfit: Derived<number>;
  readonly smallestMarkup: Derived<number>;
  readonly leastPrice: Derived<number>;
  /** What the facts that it changes add to the job's work, or save. */
  readonly effect: Work;
}

export interface Price {
  /** Undefined for an option that has no name. */
  readonly options: Readonly<Record<Option, OptionPrice | undefined>>;
  /** Whether there is a price to show. */
  readonly standing: Standing;
  /** The option that is quoted, once there is a price to show. */
  readonly quoted: OptionPrice | undefined;
  /** Price before tax that somebody wants, or that the margin wanted asks for, raised as prices are. */
  readonly asked: number | undefined;
  /** Markup on cost that equals the wanted margin. */
  readonly markupWanted: Derived<number>;
  readonly odds: Derived<CostOdds>;
  readonly priceAtConfidence: Derived<number>;
  /** What the price with tax comes to at the ends of the cost's odds: as far below the mean as above it. */
  readonly low: Derived<number>;
  readonly high: Derived<number>;
  /** Amount of each payment stage. */
  readonly stages: Derived<readonly number[]>;
}

/** @param evaluate calculates a job whole, for the options that change some of its facts */
export function derivePrice(
  job: Job,
  { takeoff, labor }: Pick<CalculatedWork, "takeoff" | "labor">,
  completeness: Standing,
  evaluate: (job: Job) => CalculatedWork,
): Price {
  const [digits, round] = [moneyDigits(job), roundingOf(job)];
  const effects = { A: NO_EFFECT, B: effectIn(job, "B", evaluate), C: effectIn(job, "C", evaluate) };
  const costsOf = (option: Option): number[] | undefined => {
    const effect = known(effects[option]);
    return effect && optionCosts(job, takeoff, labor, option, effect);
  };
  const costs = { A: costsOf("A"), B: costsOf("B"), C: costsOf("C") };
  // An option that cannot be calculated stops the price, whichever is quoted.
  const stopped = costs.A && [effects.B, effects.C].some((effect) => effect instanceof Problem);
  const standing = stopped ? { ...completeness, wrong: true, words: "wrong" } : completeness;
  const wanted = wantedOf(job, job.chosenOption && costs[job.chosenOption]);
  const priced = (option: Option): OptionPrice | undefined => {
    const [cost, effect] = [costs[option], known(effects[option])];
    return cost && effect && optionPrice(job, takeoff, labor, option, { costs: cost, effect }, wanted);
  };
  const options = { A: priced("A"), B: priced("B"), C: priced("C") };
  const chosen = job.chosenOption === undefined ? undefined : options[job.chosenOption];
  const quoted = standing.words === "" ? chosen : undefined;
  const odds = lazily(() =>
    derive([quoted, job.confidence, job.costCorrelation], ({ costs }, confidence, correlation) =>
      costOdds(uncertain(job, costs), confidence, correlation),
    ),
  );
  const atCost = (cost: (odds: CostOdds) => number): Derived<number> =>
    derive([odds(), quoted], (all, { withTax }) => Math.round((withTax * cost(all)) / round(all.likely)));
  const anyShare = job.stages.some(({ share }) => share !== undefined);
  const stages = lazily(() =>
    anyShare
      ? derive([quoted], ({ withTax }) =>
          splitIntoStages(toCents(withTax, "price", digits), stageShares(job)).map((each) => fromCents(each, digits)),
        )
      : undefined,
  );
  return {
    options,
    standing,
    quoted,
    asked: wanted.asked,
    markupWanted: derive([job.wantedMargin], (margin) => margin / (1 - margin)),
    // They take longer than all the rest of a job, and most who ask for a price do not ask for them.
    get odds() {
      return odds();
    },
    get priceAtConfidence() {
      return derive([odds(), job.wantedMargin], ({ atConfidence }, margin) =>
        raised(round(atConfidence) / (1 - margin), digits),
      );
    },
    get low() {
      return atCost(({ mean, atConfidence }) => 2 * round(mean) - round(atConfidence));
    },
    get high() {
      return atCost(({ atConfidence }) => round(atConfidence));
    },
    get stages() {
      return stages();
    },
  };
}

/** Rows of payment stages the workbook has room for. */
const STAGES = 6;

function stageShares({ stages }: Job): number[] {
  return Array.from({ length: STAGES }, (_, index) => stages[index]?.share ?? 0);
}

/** Low, likely and high of each kind of cost. */
function uncertain(job: Job, costs: readonly number[]): { low: number; likely: number; high: number }[] {
  const round = roundingOf(job);
  const items = COST_KINDS.map((_, index) => {
    const likely = costs[index] ?? 0;
    const { below = 0, above = 0 } = job.odds[index] ?? {};
    return {
      low: round(likely * (1 - Math.min(1, below))),
      likely,
      high: round(likely * (1 + above)),
    };
  });
  return items.filter(({ low, likely, high }) => low !== 0 || likely !== 0 || high !== 0);
}

/** What an option changes of one kind of cost. */
function changeOf({ optionChanges }: Job, option: Option, kind: CostKind): number {
  if (option === "A") return 0;
  return total(optionChanges.map((change) => (readCostKind(change.kind ?? "") === kind ? (change[option] ?? 0) : 0)));
}

const NO_EFFECT: Work = {
  costs: COST_KINDS.map(() => 0),
  ...{ taxable: 0, hours: 0, days: 0, flow: 0, boulders: 0, gravel: 0 },
};

/** What the facts that an option changes add and save. */
function effectIn(job: Job, option: "B" | "C", evaluate: (job: Job) => CalculatedWork): Derived<Work> {
  const changes = job.optionFacts.flatMap((row, index): ChangedFact[] => {
    const [name, value] = [row[`fact${option}`], row[`value${option}`]];
    return value === undefined ? [] : [{ at: `OptionFacts row ${index + 1}`, name: name ?? "", value }];
  });
  if (changes.length === 0 || !isNamed(job, option)) return NO_EFFECT;
  return attempt(() => effectOf(job, changes, evaluate));
}

/** What an option costs, kind by kind, then overhead and contingency; undefined while nothing is known of it. */
function optionCosts(job: Job, takeoff: Takeoff, labor: Labor, option: Option, effect: Work): number[] | undefined {
  const round = roundingOf(job);
  if (!isNamed(job, option)) return undefined;
  const hours: Readonly<Partial<Record<CostKind, number | undefined>>> = {
    labor: known(labor.laborCost),
    machine: known(labor.machineCost),
  };
  // Nothing is known of the cost while no line of it is.
  if (![hours.labor, hours.machine, ...takeoff.lines.map(({ cost }) => known(cost))].some(isKnown)) return undefined;
  const direct = COST_KINDS.map((kind, row) =>
    round(
      (known(costOfKind(job, takeoff, kind)) ?? 0) +
        (hours[kind] ?? 0) +
        changeOf(job, option, kind) +
        (effect.costs[row] ?? 0),
    ),
  );
  const directCost = total(direct);
  const overhead =
    job.overheadBy === "crew hours"
      ? round((job.overheadPerHour ?? 0) * ((known(labor.hours) ?? 0) * crewShare(job, labor, option) + effect.hours))
      : round((job.overheadShare ?? 0) * directCost);
  const contingency = round((job.contingencyShare ?? 0) * directCost);
  return [...direct, overhead, contingency];
}

function optionPrice(
  job: Job,
  takeoff: Takeoff,
  labor: Labor,
  option: Option,
  { costs, effect }: { readonly costs: readonly number[]; readonly effect: Work },
  { markups }: Wanted,
): OptionPrice | undefined {
  const share = crewShare(job, labor, option);
  const [digits, round] = [moneyDigits(job), roundingOf(job)];
  const prices = costs.map((cost, row) => round(cost * (1 + (markups[row] ?? 0))));
  // A job that comes to nothing has no price.
  if (total(prices) === 0) return undefined;
  const totalCost = round(total(costs));
  const jobCost = jobCostOf(job, costs);
  const beforeTax = raisedToStep(round(total(prices)), job.roundTo ?? 0, digits);
  const tax = round((job.taxRate ?? 0) * taxBase(job, takeoff, option, prices, beforeTax, effect));
  const crewDays = derive([labor.workingDays], (days) => days * share + effect.days);
  const margin = job.wantedMargin ?? 0;
  return {
    costs,
    prices,
    totalCost,
    jobCost,
    beforeTax,
    tax,
    withTax: round(beforeTax + tax),
    grossMargin: derive([beforeTax], (price) => (price - jobCost) / price),
    netMargin: derive([beforeTax], (price) => (price - totalCost) / price),
    crewDays,
    dayProfit: derive([crewDays], (days) => (days > 0 ? round((beforeTax - totalCost) / days) : undefined)),
    smallestMarkup: attempt(() => tenthsOfPercentUp(Math.max(0, jobCost / ((1 - margin) * totalCost) - 1))),
    leastPrice: attempt(() => raised(jobCost / (1 - margin), digits)),
    effect,
  };
}

/** The crew's hours in an option over those of the takeoff: an hour costs the same in every option. */
function crewShare(job: Job, labor: Labor, option: Option): number {
  const cost = known(labor.laborCost) ?? 0;
  return cost > 0 ? Math.max(0, 1 + changeOf(job, option, "labor") / cost) : 1;
}

function taxBase(
  job: Job,
  takeoff: Takeoff,
  option: Option,
  prices: readonly number[],
  beforeTax: number,
  effect: Work,
): number {
  const [nothing, lines, materials] = TAX_BASES;
  if (job.taxBase === nothing) return 0;
  if (job.taxBase === lines) {
    const taxable = takeoff.lines.filter((line) => line.taxable?.toLowerCase() === "yes");
    return costOf(job, taxable) + changeOf(job, option, "material") + effect.taxable;
  }
  return job.taxBase === materials ? (prices[0] ?? 0) : beforeTax;
}

/** Up to the cent, but for a millionth. */
function raised(amount: number, digits: number): number {
  return Math.ceil(Number((Math.round(amount * 1e6) / 10 ** (6 - digits)).toPrecision(15))) / 10 ** digits;
}

/** Up to a tenth of a percent, but for a billionth. */
function tenthsOfPercentUp(share: number): number {
  return Math.ceil(Number((Math.round(share * 1e9) / 1e6).toPrecision(15))) / 1000;
}
