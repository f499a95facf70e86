import type { UnitSystem } from "../calc/quantity/unitSystem";

/** What the cut plan shows; every length in the default unit of the system (ft or m). */
export interface CutPlanFacts {
  readonly system: UnitSystem;
  readonly name: string;
  /** Lengths to buy, in the order of the plan. */
  readonly bought: readonly {
    /** Number of the roll in the user's table. */
    readonly roll: number;
    /** Where it begins when the lengths bought of this roll lie end to end. */
    readonly start: number;
    readonly length: number;
    readonly width: number;
  }[];
  readonly cuts: readonly {
    readonly name: string;
    readonly roll: number;
    readonly along: number;
    readonly across: number;
    readonly length: number;
    readonly width: number;
    readonly turned: boolean;
  }[];
}
