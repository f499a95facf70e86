import type { Book } from "../../book/types";
import { currencySign } from "../../calc/money/currency";
import { tasksOf } from "./companyTasks";
import type { SomeOf } from "../facts/standing";

/** What a company's book says of every job: who works, with what, how it prices. What depends on the design is not in it. */
export function companyOf(book: Book): SomeOf {
  const { company, labor, machines, pricing, products } = book;
  const words = (text: string): string | undefined => text || undefined;
  const fabric = products.find(({ kind, size }) => kind === "fabric" && size !== undefined);
  return {
    currency: company.currency === "" ? undefined : currencySign(company.currency),
    companyName: words(company.name),
    companyAddress: words(company.address),
    companyPhone: words(company.phone),
    companyEmail: words(company.email),
    companyLicense: words(company.license),
    estimator: words(company.estimator),
    burden: labor.burden.map(({ line, share }) => ({ line, share })),
    wages: labor.wages.map(({ role, wage, people }) => ({ role, wage, people })),
    machines: machines.map(({ name, own, fuel, upkeep, share, width, lift, reach }) => ({
      ...{ name, own, fuel, upkeep, share, width, lift, reach },
    })),
    tasks: tasksOf(book).rows,
    sizeHours: labor.sizes.map((size) => {
      const { pipe, pipeTimes, stone, stoneTimes, tub, tubTimes, tubMachineTimes, boulder, boulderTimes } = size;
      return { pipe, pipeTimes, stone, stoneTimes, tub, tubTimes, tubMachineTimes, boulder, boulderTimes };
    }),
    dayHours: labor.dayHours,
    handLimit: labor.handLimit,
    fabricRollWidth: fabric?.size,
    wantedMargin: pricing.wantedMargin,
    overheadBy: pricing.overheadBy,
    overheadShare: pricing.overheadShare,
    overheadPerHour: pricing.overheadPerHour,
    contingencyShare: pricing.contingencyShare,
    taxName: words(pricing.taxName),
    taxBase: pricing.taxBase,
    taxRate: pricing.taxRate,
    roundTo: pricing.roundTo,
    validDays: pricing.validDays,
    tariff: pricing.tariff,
    ownYears: pricing.ownYears,
    markups: pricing.markups.map((markup) => ({ markup })),
    scope: company.scope.map((sentence) => ({ sentence })),
    exclusions: company.exclusions.map((sentence) => ({ sentence })),
    terms: company.terms.map((sentence) => ({ sentence })),
    stages: pricing.stages.map(({ name, share }) => ({ name, share })),
  };
}
