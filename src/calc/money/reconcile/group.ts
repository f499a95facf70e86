import { codeKey } from "./codes";
import type { DeliveryLine, InvoiceLine, OrderLine } from "./lines";

/** All papers of one item on one order. */
export interface Group {
  readonly order: string;
  readonly item: string;
  readonly orders: OrderLine[];
  readonly deliveries: DeliveryLine[];
  readonly invoices: InvoiceLine[];
}

/** Sorts the papers into groups; ordered ones first, in the order of the orders. */
export function groupPapers(
  orders: readonly OrderLine[],
  deliveries: readonly DeliveryLine[],
  invoices: readonly InvoiceLine[],
): Group[] {
  const groups = new Map<string, Group>();
  const groupOf = (line: { readonly order?: string; readonly item: string }): Group => {
    const key = `${codeKey(line.order)}\n${codeKey(line.item)}`;
    let group = groups.get(key);
    if (!group) {
      group = { order: line.order?.trim() ?? "", item: line.item.trim(), orders: [], deliveries: [], invoices: [] };
      groups.set(key, group);
    }
    return group;
  };
  for (const line of orders) groupOf(line).orders.push(line);
  for (const line of deliveries) groupOf(line).deliveries.push(line);
  for (const line of invoices) groupOf(line).invoices.push(line);
  return [...groups.values()];
}
