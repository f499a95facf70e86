import { invalid } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Pool } from "../planPools";

/** What the client's drawing shows; every length in the default unit of the system (ft or m). */
export interface ClientFacts {
  readonly system: UnitSystem;
  readonly name: string;
  /** Heights of the drops from the top, with the tread behind each. */
  readonly drops: readonly number[];
  readonly treads: readonly number[];
  readonly bedWidth: number;
  /** How high the stones of the banks stand above the water. */
  readonly bankHeight: number;
  /** The basin as wide and long as it is at its rim. */
  readonly basinLength: number;
  readonly basinWidth: number;
  readonly basinDepth: number;
  readonly rimBelowGrade: number;
  /** How far the basin's walls lean in from rim to floor. */
  readonly basinLean: number;
  readonly lipStone: { readonly length: number; readonly width: number; readonly height: number };
  readonly lipStonesPerDrop: number;
  /** The boulders as they are counted for the order: mean size, and how many. */
  readonly boulders: readonly { readonly size: number; readonly count: number }[];
  /** From the top: the spillway box first, then the pool behind the lip of each next drop. */
  readonly pools: readonly Pool[];
}

/** Throws a sentence for the user where something cannot be drawn. */
export function refuseUndrawable(facts: ClientFacts): void {
  const { drops, treads, boulders, lipStone } = facts;
  if (drops.length === 0 || drops.length !== treads.length) {
    throw invalid("the drawing needs as many treads as drops, and at least one of each");
  }
  const above = [...drops, ...treads, facts.bedWidth, facts.basinLength, facts.basinWidth, facts.basinDepth];
  if (!above.every((value) => value > 0 && Number.isFinite(value))) {
    throw invalid("the drawing needs drops, treads, a bed and a basin above 0");
  }
  const notBelow = [facts.bankHeight, facts.rimBelowGrade, facts.basinLean, facts.lipStonesPerDrop];
  const stones = boulders.flatMap(({ size, count }) => [size, count]);
  if (![...notBelow, ...stones, ...Object.values(lipStone)].every((value) => value >= 0 && Number.isFinite(value))) {
    throw invalid("the drawing needs heights, stones and counts that are numbers from 0 up");
  }
}

/** Feet in one unit of length of the drawing: sizes of people and plants are kept in feet. */
export function lengthOfFeet(system: UnitSystem): number {
  return system === "US" ? 1 : 0.3048;
}

/** A number to begin the random shapes with, made of the job's own numbers: the same job gets the same picture. */
export function seedOf({ drops, treads, bedWidth, basinLength, boulders }: ClientFacts): number {
  const numbers = [...drops, ...treads, bedWidth, basinLength, ...boulders.map(({ count }) => count)];
  return numbers.reduce((seed, value) => (Math.imul(seed, 31) + Math.round(value * 1000)) | 0, 17);
}
