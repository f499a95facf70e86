import { COST_KINDS } from "../../calc/money/costKinds";
import { invalid, missing } from "../../calc/problem";
import type { Job } from "../facts";
import type { Labor } from "../labor";
import { roundingOf } from "../money";
import type { Pump } from "../pump";
import { known } from "../derived";
import type { Stone } from "../stone";
import { costOf, costOfKind, type Takeoff } from "../takeoff";
import { followingJob, idleChange, withChanges, type ChangedFact } from "./changed";

/** What is looked at of a job that was calculated. */
export interface CalculatedWork {
  readonly takeoff: Takeoff;
  readonly labor: Labor;
  readonly pump: Pick<Pump, "deliveredFlow">;
  readonly stone: Pick<Stone, "boulders" | "gravel">;
}

/** What a job comes to, as options are compared: costs by kind and in all that bears tax, hours, days, water and stone. */
export interface Work {
  readonly costs: readonly number[];
  readonly taxable: number;
  readonly hours: number;
  readonly days: number;
  readonly flow: number;
  readonly boulders: number;
  readonly gravel: number;
}

export function workOf(job: Job, { takeoff, labor, pump, stone }: CalculatedWork): Work {
  const round = roundingOf(job);
  const hours = { labor: known(labor.laborCost), machine: known(labor.machineCost) };
  return {
    costs: COST_KINDS.map((kind) =>
      round((known(costOfKind(job, takeoff, kind)) ?? 0) + ((hours as Record<string, number | undefined>)[kind] ?? 0)),
    ),
    taxable: costOf(
      job,
      takeoff.lines.filter((line) => line.taxable?.toLowerCase() === "yes"),
    ),
    hours: known(labor.hours) ?? 0,
    days: known(labor.workingDays) ?? 0,
    flow: known(pump.deliveredFlow) ?? 0,
    boulders: known(stone.boulders) ?? 0,
    gravel: known(stone.gravel) ?? 0,
  };
}

function differenceOf(job: Job, from: Work, to: Work): Work {
  const round = roundingOf(job);
  const less = (key: Exclude<keyof Work, "costs">): number => to[key] - from[key];
  return {
    costs: to.costs.map((cost, index) => round(cost - (from.costs[index] ?? 0))),
    taxable: round(less("taxable")),
    hours: less("hours"),
    days: less("days"),
    flow: less("flow"),
    boulders: less("boulders"),
    gravel: less("gravel"),
  };
}

/** A job, and what it comes to. */
export interface Calculation<R> {
  readonly job: Job;
  readonly state: R;
}

/**
 * A job as a workbook holds it, and the same with some facts changed, both calculated whole. Throws a `Problem` where something of
 * it has no quantity or price any more: an option would be cheaper for it.
 */
export function changedPair<R extends CalculatedWork>(
  job: Job,
  changes: readonly ChangedFact[],
  evaluate: (job: Job) => R,
): readonly [before: Calculation<R>, after: Calculation<R>] {
  const idle = idleChange(changes);
  if (idle)
    throw invalid(`${idle.at}: ${idle.name.slice(0, 40)} changes no cost of the work; change a fact of the job itself`);
  const from = followingJob(job);
  const to = withChanges(from, changes);
  const pair = [
    { job: from, state: evaluate(from) },
    { job: to, state: evaluate(to) },
  ] as const;
  const [before, after] = pair.map(({ state }) => unknownIn(state));
  const lost = after?.find((name) => !before?.includes(name));
  if (lost !== undefined) throw missing(`the changes leave ${lost} without quantity or price`);
  return pair;
}

/** Lines and tasks without a quantity or a price. */
function unknownIn({ takeoff, labor }: CalculatedWork): string[] {
  return [
    ...takeoff.lines.flatMap(({ look, code, what }) => (look.startsWith("no ") ? [code ?? what ?? "a line"] : [])),
    ...labor.tasks.flatMap(({ complete }, index) => (complete ? [] : [`task ${index + 1}`])),
    ...Object.entries({ hours: labor.hours, days: labor.workingDays }).flatMap(([name, value]) =>
      known(value) === undefined ? [name] : [],
    ),
  ];
}

/** What changed facts add to a job, or save: both jobs are calculated whole, and one taken from the other. */
export function effectOf(job: Job, changes: readonly ChangedFact[], evaluate: (job: Job) => CalculatedWork): Work {
  const [before, after] = changedPair(job, changes, evaluate);
  return differenceOf(job, workOf(before.job, before.state), workOf(after.job, after.state));
}
