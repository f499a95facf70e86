import type { cutPlan } from "../calc/liner/cutplan/plan";
import type { PlanRequest } from "../calc/liner/cutplan/request";
import { USUAL_EFFORT } from "../calc/liner/cutplan/search";

/** Steps of a longer search, each as long as a cell may take: some twenty seconds in all. */
export const STEPS = 80;

/** How far a longer search is, and the best plan so far. */
export interface Found {
  readonly step: number;
  readonly steps: number;
  /** Cost of the plan that the cell finds by itself, and of the best so far; area to buy where no roll has a price. */
  readonly before: number;
  readonly now: number;
  /** The best plan as the cell can keep it. */
  readonly kept: string;
  readonly proven: boolean;
}

/** Searches step by step, each from the best plan so far and in another direction, until it is proven least. */
export function* searchOn(request: PlanRequest, plan: typeof cutPlan): Generator<Found> {
  const worth = ({ cost, area }: { cost: number; area: number }): number => (cost > 0 ? cost : area);
  let best = plan(request);
  const before = worth(best);
  for (let step = 1; ; step++) {
    const { kept, proven } = best;
    yield { step, steps: STEPS, before, now: worth(best), kept, proven };
    if (proven || step === STEPS) return;
    const next = plan({ ...request, kept }, { ...USUAL_EFFORT, seed: step });
    if (next.proven || worth(next) < worth(best)) best = next;
  }
}
