import { invalid, requireRange } from "../../problem";
import { lineCents } from "../cents";
import { chargeKind, codeKey, groupPapers, likelyCode } from "./group";
import type { DeliveryLine, InvoiceLine, OrderLine, ReconciledLine } from "./lines";
import { assessOrdered } from "./ordered";
import { totalsOf, type Total } from "./totals";
import { assessUnordered, type OrderFacts } from "./unordered";

/** A weighbridge and a loading shovel agree to about this share; common practice, no source. */
export const USUAL_TOLERANCE = 0.02;

/**
 * Squares orders, delivery tickets and invoices, per order and item.
 *
 * outstanding = ordered - delivered; price difference = Σ (invoice line - same quantity at the nearest ordered price);
 * at stake = billed - least of ordered, delivered and invoiced at the ordered price, never below 0.
 *
 * @param tolerance share by which quantities may differ unremarked, 0 to 1; prices are compared to the cent
 * @returns a line per order and item, ordered ones first, and totals per order, per supplier and in all
 * @throws Problem when there is nothing to reconcile or the tolerance is outside its range
 * Source: three-way match of order, receipt and invoice, any text on purchasing
 */
export function reconcile(
  orders: readonly OrderLine[],
  deliveries: readonly DeliveryLine[],
  invoices: readonly InvoiceLine[],
  tolerance: number = USUAL_TOLERANCE,
): { lines: ReconciledLine[]; totals: Total[] } {
  requireRange("tolerance", tolerance, 0, 1, "(share)");
  if (orders.length + deliveries.length + invoices.length === 0) {
    throw invalid("orders is needed: at least one order line, ticket or invoice to reconcile");
  }
  const facts = orderFacts(orders, invoices);
  const lines = groupPapers(orders, deliveries, invoices).map((group) => {
    if (group.orders.length > 0) return assessOrdered(group, tolerance);
    const known = facts.get(codeKey(group.order));
    return assessUnordered(group, known && { ...known, likely: likelyCode(group.item, known.items) });
  });
  return { lines, totals: totalsOf(lines) };
}

/** What papers that go astray need to know of the orders they name. */
function orderFacts(
  orders: readonly OrderLine[],
  invoices: readonly InvoiceLine[],
): Map<string, OrderFacts & { readonly items: readonly string[] }> {
  // Only tax lines ask for the goods, so most runs never add them up.
  let goods: Map<string, number> | undefined;
  const facts = new Map<string, OrderFacts & { supplier: string; readonly items: string[] }>();
  for (const { order, item, supplier } of orders) {
    const key = codeKey(order);
    let known = facts.get(key);
    if (!known) {
      const goodsOn = (invoice: string | undefined): number =>
        (goods ??= goodsByInvoice(invoices)).get(`${key}\n${codeKey(invoice)}`) ?? 0;
      facts.set(key, (known = { supplier: "", items: [], goodsOn }));
    }
    if (known.supplier === "") known.supplier = supplier?.trim() ?? "";
    known.items.push(item);
  }
  return facts;
}

/** Cents of the goods, charges left out, per order and invoice. */
function goodsByInvoice(invoices: readonly InvoiceLine[]): Map<string, number> {
  const goods = new Map<string, number>();
  for (const { order, item, quantity, price, invoice } of invoices) {
    if (chargeKind(item) !== undefined) continue;
    const key = `${codeKey(order)}\n${codeKey(invoice)}`;
    goods.set(key, (goods.get(key) ?? 0) + lineCents(quantity ?? 0, price ?? 0));
  }
  return goods;
}
