import Big from "big.js";
import { requireRange } from "../../../src/calc/problem";
import { lineCents, sumCents, toCents } from "../../../src/calc/money/cents";
import { COST_KINDS, type CostKind, type TaxBase } from "../../../src/calc/money/costKinds";
import { MARKUP_RANGE } from "../../../src/calc/money/margin";

/** What a price is built from; money in whole money, shares from 0. */
export interface PriceParts {
  /** Cost of each kind, already the sum of rounded lines. */
  readonly costs: Readonly<Partial<Record<CostKind, number>>>;
  readonly markups: Readonly<Partial<Record<CostKind, number>>>;
  /** Share of the direct cost, or money per crew hour. */
  readonly overhead: { readonly share: number } | { readonly perHour: number; readonly hours: number };
  readonly overheadMarkup?: number;
  /** Share of the direct cost. */
  readonly contingency: number;
  readonly contingencyMarkup?: number;
  readonly taxRate: number;
  /** Cost of the lines that tax is owed on, for the base that asks for it. */
  readonly taxable?: number;
  readonly taxBase: TaxBase;
  /** The price is raised to a whole multiple of this; 0 leaves it. */
  readonly roundTo: number;
}

/** A price with its parts, in whole cents. */
export interface PriceBuildUp {
  readonly direct: number;
  readonly overhead: number;
  readonly contingency: number;
  /** Direct cost, overhead and contingency. */
  readonly totalCost: number;
  readonly beforeRounding: number;
  readonly rounding: number;
  readonly priceBeforeTax: number;
  readonly tax: number;
  readonly priceTotal: number;
  /** Share of the price before tax that is left over the job's own cost (direct and contingency). */
  readonly grossMargin: number;
}

/**
 * The workbook's price once more, in whole cents and apart from its formulas, to hold them against.
 *
 * Builds a price up from costs, in this order: direct cost, overhead and contingency on it, a markup on each line,
 * rounding up, tax. Every line is rounded to the cent, and every total is the sum of the rounded lines.
 *
 * price = ⌈Σ cost × (1 + markup) / step⌉ × step;  tax = base × rate;
 * gross margin = (price - direct - contingency) / price
 *
 * @throws Problem when a cost, share or step is outside its range
 * Source: common practice, no source
 */
export function buildPrice(parts: PriceParts): PriceBuildUp {
  requireRange("contingency", parts.contingency, 0, 1, "(share)");
  requireRange("tax rate", parts.taxRate, 0, 1, "(share)");
  requireRange("rounding step", parts.roundTo, 0, 1e6);

  const lines = COST_KINDS.map((kind) => {
    const cost = toCents(parts.costs[kind] ?? 0, `${kind} cost`);
    return { kind, cost, price: withMarkup(cost, parts.markups[kind] ?? 0, kind) };
  });
  const direct = sumCents(lines.map(({ cost }) => cost));
  const overhead =
    "share" in parts.overhead
      ? shareOfCents(direct, parts.overhead.share)
      : lineCents(parts.overhead.hours, parts.overhead.perHour, "overhead");
  const contingency = shareOfCents(direct, parts.contingency);

  const beforeRounding =
    sumCents(lines.map(({ price }) => price)) +
    withMarkup(overhead, parts.overheadMarkup ?? 0, "overhead") +
    withMarkup(contingency, parts.contingencyMarkup ?? 0, "contingency");
  const step = toCents(parts.roundTo, "rounding step");
  const priceBeforeTax = step === 0 ? beforeRounding : Math.ceil(beforeRounding / step) * step;

  const material = lines.find(({ kind }) => kind === "material");
  const bases: Readonly<Record<TaxBase, number>> = {
    nothing: 0,
    "taxable lines at cost": toCents(parts.taxable ?? 0, "taxable cost"),
    "materials with markup": material?.price ?? 0,
    "whole price": priceBeforeTax,
  };
  const tax = shareOfCents(bases[parts.taxBase], parts.taxRate);
  return {
    direct,
    overhead,
    contingency,
    totalCost: direct + overhead + contingency,
    beforeRounding,
    rounding: priceBeforeTax - beforeRounding,
    priceBeforeTax,
    tax,
    priceTotal: priceBeforeTax + tax,
    grossMargin: priceBeforeTax === 0 ? 0 : (priceBeforeTax - direct - contingency) / priceBeforeTax,
  };
}

function withMarkup(cost: number, markup: number, name: string): number {
  requireRange(`${name} markup`, markup, MARKUP_RANGE.min, MARKUP_RANGE.max, "(share)");
  return cost + shareOfCents(cost, markup);
}

/** A share of an amount of cents (tax, overhead, markup), as whole cents, half a cent away from zero. */
export function shareOfCents(cents: number, share: number): number {
  return Number(new Big(cents).times(share).round(0, Big.roundHalfUp));
}
