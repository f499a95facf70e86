import { FACTS, type FactKey, type Job } from "../facts";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { NumberFact } from "../facts/fact";
import { fromSi, inSystem, toSi, unitOf } from "../facts/units";

/** A typed job without what cannot be meant, and a sentence for each of it. */
export interface Answers {
  readonly job: Job;
  readonly unclear: readonly string[];
}

/** Noise of unit conversion. */
const NOISE = 1e-9;

/** Leaves out numbers that no such job has, so that a rule stands for them, and says what contradicts what. */
export function readAnswers(typed: Job): Answers {
  const { system } = typed;
  const unclear: string[] = [];
  const job: Record<string, unknown> = { ...typed };
  for (const { key, fact, from, to } of rangesOf(system)) {
    const value = typed[key];
    if (typeof value !== "number" || (value >= from && value <= to)) continue;
    const [least, most] = inSystem(fact.range, system);
    const unit = unitOf(fact.kind, system);
    const got = Number.isFinite(value) ? Number(fromSi(fact.kind, value, system).toPrecision(6)) : "no number";
    job[key] = undefined;
    unclear.push(
      `${labelOf(fact.question)} ${got}${unit && ` ${unit}`} is not possible: ${least} to ${most}${unit && ` ${unit}`} would be; a usual value stands for it.`,
    );
  }
  const lips = typed.lips.filter(({ width }) => width !== undefined && !(width > 0));
  if (lips.length > 0) {
    job.lips = typed.lips.filter(({ width }) => width === undefined || width > 0);
    unclear.push("A lip needs a width of more than 0; a usual one stands for it.");
  }
  const { fallTyped, run } = job as Partial<Job>;
  if (fallTyped !== undefined && run !== undefined && fallTyped > run) {
    unclear.push("The fall is more than the run: that is a wall and no stream. Check which of the two is which.");
  }
  return { job: job as unknown as Job, unclear };
}

interface Range {
  readonly key: FactKey;
  readonly fact: NumberFact & { readonly question: string };
  /** SI, a little wider than what may be typed. */
  readonly from: number;
  readonly to: number;
}

const ranges: Partial<Record<UnitSystem, readonly Range[]>> = {};

/** What every number of a job may be. */
function rangesOf(system: UnitSystem): readonly Range[] {
  return (ranges[system] ??= (Object.keys(FACTS) as FactKey[]).flatMap((key): Range[] => {
    const fact = FACTS[key];
    if (fact.type !== "number") return [];
    const [least, most] = inSystem(fact.range, system);
    const [from, to] = [toSi(fact.kind, least, system), toSi(fact.kind, most, system)];
    const slack = NOISE * Math.max(Math.abs(from), Math.abs(to));
    return [{ key, fact, from: from - slack, to: to + slack }];
  }));
}

/** "How high does the highest lip stand?" as the beginning of a sentence. */
function labelOf(question: string): string {
  return `${question.replace(/\?.*$/, "?")}`;
}
