import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { FactKey, Job } from "../facts";
import { COMMON_PRACTICE, isDoubtful, valueAt, type Guess } from "./guess";
import type { Offers } from "./offers";

/** A fact as the draft assumes it. */
export interface Drafted<T = unknown> extends Omit<Guess<T>, "at" | "source"> {
  readonly source: string;
  readonly at?: Guess<T>["at"];
}

/** Places on the normal curve of facts that are in doubt; those left out are taken as likely. */
export type Places = ReadonlyMap<FactKey, number>;

type Known<K extends FactKey> = NonNullable<Job[K]>;
type Writable<T> = { -readonly [K in keyof T]: T[K] };

function isSaid(value: unknown): boolean {
  return Array.isArray(value) ? value.length > 0 : value !== undefined && value !== "";
}

const begun = new WeakMap<Job, { readonly usual: Partial<Job>; readonly job: Job }>();

/** What is typed, and what stands for its blanks; put together once for all drafts that a range makes of it. */
function filledIn(typed: Job, usual: Partial<Job>): Job {
  const known = begun.get(typed);
  if (known?.usual === usual) return known.job;
  const blanks = Object.entries(usual).filter(([key, value]) => value !== undefined && !isSaid(typed[key as FactKey]));
  const job = { ...typed, ...(Object.fromEntries(blanks) as Partial<Job>) };
  begun.set(typed, { usual, job });
  return job;
}

/** A job while the rules are filling it in: what is typed always wins. */
export class Sketch {
  readonly job: Writable<Job>;
  private readonly guesses = new Map<FactKey, Guess<unknown>>();
  readonly system: UnitSystem;

  constructor(
    /** What is typed for this job, and what the company's book says. */
    readonly typed: Job,
    /** What stands for a blank where no rule says better. */
    readonly usual: Partial<Job>,
    readonly offers: Offers,
    private readonly places: Places = new Map(),
  ) {
    this.system = typed.system;
    this.job = { ...filledIn(typed, usual) };
  }

  isTyped(key: FactKey): boolean {
    return isSaid(this.typed[key]);
  }

  /** What the rules said, in full: a range that drafts a hundred times reads none of it. */
  facts(): ReadonlyMap<FactKey, Drafted> {
    const inFull = (guess: Guess<unknown>): Drafted => ({ ...guess, source: guess.source ?? COMMON_PRACTICE });
    return new Map([...this.guesses].map(([key, guess]) => [key, inFull(guess)]));
  }

  /** Facts that may turn out other than likely. */
  doubtful(): FactKey[] {
    return [...this.guesses].flatMap(([key, guess]) => (isDoubtful(guess) ? [key] : []));
  }

  /** The typed value, else what the rule says, which is then part of the draft. */
  assume<K extends FactKey>(key: K, rule: () => Guess<Known<K>>): Known<K> {
    if (this.isTyped(key)) return this.typed[key] as Known<K>;
    const guess = rule();
    const value = valueAt(guess, this.places.get(key) ?? 0);
    this.guesses.set(key, guess);
    (this.job as Record<string, unknown>)[key] = value;
    return value;
  }

  /** One of two values, by the job's system. */
  pick<T>(US: T, SI: T): T {
    return this.system === "US" ? US : SI;
  }
}
