import { invalid, missing, plain, requireFinite } from "../problem";
import { CENT_DIGITS, fromCents, roundMoney, sumCents, toCents } from "./cents";
import { MARGIN_RANGE, MARKUP_RANGE } from "./margin";
import { raisedToCent, raisedToStep } from "./raise";

/** What a price is made of, row by row: every cost and the markup it has now. Money. */
export interface PriceRow {
  readonly cost: number;
  /** Share of the cost; 0 where there is none yet. */
  readonly markup: number;
}

/** Markups that make a price. */
export interface WantedPrice {
  /** One for each row; those of rows without a cost stay. */
  readonly markups: readonly number[];
  /** Before tax: what was asked for, raised to the rounding step. Money. */
  readonly price: number;
}

/** Digits of a markup: enough for the cent of a million, and no more than a person can look at. */
const MARKUP_DIGITS = 1e9;

/**
 * The markups that make a wanted price, exact to the cent: all are changed in the same proportion, so that what earned
 * more still earns more, and the row with the highest cost takes the cents that are left. A step keeps the price a whole
 * multiple, as it is raised to one anyway.
 *
 * Σ round(cost × (1 + k markup)) = price
 *
 * @param rows costs of 0 or more, at least one above 0; markups 0 to 10
 * @param wanted price before tax
 * @param step 0 where the price is not raised
 * @param digits behind the point, where the smallest unit of the currency is no cent
 * @throws Problem where the price is under the cost, or a markup would leave 0 to 10
 * @example markupsForPrice([{ cost: 100, markup: 0.2 }, { cost: 50, markup: 0.2 }], 225).markups => [0.5, 0.5]; 225 / 150 - 1
 *
 * Source: arithmetic; commercial rounding.
 */
export function markupsForPrice(
  rows: readonly PriceRow[],
  wanted: number,
  step = 0,
  digits = CENT_DIGITS,
): WantedPrice {
  requireFinite("price", wanted);
  requireFinite("step", step);
  const costs = rows.map(({ cost }) => toCents(cost, "cost", digits));
  if (costs.some((cost) => cost < 0)) throw invalid("costs must be 0 or more");
  const total = sumCents(costs);
  if (total === 0) throw missing("there is no cost to mark up");
  const price = toCents(raisedToStep(wanted, step, digits), "price", digits);
  if (price < total) {
    throw invalid(
      `a price of ${plain(fromCents(price, digits))} is under the cost of ${plain(fromCents(total, digits))}: markups cannot be below 0`,
    );
  }
  const added = rows.reduce((sum, { markup }, row) => sum + (costs[row] ?? 0) * Math.max(0, markup), 0);
  const biggest = costs.indexOf(Math.max(...costs));
  const tries = [
    rows.map(({ markup }) => (added > 0 ? (Math.max(0, markup) * (price - total)) / added : Infinity)),
    // Where the proportion leads too far, or there is none, all rows alike; for a cent or two the biggest alone.
    rows.map(() => price / total - 1),
    rows.map(() => 0),
  ];
  const made = tries.map((shares) => exactly(shares));
  const markups = made.find((each) => each.every(isPossible)) ?? made[0] ?? [];
  const outside = markups.find((markup) => !isPossible(markup));
  if (outside !== undefined) {
    throw invalid(
      `a price of ${plain(fromCents(price, digits))} takes a markup of ${plain(100 * outside)}%; 0 to 1000% is possible`,
    );
  }
  return { markups, price: fromCents(price, digits) };

  /** Rounded markups, the biggest row's such that all together make the price. */
  function exactly(shares: readonly number[]): number[] {
    const rounded = shares.map((share, row) => ((costs[row] ?? 0) === 0 ? (rows[row]?.markup ?? 0) : short(share)));
    if (!rounded.every(Number.isFinite)) return rounded;
    const others = sumCents(
      rounded.map((share, row) => (row === biggest ? 0 : priced(costs[row] ?? 0, share, digits))),
    );
    rounded[biggest] = short((price - others) / (costs[biggest] ?? 1) - 1);
    return rounded;
  }
}

function isPossible(markup: number): boolean {
  return markup >= MARKUP_RANGE.min && markup <= MARKUP_RANGE.max;
}

function short(markup: number): number {
  return Math.round(markup * MARKUP_DIGITS) / MARKUP_DIGITS;
}

/**
 * The markups that make a wanted gross margin: price = job cost / (1 - margin), raised to the cent and to the step.
 *
 * @param jobCost what the job itself costs: direct cost and contingency
 * @param margin share of the price, 0 to 0.9
 * @throws Problem as markupsForPrice, and for a margin outside its range
 * @example markupsForMargin([{ cost: 150, markup: 0.2 }], { jobCost: 150, margin: 0.4 }).price => 250; 150 / (1 - 0.4)
 *
 * Source: definition of the gross margin.
 */
export function markupsForMargin(
  rows: readonly PriceRow[],
  {
    jobCost,
    margin,
    step = 0,
    digits = CENT_DIGITS,
  }: { readonly jobCost: number; readonly margin: number; readonly step?: number; readonly digits?: number },
): WantedPrice {
  requireFinite("margin", margin);
  if (margin < MARGIN_RANGE.min || margin > MARGIN_RANGE.max) {
    throw invalid(`margin must be ${MARGIN_RANGE.min} to ${MARGIN_RANGE.max}; got ${plain(margin)}`);
  }
  const exact = requireFinite("job cost", jobCost) / (1 - margin);
  return markupsForPrice(rows, raisedToCent(exact, digits), step, digits);
}

/** Cents of a cost with its markup, as the price table rounds them. */
function priced(cents: number, markup: number, digits: number): number {
  return toCents(roundMoney(fromCents(cents, digits) * (1 + markup), digits), "price", digits);
}
