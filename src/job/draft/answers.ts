import { FACTS, type FactKey, type Job } from "../facts";
import { farthestApart } from "../facts/site";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { NumberFact } from "../facts/fact";
import { fromSi, inSystem, toSi, unitOf } from "../facts/units";
import { usualBenchmark } from "./site";

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
    job[key] = undefined;
    unclear.push(outOfRange(called(key, fact.question), value, { fact, least, most, unit, system }));
  }
  const { width: fact } = FACTS.lips.columns;
  const [least, most] = inSystem(fact.range, system);
  const unit = unitOf(fact.kind, system);
  const [from, to] = [least, most].map((bound) => toSi(fact.kind, bound, system));
  const fits = (width: number | undefined): boolean =>
    width === undefined || (width >= (from ?? 0) * (1 - NOISE) && width <= (to ?? 0) * (1 + NOISE));
  const wrong = typed.lips.find(({ width }) => !fits(width));
  if (wrong) {
    job.lips = typed.lips.filter(({ width }) => fits(width));
    unclear.push(outOfRange("A lip of", wrong.width ?? 0, { fact, least, most, unit, system }));
  }
  const far = groundFarOff(job as Partial<Job>, system);
  if (far !== undefined) {
    job.bermGround = undefined;
    unclear.push(far);
  }
  const { fallTyped, run } = job as Partial<Job>;
  if (fallTyped !== undefined && run !== undefined && fallTyped > run) {
    unclear.push("The fall is more than the run: that is a wall, not a stream. Check which of the two is which.");
  }
  return { job: job as unknown as Job, unclear };
}

/**
 * The ground under the berm where it lies further from the top lip than any stream falls: one of the levels was mistyped, or
 * was shot from another benchmark, and no earthwork comes of it.
 */
function groundFarOff({ bermGround, gradeLevel, benchmarkLevel, fallTyped = 0 }: Partial<Job>, system: UnitSystem) {
  const grade = gradeLevel ?? benchmarkLevel ?? usualBenchmark(system);
  if (bermGround === undefined) return undefined;
  const off = bermGround - (grade + fallTyped);
  if (Math.abs(off) <= toSi("length", farthestApart(system), system)) return undefined;
  const said = (level: number): string =>
    `${Number(fromSi("length", level, system).toPrecision(6))} ${unitOf("length", system)}`;
  return (
    `The ground under the berm at ${said(bermGround)} is ${said(Math.abs(off))} ${off > 0 ? "above" : "below"} the top lip, ` +
    `with finished grade at ${said(grade)}: check both levels. A usual value stands in for it.`
  );
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

/** What people call the answers of a visit; of the others the question says it. */
const CALLED: { readonly [K in FactKey]?: string } = {
  fallTyped: "A fall of",
  run: "A run of",
  accessWidth: "A way in of",
  groundwaterDepth: "Groundwater at",
};

function called(key: FactKey, question: string): string {
  return CALLED[key] ?? question;
}

/** "A fall of -3 ft cannot be: it must be above 0, from 0.1 to 60 ft. A usual value stands in for it." */
function outOfRange(
  what: string,
  value: number,
  about: {
    readonly fact: NumberFact;
    readonly least: number;
    readonly most: number;
    readonly unit: string;
    readonly system: UnitSystem;
  },
): string {
  const { fact, least, most, system } = about;
  const unit = about.unit && ` ${about.unit}`;
  const got = Number.isFinite(value) ? Number(fromSi(fact.kind, value, system).toPrecision(6)) : "no number";
  const above = least > 0 && value <= 0 ? "above 0, " : "";
  return `${what} ${got}${unit} cannot be: it must be ${above}from ${least} to ${most}${unit}. A usual value stands in for it.`;
}
