import { roundMoney } from "../calc/money/cents";
import { minorDigits } from "../calc/money/currency";
import type { Job } from "./facts";

/** Digits behind the point of the job's amounts: as its currency has them. */
export function moneyDigits({ currency = "" }: Pick<Job, "currency">): number {
  return minorDigits(currency);
}

/** Rounds amounts to the smallest unit of the job's currency. */
export function roundingOf(job: Pick<Job, "currency">): (amount: number) => number {
  const digits = moneyDigits(job);
  return (amount) => roundMoney(amount, digits);
}
