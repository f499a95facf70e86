import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { basin } from "./basin";
import type { HeldBy, RowOf } from "./fact";
import { earth } from "./earth";
import { ground } from "./ground";
import { labor } from "./labor";
import { levels } from "./levels";
import { liner } from "./liner";
import { price } from "./price";
import { pump } from "./pump";
import { rates } from "./rates";
import { site } from "./site";
import { start } from "./start";
import { stone } from "./stone";
import { takeoff } from "./takeoff";
import { water } from "./water";

/** Every fact of a job, once, by the name it has in a job. */
export const FACTS = {
  ...start,
  ...site,
  ...ground,
  ...water,
  ...pump,
  ...basin,
  ...liner,
  ...stone,
  ...earth,
  ...levels,
  ...labor,
  ...rates,
  ...takeoff,
  ...price,
} as const;

type Facts = typeof FACTS;
export type FactKey = keyof Facts;

/** A job: what is known of it, in SI. A fact that nobody has typed is undefined; a table is as long as its last filled row. */
export type Job = { readonly system: UnitSystem } & { readonly [K in FactKey]: HeldBy<Facts[K]> };

/** A row of one of the job's tables. */
export type JobRow<K extends { [F in FactKey]: Facts[F] extends { type: "table" } ? F : never }[FactKey]> = RowOf<
  Facts[K]
>;

/** A job of which nothing is known yet. */
export function blankJob(system: UnitSystem): Job {
  const nothing = Object.entries(FACTS).map(([key, fact]) => [key, fact.type === "table" ? [] : undefined]);
  return { ...(Object.fromEntries(nothing) as unknown as Omit<Job, "system">), system };
}
