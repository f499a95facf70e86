import { plain } from "../../problem";
import { CENT_DIGITS, lineCents, sumCents } from "../cents";
import { chargeKind } from "./charges";
import type { Group } from "./group";
import type { OrderLine, ReconciledLine } from "./lines";
import { comparePrices, type PricesCompared } from "./prices";
import { amountOf, Remarks } from "./remarks";
import { clean, unitTurner, type UnitTurner } from "./stoneUnits";
import { tallyDeliveries, tallyInvoices, type BilledLine, type Counted, type InvoiceTally } from "./tally";
import { cheapestOf, TierStock, tiersOf, worthOf, type Tier } from "./tiers";

/** Quantities closer than this share are equal whatever tolerance was asked for: noise of adding up. */
const NOISE = 1e-9;

/**
 * How an item that was ordered stands.
 *
 * @param twin an ordered item whose code differs by spaces, marks or case alone
 * @param digits behind the point of amounts
 */
export function assessOrdered(group: Group, tolerance: number, twin?: string, digits = CENT_DIGITS): ReconciledLine {
  const [first] = group.orders;
  const unit = first?.unit?.trim() || "each";
  const density = group.orders.find((line) => line.density !== undefined)?.density;
  const turner = unitTurner(first?.unit, density);
  const remarks = new Remarks(digits);
  const upTo = (quantity: number): number => quantity + Math.max(tolerance, NOISE) * Math.abs(quantity);
  const order = tallyOrders(group.orders, turner, unit, remarks);
  // Freight and other charges come without a ticket: what was ordered stands for what was delivered.
  const charge = group.deliveries.length === 0 ? chargeKind(group.item) : undefined;
  const isCharge = charge !== undefined;
  const deliveries = isCharge
    ? { total: order.quantity, counted: [] }
    : tallyDeliveries(group.deliveries, turner, unit, remarks);
  const invoices = tallyInvoices(group.invoices, turner, remarks, upTo(deliveries.total));

  const delivered = deliveries.total;
  const invoiced = invoices.total;
  const slack = Math.max(tolerance, NOISE) * Math.max(Math.abs(order.quantity), Math.abs(delivered));
  const outstanding = clean(order.quantity - delivered);
  const unbacked = clean(invoiced - delivered);
  compareQuantities({ isCharge, delivered, invoiced, outstanding, unbacked, slack, unit }, remarks);
  if (!isCharge && delivered > 0) flagEarlyInvoice(invoices.counted, deliveries.counted, slack, remarks);
  const prices = comparePrices(invoices.counted, order.tiers, Math.max(tolerance, NOISE), unit, remarks);
  if (isCharge) remarks.note(`${charge} needs no ticket`);
  if (twin !== undefined) remarks.note(`Differs from ${twin} by spaces or marks alone; is ${twin} meant?`);

  return {
    order: group.order,
    supplier: group.orders.find((line) => line.supplier?.trim())?.supplier?.trim() ?? "",
    item: group.item,
    unit,
    quantities: { ordered: order.quantity, delivered, invoiced },
    amounts: {
      ordered: order.cents,
      billed: invoices.billed,
      priceDifference: prices.difference,
      toCome: outstanding > slack ? worthOf(toCome(order, prices.agreed, delivered, outstanding), digits) : 0,
      atStake: atStake(invoices, prices, Math.min(delivered, order.quantity), slack, digits),
    },
    state: remarks.state,
    verdict: remarks.verdict,
  };
}

/** Billed beyond what was both ordered and delivered, at the ordered prices. */
function atStake(
  { total, billed }: InvoiceTally,
  { agreed, agreedCents }: PricesCompared,
  acceptable: number,
  slack: number,
  digits: number,
): number {
  if (total <= 0 || total <= acceptable + slack) return Math.max(0, billed - agreedCents);
  return Math.max(0, billed - worthOf(cheapestOf(agreed, Math.max(0, acceptable)), digits));
}

/** What has not come at the prices that are left: what came is what was invoiced, and then the cheapest of the rest. */
function toCome(order: Ordered, agreed: readonly Tier[], delivered: number, outstanding: number): Tier[] {
  const stock = new TierStock(order.tiers);
  let came = delivered;
  for (const { price, quantity } of cheapestOf(agreed, Math.max(0, delivered))) {
    const part = Math.min(quantity, stock.left(price), came);
    stock.takeAt(price, part);
    came = clean(came - part);
  }
  if (came > 0) stock.takeCheapest(came);
  return stock.takeDearest(outstanding, order.latestPrice);
}

/** An order as it stands after its changes. */
interface Ordered {
  readonly quantity: number;
  readonly cents: number;
  readonly tiers: readonly Tier[];
  readonly latestPrice: number;
}

/** An order entered again for the same item is a change: its lines add up, and a cut is a line below zero. */
function tallyOrders(lines: readonly OrderLine[], turner: UnitTurner, unit: string, remarks: Remarks): Ordered {
  const turnedLines: Tier[] = [];
  for (const line of lines) {
    const turned = turner.turn(line.quantity, line.unit);
    if (turned === undefined) {
      remarks.query(`Order row ${line.row} not added: ${turner.reason(line.unit ?? "")}`);
      continue;
    }
    const price = turned === 0 ? line.price : clean((line.price * line.quantity) / turned);
    turnedLines.push({ quantity: turned, price });
  }
  const quantity = clean(turnedLines.reduce((sum, line) => sum + line.quantity, 0));
  const distinct = [...new Set(turnedLines.map(({ price }) => price))];
  if (lines.length > 1) {
    const at = distinct.length > 1 ? `, at prices ${distinct.map(plain).join(" and ")}` : "";
    remarks.note(`Order changed: ${lines.length} lines added together make ${amountOf(quantity, unit)}${at}`);
  }
  return {
    quantity,
    cents: sumCents(lines.map((line) => lineCents(line.quantity, line.price, undefined, remarks.digits))),
    tiers: tiersOf(turnedLines),
    latestPrice: turnedLines[turnedLines.length - 1]?.price ?? 0,
  };
}

interface Compared {
  readonly isCharge: boolean;
  readonly delivered: number;
  readonly invoiced: number;
  readonly outstanding: number;
  readonly unbacked: number;
  readonly slack: number;
  readonly unit: string;
}

function compareQuantities(c: Compared, remarks: Remarks): void {
  if (c.isCharge) {
    if (c.invoiced === 0) remarks.wait("Not invoiced yet");
    else if (c.unbacked > c.slack) remarks.query(`${amountOf(c.unbacked, c.unit)} more invoiced than ordered`);
    return;
  }
  if (c.delivered === 0 && c.outstanding > c.slack) {
    if (c.invoiced > 0) remarks.query(`${amountOf(c.invoiced, c.unit)} invoiced before any delivery`);
    else remarks.wait("Nothing delivered yet");
    return;
  }
  if (c.outstanding > c.slack) remarks.wait(`Short: ${amountOf(c.outstanding, c.unit)} still to come`);
  if (c.outstanding < -c.slack) remarks.query(`Over: ${amountOf(-c.outstanding, c.unit)} more delivered than ordered`);
  if (c.unbacked > c.slack) remarks.query(`${amountOf(c.unbacked, c.unit)} invoiced that did not come`);
  if (c.unbacked < -c.slack) remarks.wait(`${amountOf(-c.unbacked, c.unit)} delivered and not invoiced yet`);
}

/** Names the first invoice dated when less had come than was invoiced by then. */
function flagEarlyInvoice(
  billed: readonly BilledLine[],
  delivered: readonly Counted[],
  slack: number,
  remarks: Remarks,
): void {
  const byDay = (a: Counted, b: Counted): number => (a.date ?? 0) - (b.date ?? 0);
  // Tickets without a day are taken as come before every invoice.
  const tickets = [...delivered].sort(byDay);
  let came = 0;
  let asked = 0;
  let next = 0;
  for (const line of [...billed].filter(({ date }) => date !== undefined).sort(byDay)) {
    for (let ticket = tickets[next]; ticket && (ticket.date ?? 0) <= (line.date ?? 0); ticket = tickets[++next]) {
      came += ticket.quantity;
    }
    asked += line.quantity;
    if (asked > came + slack && next < tickets.length) {
      remarks.query(`${line.invoice === "" ? "An invoice" : `Invoice ${line.invoice}`} is dated before its delivery`);
      return;
    }
  }
}
