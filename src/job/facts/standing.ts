import type { Assumed } from "./assumption";
import { FACTS, type FactKey, type Job } from "./index";
import { SHIPPED_TABLES, usualOf } from "./usual";

/** How far to trust a value, worst last. */
export const FACT_STATES = ["yours", "company", "assumed", "invented", "unknown", "wrong"] as const;

/**
 * `yours` was typed for this job; `company` comes from the company's book or was confirmed by it; `assumed` follows from a
 * rule; `invented` was shipped with the tool; `unknown` is blank; `wrong` was typed and cannot be read.
 */
export type FactState = (typeof FACT_STATES)[number];

/** The state of a sum: the worst of what it needs. */
export function worstOf(states: Iterable<FactState>): FactState {
  let worst = 0;
  for (const state of states) worst = Math.max(worst, FACT_STATES.indexOf(state));
  return FACT_STATES[worst] as FactState;
}

/** Some of a job's facts: what a company's book says. */
export type SomeOf = { readonly [K in FactKey]?: Job[K] | undefined };

/** A value with its state. */
export interface Standing<T = unknown> {
  /** What the job is reckoned from; undefined while it is unknown or wrong. */
  readonly value: T | undefined;
  readonly state: FactState;
  readonly low?: number;
  readonly likely?: number;
  readonly high?: number;
  readonly reason: string;
}

export type Standings = { readonly [K in FactKey]: Standing<Job[K]> };

/** What else is known of a job beside its typed facts. */
export interface Known {
  /** What the company's book says. */
  readonly company?: SomeOf | undefined;
  /** What stands in for everything else; the usual values where left out. */
  readonly assumed?: Assumed | undefined;
  /** What was typed and cannot be read, with a sentence. */
  readonly wrong?: Partial<Readonly<Record<FactKey, string>>>;
  /** Facts whose shipped value the company stands behind; "all" for everything that was invented. */
  readonly confirmed?: ReadonlySet<FactKey> | "all";
}

/** Every fact with its state: what was typed, else what the company says, else what is assumed. */
export function standingsOf(typed: Job, known: Known = {}): Standings {
  const assumed = known.assumed ?? usualOf(typed.system);
  const keys = Object.keys(FACTS) as FactKey[];
  return Object.fromEntries(keys.map((key) => [key, standingOf(key, typed, { ...known, assumed })])) as Standings;
}

function standingOf(key: FactKey, typed: Job, { company, assumed, wrong, confirmed }: Known): Standing {
  const sentence = wrong?.[key];
  if (sentence !== undefined) return { value: undefined, state: "wrong", reason: sentence };
  const invented = (state: "assumed" | "invented"): FactState =>
    confirmed !== undefined && (confirmed === "all" ? state === "invented" : confirmed.has(key)) ? "company" : state;
  if (isSaid(typed[key])) {
    const shipped = key in SHIPPED_TABLES ? SHIPPED_TABLES[key as keyof typeof SHIPPED_TABLES] : undefined;
    return shipped
      ? { value: typed[key], state: invented(shipped.state), reason: shipped.reason }
      : { value: typed[key], state: "yours", reason: "" };
  }
  const ofCompany = company?.[key];
  if (isSaid(ofCompany)) return { value: ofCompany, state: "company", reason: "from the company's book" };
  const taken = assumed?.[key];
  if (taken === undefined) return { value: undefined, state: "unknown", reason: "" };
  const { value, low, likely, high, reason } = taken;
  return {
    value,
    state: invented(taken.invented ? "invented" : "assumed"),
    reason,
    ...(low === undefined ? {} : { low }),
    ...(likely === undefined ? {} : { likely }),
    ...(high === undefined ? {} : { high }),
  };
}

/** Whether anything was said: a table says nothing until its first row does. */
function isSaid(value: unknown): boolean {
  return value !== undefined && value !== "" && !(Array.isArray(value) && value.length === 0);
}

/** The job that is reckoned: what was typed, with its blanks filled by the company's book and by what is assumed. */
export function usedJob(typed: Job, company?: SomeOf, assumed: Assumed = usualOf(typed.system)): Job {
  const filled = (Object.keys(FACTS) as FactKey[]).map((key) => {
    const said = [typed[key], company?.[key], assumed[key]?.value].find(isSaid);
    return [key, said ?? (FACTS[key].type === "table" ? [] : undefined)];
  });
  return { ...(Object.fromEntries(filled) as unknown as Omit<Job, "system">), system: typed.system };
}
