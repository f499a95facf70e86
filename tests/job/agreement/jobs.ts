import fc from "fast-check";
import { FACTS, type FactKey } from "../../../src/job/facts";
import { usualOf } from "../../../src/job/facts/usual";
import type { SomeFacts } from "../../../src/workbook/jobCells/typeJob";
import { basin, earth, ground, levels, liner, pump, stone, water } from "./design";
import { asSold } from "./sold";
import { labor, price, takeoff } from "./money";

/** Sheets whose facts have sizes and weights, and no price. */
const DESIGN = new Set(["Site", "Ground", "Water", "Pump", "Basin", "Liner", "Stone", "Earth", "Levels"]);

/** A job to type into the demo workbook of a system: what is not in it stays as the demo has it. */
export interface TrialJob {
  readonly system: "US" | "SI";
  readonly facts: SomeFacts;
}

type Topics = Readonly<Record<string, fc.Arbitrary<SomeFacts>>>;

const topicsOf = (system: "US" | "SI"): Topics => ({
  water,
  pump: pump(system),
  basin,
  liner,
  stone,
  ground,
  earth,
  levels,
  labor,
  takeoff: takeoff(system),
  price: price(system),
});

/** Some topics anew, the others as the demo has them, so that a gap in one does not blank the rest of every job. */
export function jobIn(system: "US" | "SI"): fc.Arbitrary<TrialJob> {
  const topics = Object.fromEntries(
    Object.entries(topicsOf(system)).map(([topic, facts]) => [topic, fc.option(facts, { nil: {}, freq: 2 })]),
  );
  const facts = fc.record(topics).map((chosen) => Object.assign({}, ...Object.values(chosen)) as SomeFacts);
  // Most people choose what is sold; what is not has no price.
  return fc
    .tuple(facts, fc.integer({ min: 0, max: 3 }))
    .map(([some, sold]) => ({ system, facts: sold > 0 ? asSold(some, system) : some }));
}

export const trialJob: fc.Arbitrary<TrialJob> = fc.oneof(jobIn("US"), jobIn("SI"));

/** What a blank stands for differs between the systems: the metric one is typed into both, in SI. Money has no part in it. */
const SAID = Object.fromEntries(
  Object.entries(usualOf("SI")).flatMap(([key, { value }]) =>
    key !== "currency" && DESIGN.has(FACTS[key as FactKey].sheet) ? [[key, value]] : [],
  ),
) as SomeFacts;

function byBore(pipes: SomeFacts["route"] = []): NonNullable<SomeFacts["route"]> {
  return pipes.map((pipe) => ({ ...pipe, ...(pipe.size === undefined ? {} : { type: "Bore" as const }) }));
}

/** The demo's own skirts differ between the systems. */
const NO_PIECE = { length: null, width: null, count: null } as const;

/** Facts that mean the same in either system: nothing is left to a usual value of its own, and pipes go by their bore. */
export const sameJob: fc.Arbitrary<SomeFacts> = fc
  .record({ water, basin, liner, stone, ground, earth, levels, pump: pump("SI") })
  .map((topics) => Object.assign({}, ...Object.values(topics)) as SomeFacts)
  .map((facts) => ({
    ...facts,
    ...Object.fromEntries(Object.entries(SAID).map(([key, said]) => [key, facts[key as keyof typeof SAID] ?? said])),
    pieces: Array.from({ length: 8 }, (_, row) => ({ ...(row < 2 ? {} : NO_PIECE), ...facts.pieces?.[row] })),
    // A price for a length is for another length in the other system.
    seamPrice: undefined,
    route: byBore(facts.route),
    riser: byBore(facts.riser),
  }));
