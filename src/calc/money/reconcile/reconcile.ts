import { invalid, requireRange } from "../../problem";
import { CENT_DIGITS } from "../cents";
import { groupPapers } from "./group";
import type { DeliveryLine, InvoiceLine, OrderLine, ReconciledLine, UnreadLine, UnreadVerdict } from "./lines";
import { OrderIndex } from "./orderIndex";
import { assessOrdered } from "./ordered";
import { totalsOf, type Total } from "./totals";
import { assessUnordered } from "./unordered";

/** A weighbridge and a loading shovel agree to about this share; common practice, no source. */
export const USUAL_TOLERANCE = 0.02;

export interface Reconciliation {
  readonly lines: ReconciledLine[];
  readonly unread: UnreadVerdict[];
  readonly totals: Total[];
}

/**
 * Squares orders, delivery tickets and invoices, per order and item.
 *
 * outstanding = ordered - delivered; price difference = Σ (invoice line - same quantity at the ordered prices);
 * at stake = billed - least of ordered, delivered and invoiced at the ordered prices, never below 0.
 * Where an item was ordered at several prices, an invoice line takes its own price while that has quantity left, and
 * otherwise the cheapest that is free.
 *
 * @param tolerance share by which quantities may differ unremarked, 0 to 1; prices are compared to the cent
 * @param unread rows that could not be read; each becomes a line to query, whose money is unknown
 * @param digits behind the point of amounts, where the smallest unit of the currency is no cent
 * @returns a line per order and item, ordered ones first, then the unread rows; totals per order, per supplier, in all
 * @throws Problem when there is nothing to reconcile or the tolerance is outside its range
 * @example reconcile([{ order: "1", item: "Pipe", quantity: 10, price: 2, row: 1 }], [{ order: "1", item: "Pipe",
 *   quantity: 4, row: 1 }], []).lines[0].amounts.toCome => 1200; 6 still to come at 2.00, in cents
 *
 * Source: three-way match of order, receipt and invoice, any text on purchasing
 */
export function reconcile(
  orders: readonly OrderLine[],
  deliveries: readonly DeliveryLine[],
  invoices: readonly InvoiceLine[],
  tolerance: number = USUAL_TOLERANCE,
  unread: readonly UnreadLine[] = [],
  digits = CENT_DIGITS,
): Reconciliation {
  requireRange("tolerance", tolerance, 0, 1, "(share)");
  if (orders.length + deliveries.length + invoices.length + unread.length === 0) {
    throw invalid("orders is needed: at least one order line, ticket or invoice to reconcile");
  }
  const index = new OrderIndex(orders, invoices, digits);
  const lines = groupPapers(orders, deliveries, invoices).map((group) => {
    if (group.orders.length > 0) return assessOrdered(group, tolerance, index.twinOf(group), digits);
    return assessUnordered(group, index.factsOf(group.order), index.likely(group), digits);
  });
  const unreadLines = unread.map(({ paper, row, order, item, number, reason }): UnreadVerdict => {
    const known = index.factsOf(order) ?? { number: order, supplier: "" };
    const verdict = `${paper} row ${row}${number === undefined ? "" : ` (${number})`} was not read: ${reason}.`;
    return { order: known.number, supplier: known.supplier, item, state: "Query", verdict };
  });
  return { lines, unread: unreadLines, totals: totalsOf(lines, unreadLines, digits) };
}
