import { distance } from "fastest-levenshtein";
import { CHARGE_WORDS, type ChargeKind } from "../../tables/charges";
import type { DeliveryLine, InvoiceLine, OrderLine } from "./lines";

/** All papers of one item on one order. */
export interface Group {
  readonly order: string;
  readonly item: string;
  readonly orders: OrderLine[];
  readonly deliveries: DeliveryLine[];
  readonly invoices: InvoiceLine[];
}

/** Order numbers and item codes are compared without regard to case and spacing. */
export function codeKey(code: string | undefined): string {
  if (code === undefined) return "";
  return (/\s/.test(code) ? code.trim().replace(/\s+/g, " ") : code).toLowerCase();
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

/** Whether an item is freight, tax or a deposit rather than goods. */
export function chargeKind(item: string): ChargeKind | undefined {
  const text = ` ${codeKey(item).replace(/[^a-z]+/g, " ")} `;
  return CHARGE_WORDS.find(({ words }) => words.some((word) => text.includes(` ${word} `)))?.kind;
}

/** Looking for a likely code stops being useful, and cheap, in longer lists. */
const MOST_CANDIDATES = 50;

/** The item of an order whose code differs least from a wrong one: by spacing and marks alone, or by one or two slips. */
export function likelyCode(wrong: string, candidates: readonly string[]): string | undefined {
  if (candidates.length > MOST_CANDIDATES) return undefined;
  const target = bare(wrong);
  let best: string | undefined;
  let least = target.length >= 6 ? 3 : 2;
  for (const candidate of candidates) {
    const slips = distance(target, bare(candidate));
    if (slips < least) {
      least = slips;
      best = candidate;
    }
  }
  return best;
}

/** A code by its letters and digits alone. */
function bare(code: string): string {
  return codeKey(code).replace(/[^a-z0-9]/g, "");
}
