import { roundMoney } from "../calc/money/cents";
import { COST_KINDS } from "../calc/money/costKinds";
import { minorDigits } from "../calc/money/currency";
import { MARGIN_RANGE } from "../calc/money/margin";
import { markupsForMargin, markupsForPrice, type PriceRow } from "../calc/money/wantedPrice";
import { invalid, missing, plain } from "../calc/problem";
import { readNumber } from "../calc/quantity/readQuantity";
import type { CellValue, Change, Grid } from "../host/port";
import { yoursName } from "../workbook/yoursName";
import { amount } from "./amount";

/** Where a wish is typed on Price: it goes before any markup, so it is cleared when markups are set. */
const OWN_PLACES = [yoursName("OwnPrice"), yoursName("OwnMargin")];

/** The names that `markupsWanted` needs, in its order. */
export const WANTED_PLACES = [
  "Markups",
  "CostsA",
  "CostsB",
  "CostsC",
  "ChosenOption",
  "RoundTo",
  "PriceStanding",
  "Currency",
  ...OWN_PLACES,
] as const;

/** What a person may ask for. */
export type Wanted = "price" | "margin";

/** Where the contingency stands among the costs: behind the kinds and the overhead. */
const CONTINGENCY = COST_KINDS.length + 1;

/** Markups that make the price or the gross margin somebody wants, and what was done in a sentence. */
export interface MarkupsWanted {
  readonly changes: readonly [Change, ...Change[]];
  readonly said: string;
}

/**
 * Reads what is wanted of the option that is quoted and works out its markups. Throws a `Problem` where it cannot be.
 *
 * @param grids what the workbook holds at WANTED_PLACES
 */
export function markupsWanted(wanted: Wanted, typed: string, grids: readonly (Grid | undefined)[]): MarkupsWanted {
  const [markups, a, b, c, chosen, step, standing, currency, ...own] = grids;
  const costs = { A: a, B: b, C: c }[first(chosen)];
  if (!markups || !costs) throw missing("this workbook has no price table with a quoted option; see Price");
  const words = first(standing);
  if (words !== "") throw missing(`there is no price to set yet (${words})`);
  const rows = markups.map(([markup], row): PriceRow => ({
    cost: number(costs[row]?.[0]),
    markup: number(markup ?? ""),
  }));
  const unit = first(currency);
  const digits = minorDigits(unit);
  const jobCost = roundMoney(
    rows.reduce((sum, { cost }, row) => sum + (isOfJob(row) ? cost : 0), 0),
    digits,
  );
  const roundTo = number(step?.[0]?.[0]);
  const { markups: made, price } =
    wanted === "price"
      ? markupsForPrice(rows, readPrice(typed, unit), roundTo, digits)
      : markupsForMargin(rows, { jobCost, margin: readMargin(typed), step: roundTo, digits });
  const margin = (100 * (price - jobCost)) / price;
  const money = amount(price.toLocaleString("en", { minimumFractionDigits: digits }), unit);
  const raised = roundTo > 0 ? `, a multiple of ${plain(roundTo)} as set on Price` : "";
  return {
    // A line without a cost keeps its cell as it is, blank where it is blank.
    changes: [
      {
        place: "Markups",
        values: made.map((markup, row) => [rows[row]?.cost === 0 ? (markups[row]?.[0] ?? "") : markup]),
      },
      ...OWN_PLACES.filter((_, index) => first(own[index]) !== "").map((place) => ({ place, values: [[""]] })),
    ],
    said: `Markups set: ${money} before tax${raised}; gross margin ${margin.toFixed(1)}%.`,
  };
}

/** Overhead is no cost of the job itself, and the gross margin has to pay for it. */
function isOfJob(row: number): boolean {
  return row < COST_KINDS.length || row === CONTINGENCY;
}

function readPrice(typed: string, currency: string): number {
  const text = (currency === "" ? typed : typed.replace(currency, "")).trim();
  if (text === "") throw missing("type the price before tax that you want");
  const price = readNumber(text, "price");
  if (price <= 0) throw invalid("the price must be above 0");
  return price;
}

/** A margin as a person means it: 32, 32% and 0.32 are the same. */
function readMargin(typed: string): number {
  const text = typed.replace("%", "").trim();
  if (text === "") throw missing("type the gross margin that you want, such as 32%");
  const value = readNumber(text, "margin");
  const margin = typed.includes("%") || value >= 1 ? value / 100 : value;
  if (margin < MARGIN_RANGE.min || margin > MARGIN_RANGE.max) {
    throw invalid(`the margin must be 0 to ${100 * MARGIN_RANGE.max}% of the price; got ${plain(100 * margin)}%`);
  }
  return margin;
}

function first(grid: Grid | undefined): string {
  return String(grid?.[0]?.[0] ?? "");
}

function number(value: CellValue | undefined): number {
  return typeof value === "number" ? value : 0;
}
