import { COST_KINDS } from "../calc/money/costKinds";
import { roundMoney } from "../calc/money/cents";
import { raisedToCent, raisedToStep } from "../calc/money/raise";
import { markupsForMargin, markupsForPrice } from "../calc/money/wantedPrice";
import { Problem } from "../calc/problem";
import type { Job } from "./facts";
import { moneyDigits } from "./money";
import { total } from "./rows";

/** A price or a margin of one's own, and the markups every line is priced with. */
export interface Wanted {
  /** Before tax, raised as prices are; undefined where nothing is wanted. */
  readonly asked: number | undefined;
  /** Row by row; the typed ones where nothing is wanted or no markups make it. */
  readonly markups: readonly number[];
}

/** What is wanted of the option that is quoted. Its costs: kinds, overhead, contingency; undefined while unknown. */
export function wantedOf(job: Job, costs: readonly number[] | undefined): Wanted {
  const { ownPrice, ownMargin, roundTo: step = 0 } = job;
  const digits = moneyDigits(job);
  const typed = Array.from({ length: COST_KINDS.length + 2 }, (_, row) => job.markups[row]?.markup ?? 0);
  if (!costs || total(costs) <= 0) return { asked: undefined, markups: typed };
  const rows = costs.map((cost, row) => ({ cost, markup: typed[row] ?? 0 }));
  const jobCost = jobCostOf(job, costs);
  if (ownPrice !== undefined)
    return made(() => markupsForPrice(rows, ownPrice, step, digits), roundMoney(ownPrice, digits));
  if (ownMargin === undefined) return { asked: undefined, markups: typed };
  return made(() => markupsForMargin(rows, { jobCost, margin: ownMargin, step, digits }), jobCost / (1 - ownMargin));

  /** What cannot be made is still asked for: a check compares it with the price. */
  function made(markups: () => { price: number; markups: readonly number[] }, wanted: number): Wanted {
    try {
      const found = markups();
      return { asked: found.price, markups: found.markups };
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return { asked: raisedToStep(raisedToCent(wanted, digits), step, digits), markups: typed };
    }
  }
}

/** Direct cost and contingency of the costs of an option: what the job itself costs. */
export function jobCostOf(job: Job, costs: readonly number[]): number {
  return roundMoney(total(costs.map((cost, row) => (row === COST_KINDS.length ? 0 : cost))), moneyDigits(job));
}
