import type { Assumed, Assumption } from "./assumption";
import type { Fact } from "./fact";
import { FACTS, type FactKey, type Job } from "./index";
import { ANSWERED } from "./answered";
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
  /** What the job is calculated from; undefined while it is unknown or wrong. */
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
  /** Facts that a draft filled in and nobody has changed since. */
  readonly drafted?: ReadonlySet<FactKey>;
}

/** Every fact with its state: what was typed, else what the company says, else what is assumed. */
export function standingsOf(typed: Job, known: Known = {}): Standings {
  const assumed = known.assumed ?? usualOf(typed.system);
  const keys = Object.keys(FACTS) as FactKey[];
  return Object.fromEntries(keys.map((key) => [key, standingOf(key, typed, { ...known, assumed })])) as Standings;
}

function standingOf(key: FactKey, typed: Job, { company, assumed, wrong, confirmed, drafted }: Known): Standing {
  const sentence = wrong?.[key];
  if (sentence !== undefined) return { value: undefined, state: "wrong", reason: sentence };
  const invented = (state: "assumed" | "invented"): FactState =>
    confirmed !== undefined && (confirmed === "all" ? state === "invented" : confirmed.has(key)) ? "company" : state;
  if (isTyped(key, typed[key])) {
    const shipped = key in SHIPPED_TABLES ? SHIPPED_TABLES[key as keyof typeof SHIPPED_TABLES] : undefined;
    return shipped
      ? { value: typed[key], state: invented(shipped.state), reason: shipped.reason }
      : { value: typed[key], state: drafted?.has(key) ? "assumed" : "yours", reason: "" };
  }
  const answer = answerOf(key, typed);
  if (isSaid(answer)) return { value: answer, state: "yours", reason: "" };
  const ofCompany = company?.[key];
  if (isSaid(ofCompany)) return { value: ofCompany, state: "company", reason: "from the company's book" };
  const taken = assumed?.[key] ?? workedOut(key);
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

/** A table whose every cell the job works out until somebody types over it is never blank. */
function workedOut(key: FactKey): Assumption | undefined {
  const fact: Fact = FACTS[key];
  if (fact.type !== "table" || !Object.values(fact.columns).every(({ worked }) => worked)) return undefined;
  return { value: [], reason: "worked out until you type over it" };
}

/** Whether a person typed a fact: into a table, anything that no rule fills, and its first number where it cannot do without. */
function isTyped(key: FactKey, value: unknown): boolean {
  const fact: Fact = FACTS[key];
  if (fact.type !== "table") return isSaid(value);
  const rows = value as readonly Readonly<Record<string, unknown>>[];
  const columns = Object.entries(fact.columns);
  const byHand = columns.filter(([, { worked }]) => !worked);
  const counted = byHand.length > 0 ? byHand : columns;
  const [first] = columns.find(([, { type }]) => type === "number") ?? [""];
  if (fact.required && !isSaid(rows[0]?.[first])) return false;
  return rows.some((row) => counted.some(([column]) => isSaid(row[column] ?? undefined)));
}

/** Whether anything was said: a table says nothing until its first row does. */
function isSaid(value: unknown): boolean {
  return value !== undefined && value !== "" && !(Array.isArray(value) && value.length === 0);
}

/** What was answered on Start to a fact that nobody typed where it belongs. */
function answerOf(key: FactKey, typed: Job): unknown {
  const asked = ANSWERED[key];
  return asked && typed[asked];
}

/** What was typed, with the answers on Start where they stand for it. */
export function withAnswers(typed: Job): Job {
  const answered = (Object.keys(ANSWERED) as FactKey[]).flatMap((key) => {
    const answer = answerOf(key, typed);
    return isSaid(typed[key]) || !isSaid(answer) ? [] : [[key, answer] as const];
  });
  const { lips, lipAsked } = typed;
  return {
    ...typed,
    ...Object.fromEntries(answered),
    lips: lips.length === 0 && lipAsked !== undefined ? [{ width: lipAsked }] : lips,
  };
}

/** The job that is calculated: what was typed, with its blanks filled by the company's book and by what is assumed. */
export function usedJob(typed: Job, company?: SomeOf, assumed: Assumed = usualOf(typed.system)): Job {
  const filled = (Object.keys(FACTS) as FactKey[]).map((key) => {
    const said = [typed[key], answerOf(key, typed), company?.[key], assumed[key]?.value].find(isSaid);
    return [key, said ?? (FACTS[key].type === "table" ? [] : undefined)];
  });
  return { ...(Object.fromEntries(filled) as unknown as Omit<Job, "system">), system: typed.system };
}
