import { invalid, plain, requireFinite } from "../problem";

/** Markups a job is priced with: beyond 10 (1000 %) a percent was meant. */
export const MARKUP_RANGE = { min: 0, max: 10 } as const;
/** Margins a job is priced with: the largest needs a markup of 9; a margin of 1 would need an endless price. */
export const MARGIN_RANGE = { min: 0, max: 0.9 } as const;

/**
 * The gross margin that a markup on cost gives.
 *
 * margin = markup / (1 + markup)
 *
 * @param markup share of cost, 0 to 10
 * @returns share of the price
 * @throws Problem outside the range
 * @example marginOf(0.5) => 0.3333; 0.5 / 1.5
 *
 * Source: definition; price = cost × (1 + markup) = cost / (1 - margin)
 */
export function marginOf(markup: number): number {
  requireShare("markup", markup, MARKUP_RANGE);
  return markup / (1 + markup);
}

/**
 * The markup on cost that a gross margin needs.
 *
 * markup = margin / (1 - margin)
 *
 * @param margin share of the price, 0 to 0.9
 * @returns share of the cost
 * @throws Problem outside the range
 * @example markupFor(0.2) => 0.25; 0.2 / (1 - 0.2)
 *
 * Source: definition; price = cost × (1 + markup) = cost / (1 - margin)
 */
export function markupFor(margin: number): number {
  requireShare("margin", margin, MARGIN_RANGE);
  return margin / (1 - margin);
}

function requireShare(name: string, value: number, range: { readonly min: number; readonly max: number }): void {
  requireFinite(name, value);
  if (value < range.min || value > range.max) {
    throw invalid(`${name} must be a share of ${range.min} to ${range.max}; got ${plain(value)}`);
  }
}
