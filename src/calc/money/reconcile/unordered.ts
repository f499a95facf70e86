import { CENT_DIGITS, lineCents, sumCents } from "../cents";
import { chargeKind } from "./charges";
import type { Group } from "./group";
import type { InvoiceLine, ReconciledLine } from "./lines";
import { listed, Remarks } from "./remarks";
import { clean, unitTurner } from "./stoneUnits";
import { tallyDeliveries, tallyInvoices } from "./tally";

/** What is known of the order that papers without an ordered item name. */
export interface OrderFacts {
  /** Its number, as the first of its lines writes it. */
  readonly number: string;
  readonly supplier: string;
  /** Cents of the goods on an invoice of this order, charges left out. */
  goodsOn(invoice: string | undefined): number;
}

/**
 * How papers stand that no order line covers: goods nobody ordered, wrong codes, freight and tax.
 *
 * @param facts the order they name, if there is one
 * @param likely the item of that order that is likely meant, or the order where there is none of that name
 * @param digits behind the point of amounts
 */
export function assessUnordered(
  group: Group,
  facts: OrderFacts | undefined,
  likely: string | undefined,
  digits = CENT_DIGITS,
): ReconciledLine {
  const remarks = new Remarks(digits);
  const charge = chargeKind(group.item);
  if (charge !== undefined && group.deliveries.length === 0) return assessCharge(group, charge, facts, likely, remarks);

  remarks.query(`${facts === undefined ? noOrder(group.order) : "Not on the order"}${isMeant(likely)}`);
  const [paper] = [...group.deliveries, ...group.invoices].filter(({ unit }) => unit?.trim());
  const unit = paper?.unit?.trim() ?? "each";
  const turner = unitTurner(unit, undefined);
  const delivered = tallyDeliveries(group.deliveries, turner, unit, remarks).total;
  const invoices = tallyInvoices(group.invoices, turner, remarks, delivered);
  return {
    order: group.order,
    supplier: facts?.supplier ?? "",
    item: group.item,
    unit,
    quantities: { ordered: 0, delivered, invoiced: invoices.total },
    amounts: {
      ordered: 0,
      billed: invoices.billed,
      priceDifference: 0,
      toCome: 0,
      atStake: Math.max(0, invoices.billed),
    },
    state: remarks.state,
    verdict: remarks.verdict,
  };
}

function assessCharge(
  group: Group,
  charge: string,
  facts: OrderFacts | undefined,
  likely: string | undefined,
  remarks: Remarks,
): ReconciledLine {
  const billed = sumCents(group.invoices.map((line) => chargeCents(line, remarks)));
  const papers = listed("invoice", [
    ...new Set(group.invoices.map(({ invoice }) => invoice?.trim() || "without number")),
  ]);
  if (facts === undefined) remarks.query(`${noOrder(group.order)}: ${charge} on ${papers}${isMeant(likely)}`);
  else if (charge === "tax") remarks.note(taxShare(group.invoices, facts, papers, remarks));
  else remarks.query(`${charge} on ${papers} was not on the order`);
  return {
    order: group.order,
    supplier: facts?.supplier ?? "",
    item: group.item,
    unit: "",
    amounts: {
      ordered: 0,
      billed,
      priceDifference: 0,
      toCome: 0,
      atStake: facts !== undefined && charge === "tax" ? 0 : Math.max(0, billed),
    },
    state: remarks.state,
    verdict: remarks.verdict,
  };
}

/** A charge without a quantity stands for itself. */
function chargeCents(line: InvoiceLine, { digits }: Remarks): number {
  return lineCents(line.quantity || 1, line.price ?? 0, undefined, digits);
}

function taxShare(lines: readonly InvoiceLine[], facts: OrderFacts, papers: string, remarks: Remarks): string {
  const goods = sumCents([...new Set(lines.map(({ invoice }) => invoice))].map((invoice) => facts.goodsOn(invoice)));
  const tax = sumCents(lines.map((line) => chargeCents(line, remarks)));
  return goods > 0
    ? `tax on ${papers} is ${clean(Math.round((tax / goods) * 10000) / 100)}% of the goods`
    : `tax on ${papers} stands without goods`;
}

function noOrder(order: string): string {
  return order === "" ? "Names no order" : `There is no order ${order}`;
}

function isMeant(likely: string | undefined): string {
  return likely === undefined ? "" : `; is ${likely} meant?`;
}
