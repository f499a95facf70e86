import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { FactKey, Job } from "../facts";
import { COMMON_PRACTICE, valueAt, type Guess } from "./guess";
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

/** A job while the rules are filling it in: what is typed always wins. */
export class Sketch {
  readonly job: Writable<Job>;
  readonly facts = new Map<FactKey, Drafted>();
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
    this.job = { ...typed };
    for (const [key, value] of Object.entries(usual) as [FactKey, never][]) {
      if (!this.isTyped(key) && value !== undefined) (this.job as Record<string, unknown>)[key] = value;
    }
  }

  isTyped(key: FactKey): boolean {
    const value: unknown = this.typed[key];
    return Array.isArray(value) ? value.length > 0 : value !== undefined && value !== "";
  }

  /** The typed value, else what the rule says, which is then part of the draft. */
  assume<K extends FactKey>(key: K, rule: () => Guess<Known<K>>): Known<K> {
    if (this.isTyped(key)) return this.typed[key] as Known<K>;
    const guess = rule();
    const value = valueAt(guess, this.places.get(key) ?? 0);
    this.facts.set(key, { ...guess, source: guess.source ?? COMMON_PRACTICE });
    (this.job as Record<string, unknown>)[key] = value;
    return value;
  }

  /** One of two values, by the job's system. */
  pick<T>(US: T, SI: T): T {
    return this.system === "US" ? US : SI;
  }
}
