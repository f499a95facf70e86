import { plain } from "../../problem";
import { lineCents, sumCents } from "../cents";
import { chargeKind, type Group } from "./group";
import type { OrderLine, ReconciledLine } from "./lines";
import { amountOf, listed, money, Remarks } from "./remarks";
import { clean, unitTurner, type UnitTurner } from "./stoneUnits";
import { tallyDeliveries, tallyInvoices, type BilledLine, type Counted, type InvoiceTally } from "./tally";

/** Quantities closer than this share are equal whatever tolerance was asked for: noise of adding up. */
const NOISE = 1e-9;

/** How an item that was ordered stands. */
export function assessOrdered(group: Group, tolerance: number): ReconciledLine {
  const [first] = group.orders;
  const unit = first?.unit?.trim() || "each";
  const density = group.orders.find((line) => line.density !== undefined)?.density;
  const turner = unitTurner(first?.unit, density);
  const remarks = new Remarks();
  const upTo = (quantity: number): number => quantity + Math.max(tolerance, NOISE) * Math.abs(quantity);
  const order = tallyOrders(group.orders, turner, unit, remarks);
  // Freight and other charges come without a ticket: what was ordered stands for what was delivered.
  const isCharge = chargeKind(group.item) !== undefined && group.deliveries.length === 0;
  const deliveries = isCharge
    ? { total: order.quantity, counted: [] }
    : tallyDeliveries(group.deliveries, turner, unit, remarks, upTo(order.quantity));
  const invoices = tallyInvoices(group.invoices, turner, remarks, upTo(deliveries.total));

  const delivered = deliveries.total;
  const invoiced = invoices.total;
  const slack = Math.max(tolerance, NOISE) * Math.max(Math.abs(order.quantity), Math.abs(delivered));
  const outstanding = clean(order.quantity - delivered);
  const unbacked = clean(invoiced - delivered);
  compareQuantities({ isCharge, delivered, invoiced, outstanding, unbacked, slack, unit }, remarks);
  if (!isCharge && delivered > 0) flagEarlyInvoice(invoices.counted, deliveries.counted, slack, remarks);
  const { agreed, difference } = comparePrices(invoices.counted, order.prices, unit, remarks);

  return {
    order: group.order,
    supplier: group.orders.find((line) => line.supplier?.trim())?.supplier?.trim() ?? "",
    item: group.item,
    unit,
    quantities: { ordered: order.quantity, delivered, invoiced },
    amounts: {
      ordered: order.cents,
      billed: invoices.billed,
      priceDifference: difference,
      toCome: outstanding > slack ? lineCents(outstanding, order.latestPrice) : 0,
      atStake: atStake(invoices, agreed, Math.min(delivered, order.quantity), slack),
    },
    state: remarks.state,
    verdict: remarks.verdict,
  };
}

/** Billed beyond what was both ordered and delivered, at the ordered price. */
function atStake(invoices: InvoiceTally, agreed: number, acceptable: number, slack: number): number {
  const { total, billed } = invoices;
  if (total <= 0 || total <= acceptable + slack) return Math.max(0, billed - agreed);
  return Math.max(0, billed - Math.round(agreed * (Math.max(0, acceptable) / total)));
}

/** An order entered again for the same item is a change: its lines add up, and a cut is a line below zero. */
function tallyOrders(
  lines: readonly OrderLine[],
  turner: UnitTurner,
  unit: string,
  remarks: Remarks,
): { quantity: number; cents: number; prices: number[]; latestPrice: number } {
  let quantity = 0;
  const prices: number[] = [];
  for (const line of lines) {
    const turned = turner.turn(line.quantity, line.unit);
    if (turned === undefined) {
      remarks.query(`Order row ${line.row} not added: ${turner.reason(line.unit ?? "")}`);
      continue;
    }
    quantity += turned;
    prices.push(turned === 0 ? line.price : clean((line.price * line.quantity) / turned));
  }
  quantity = clean(quantity);
  const distinct = [...new Set(prices)];
  if (lines.length > 1) {
    const at = distinct.length > 1 ? `, at prices ${distinct.map(plain).join(" and ")}` : "";
    remarks.note(`Order changed: ${lines.length} lines added together make ${amountOf(quantity, unit)}${at}`);
  }
  return {
    quantity,
    cents: sumCents(lines.map((line) => lineCents(line.quantity, line.price))),
    prices: distinct,
    latestPrice: prices[prices.length - 1] ?? 0,
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

/** What the invoiced goods come to at the ordered prices, and how far the invoices are off; in cents. */
function comparePrices(
  billed: readonly BilledLine[],
  prices: readonly number[],
  unit: string,
  remarks: Remarks,
): { agreed: number; difference: number } {
  let agreed = 0;
  let difference = 0;
  const wrong: BilledLine[] = [];
  for (const line of billed) {
    const nearest = prices
      .map((price) => lineCents(line.quantity, price))
      .reduce((best, each) => (Math.abs(each - line.cents) < Math.abs(best - line.cents) ? each : best), Infinity);
    const fair = Number.isFinite(nearest) ? nearest : line.cents;
    // A price turned into another unit is itself rounded to the cent, and so are both amounts.
    const allowance = line.quantity === line.written ? 0 : Math.abs(line.written) / 2 + 1;
    if (Math.abs(line.cents - fair) <= allowance) {
      agreed += line.cents;
      continue;
    }
    agreed += fair;
    difference += line.cents - fair;
    wrong.push(line);
  }
  const [only] = wrong;
  if (only === undefined) return { agreed, difference };
  const where =
    wrong.length === 1
      ? `Price ${plain(only.cents / 100 / only.quantity)} instead of ${prices.map(plain).join(" or ")} per ${unit}${only.invoice ? ` on ${only.invoice}` : ""}`
      : `Prices differ on ${listed("invoice", [...new Set(wrong.map(({ invoice }) => invoice || "without number"))])}`;
  if (difference > 0) remarks.query(`${where}: ${money(difference)} too much`);
  else remarks.note(`${where}: ${money(-difference)} less than ordered`);
  return { agreed, difference };
}
