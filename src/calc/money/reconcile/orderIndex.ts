import { CENT_DIGITS, lineCents } from "../cents";
import { chargeKind } from "./charges";
import { bareCode, codeKey, KnownCodes } from "./codes";
import type { Group } from "./group";
import type { InvoiceLine, OrderLine } from "./lines";
import type { OrderFacts } from "./unordered";

interface Known extends OrderFacts {
  supplier: string;
  readonly items: string[];
  codes?: KnownCodes;
}

/** What was ordered, by order and by item, for papers that go astray. */
export class OrderIndex {
  private readonly known = new Map<string, Known>();
  private readonly firstOf = new Map<string, Group>();
  // Few runs ask for these, so they are made when they are asked for.
  private goods: Map<string, number> | undefined;
  private orderOfItem: Map<string, string> | undefined;
  private numbers: KnownCodes | undefined;

  constructor(
    orders: readonly OrderLine[],
    private readonly invoices: readonly InvoiceLine[],
    digits = CENT_DIGITS,
  ) {
    for (const { order, item, supplier } of orders) {
      const key = codeKey(order);
      let known = this.known.get(key);
      if (!known) {
        const goodsOn = (invoice: string | undefined): number =>
          (this.goods ??= goodsByInvoice(this.invoices, digits)).get(`${key}\n${codeKey(invoice)}`) ?? 0;
        this.known.set(key, (known = { supplier: "", number: order.trim(), items: [], goodsOn }));
      }
      if (known.supplier === "") known.supplier = supplier?.trim() ?? "";
      known.items.push(item.trim());
    }
  }

  factsOf(order: string): OrderFacts | undefined {
    return this.known.get(codeKey(order));
  }

  /** The item of the named order that is likely meant; where no such order is known, the order. */
  likely({ order, item }: Group): string | undefined {
    const known = this.known.get(codeKey(order));
    if (known) return (known.codes ??= new KnownCodes(known.items)).likely(item);
    if (order === "") return (this.orderOfItem ??= this.ordersByItem()).get(bareCode(item)) || undefined;
    const numbers = (this.numbers ??= new KnownCodes([...this.known.values()].map((each) => each.number)));
    const likely = numbers.likely(order);
    // Order numbers run on, so a slip is likely only where the item was ordered there.
    if (likely === undefined || bareCode(likely) === bareCode(order)) return likely;
    const items = this.known.get(codeKey(likely))?.items ?? [];
    return items.some((each) => bareCode(each) === bareCode(item)) ? likely : undefined;
  }

  /** An ordered item that was asked for before, and whose codes differ by spaces, marks or case alone. */
  twinOf(group: Group): string | undefined {
    const item = bareCode(group.item);
    if (item === "") return undefined;
    const key = `${bareCode(group.order)}\n${item}`;
    const first = this.firstOf.get(key);
    if (first === undefined) {
      this.firstOf.set(key, group);
      return undefined;
    }
    return codeKey(first.order) === codeKey(group.order) ? first.item : `${first.item} on ${first.order}`;
  }

  /** Order of each item that stands on one order alone; "" where it stands on several. */
  private ordersByItem(): Map<string, string> {
    const orders = new Map<string, string>();
    for (const { number, items } of this.known.values()) {
      for (const item of items) {
        const key = bareCode(item);
        const other = orders.get(key);
        orders.set(key, other === undefined || other === number ? number : "");
      }
    }
    return orders;
  }
}

/** Cents of the goods, charges left out, per order and invoice. */
function goodsByInvoice(invoices: readonly InvoiceLine[], digits: number): Map<string, number> {
  const goods = new Map<string, number>();
  for (const { order, item, quantity, price, invoice } of invoices) {
    if (chargeKind(item) !== undefined) continue;
    const key = `${codeKey(order)}\n${codeKey(invoice)}`;
    goods.set(key, (goods.get(key) ?? 0) + lineCents(quantity ?? 0, price ?? 0, undefined, digits));
  }
  return goods;
}
