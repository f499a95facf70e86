import { FACTS, type FactKey, type Job } from "./index";
import type { Fact } from "./fact";
import { FACT_STATES, type FactState, type Standings } from "./standing";

/** How many facts are in each state; of the unknown ones those that the job cannot do without. */
export type HowComplete = Readonly<Record<FactState, number>>;

export function howComplete(standings: Standings): HowComplete {
  const count = (state: FactState): number =>
    (Object.keys(FACTS) as FactKey[]).filter(
      (key) => standings[key].state === state && (state !== "unknown" || isNeeded(key, standings.basinParts.value)),
    ).length;
  return Object.fromEntries(FACT_STATES.map((state) => [state, count(state)])) as Record<FactState, number>;
}

/** Sides of a module are needed once there are modules in the basin. */
const OF_MODULES: ReadonlySet<FactKey> = new Set<FactKey>(["moduleLength", "moduleWidth", "moduleHeight"]);

/** Whether a job with these parts in its basin cannot do without a fact. */
export function isNeeded(key: FactKey, basinParts: Job["basinParts"] | undefined): boolean {
  const fact: Fact = FACTS[key];
  if (fact.type === "table") return fact.required === true;
  if (OF_MODULES.has(key)) return basinParts?.some(({ kind }) => kind === "modules") ?? false;
  return fact.optional !== true;
}
