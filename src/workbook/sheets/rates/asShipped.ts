import { shippedBook } from "../../../book/shipped";
import { INVENTED_DAY } from "../../../book/shipped/products";
import { serialOf } from "../../../calc/quantity/dateSerial";
import type { Job, RateLine, SheetLayout } from "../../layout";

/** The word that marks a price nobody has changed or confirmed. */
export const MARK = "invented";
export const PRICE_DAY = serialOf(INVENTED_DAY) ?? "";

/** Whether a line of the sheets comes with a price, of its own or from another sheet. */
export function isPriced({ price, priceFormula }: RateLine): boolean {
  return price !== undefined || priceFormula !== undefined;
}

/**
 * The prices that the workbook comes with, and whether the price list still holds them: a shipped price is invented until
 * it, or the day it is of, is another. A price from another sheet has no number here.
 */
export function pricesAsShipped(s: SheetLayout, job: Job): void {
  s.section("Prices as they came with the workbook");
  const known = new Set(job.rateLines.map(({ code }) => code));
  const rows = [
    ...job.rateLines.filter(isPriced).map(({ code, price, priceFormula }) => ({
      code,
      cost: priceFormula === undefined && price !== undefined ? job.pick(price) : "",
      day: PRICE_DAY,
    })),
    ...shippedBook(job.system)
      .products.filter(({ code }) => !known.has(code))
      .map(({ code, price = "", day }) => ({ code, cost: price, day: serialOf(day) ?? "" })),
  ];
  s.table({
    rows: rows.length,
    columns: [
      { key: "code", title: "Code", kind: "text", name: "ShippedCodes", fixed: rows.map(({ code }) => code) },
      { key: "cost", title: "Cost", kind: "money", fixed: rows.map(({ cost }) => cost) },
      { key: "day", title: "Price of", kind: "date", fixed: rows.map(({ day }) => day) },
      {
        key: "row",
        title: "Row on Rates",
        kind: "count",
        whole: true,
        formula: '=IFERROR(MATCH([code],RateCodes,0),"")',
      },
      {
        key: "mark",
        title: "Mark",
        source: "by definition: invented until the price, or the day it is of, is another, or all are confirmed",
        kind: "text",
        name: "ShippedMarks",
        across: 2,
        whole: true,
        formula:
          '=IF([row]="","",IF((PricesConfirmed="")*(INDEX(RateDays,[row])=[day])*' +
          `(([cost]="")+(INDEX(RateCosts,[row])=[cost])>0),"${MARK}",""))`,
      },
    ],
  });
}
