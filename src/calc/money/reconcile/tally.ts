import { lineCents } from "../cents";
import { codeKey } from "./codes";
import type { DeliveryLine, InvoiceLine } from "./lines";
import { listed, type Remarks } from "./remarks";
import { clean, type UnitTurner } from "./stoneUnits";

/** A quantity that counted, with its day. */
export interface Counted {
  readonly quantity: number;
  readonly date?: number;
}

interface DeliveryTally {
  readonly total: number;
  readonly counted: readonly Counted[];
}

/**
 * Adds the tickets of a group up in the order's unit; what can't be counted becomes a remark. The same quantity under the
 * same ticket number is the same load entered again, however well both would fit the order.
 */
export function tallyDeliveries(
  lines: readonly DeliveryLine[],
  turner: UnitTurner,
  unit: string,
  remarks: Remarks,
): DeliveryTally {
  const counted: Counted[] = [];
  const twice: string[] = [];
  const differing: string[] = [];
  const seen = new Map<string, Set<number>>();
  for (const line of lines) {
    const quantity = countable(line, "Delivery", turner, remarks);
    if (quantity === undefined) continue;
    const ticket = codeKey(line.ticket);
    const before = ticket === "" || lines.length === 1 ? undefined : seen.get(ticket);
    if (before?.has(quantity)) {
      twice.push(line.ticket ?? "");
      continue;
    }
    if (before) {
      differing.push(line.ticket ?? "");
      before.add(quantity);
    } else if (lines.length > 1) seen.set(ticket, new Set([quantity]));
    counted.push({ quantity, date: line.date });
  }
  if (twice.length > 0) {
    remarks.query(`${listed("ticket", [...new Set(twice)])} entered twice; counted once`);
    remarks.query("If it was a second load, give that line a ticket number of its own");
  }
  if (differing.length > 0) {
    remarks.query(`${listed("ticket", [...new Set(differing)])} entered twice with different quantities; both counted`);
  }
  const returned = counted.filter(({ quantity }) => quantity < 0);
  if (returned.length > 0) {
    remarks.note(`${clean(-returned.reduce((sum, { quantity }) => sum + quantity, 0))} ${unit} sent back`);
  }
  const loads = counted.length - returned.length;
  if (loads > 1) remarks.note(`Came in ${loads} deliveries`);
  return { total: clean(counted.reduce((sum, { quantity }) => sum + quantity, 0)), counted };
}

/** An invoice line that repeats another one of the same invoice. */
interface Again {
  readonly sameDay: boolean;
  readonly line: BilledLine;
}

/** Counts repeated lines as further loads while they fit under `most`; gives the invoices of those that do not. */
function takeLoads(again: readonly Again[], counted: BilledLine[], most: number, remarks: Remarks): string[] {
  let total = counted.reduce((sum, { quantity }) => sum + quantity, 0);
  const loads: string[] = [];
  const twice: string[] = [];
  for (const { sameDay, line } of again) {
    if (!sameDay || line.quantity < 0 || clean(total + line.quantity) > most) {
      twice.push(line.invoice);
      continue;
    }
    total += line.quantity;
    counted.push(line);
    loads.push(line.invoice);
  }
  if (loads.length > 0)
    remarks.note(`Equal lines of ${listed("invoice", [...new Set(loads)])} taken for separate loads`);
  return twice;
}

/** An invoice line that counted: goods at their price in the order's unit. */
export interface BilledLine extends Counted {
  /** Quantity and cents as they stand on the paper. */
  readonly written: number;
  readonly cents: number;
  readonly invoice: string;
}

export interface InvoiceTally {
  readonly total: number;
  readonly counted: readonly BilledLine[];
  /** Cents of every line, duplicates and credits included. */
  readonly billed: number;
}

/**
 * Adds the invoices of a group up in the order's unit; duplicates count once but stay in the money billed. Equal lines of
 * one invoice and day are two loads as long as no more is invoiced than came (`most`).
 */
export function tallyInvoices(
  lines: readonly InvoiceLine[],
  turner: UnitTurner,
  remarks: Remarks,
  most: number,
): InvoiceTally {
  const counted: BilledLine[] = [];
  const again: Again[] = [];
  const seen = new Map<string, BilledLine>();
  let billed = 0;
  let credited = 0;
  for (const line of lines) {
    const invoice = line.invoice?.trim() ?? "";
    if (line.price === undefined) {
      remarks.query(`Invoice row ${line.row} has no price; not counted`);
      continue;
    }
    // A negative price is a credit of money alone: no goods move.
    if (line.price < 0 && (line.quantity ?? 1) > 0) {
      const credit = lineCents(line.quantity ?? 1, line.price, undefined, remarks.digits);
      billed += credit;
      credited -= credit;
      remarks.note(`Credit of ${remarks.money(-credit)}${behind(invoice)} counted`);
      continue;
    }
    const cents = line.quantity ? lineCents(line.quantity, line.price, undefined, remarks.digits) : 0;
    billed += cents;
    const quantity = countable(line, "Invoice", turner, remarks);
    if (quantity === undefined || !line.quantity) continue;
    const one = { quantity, written: line.quantity, cents, invoice, date: line.date };
    const key = `${codeKey(invoice)}\n${quantity}\n${cents}`;
    const before = invoice === "" ? undefined : seen.get(key);
    if (before) {
      again.push({ sameDay: before.date === line.date, line: one });
      continue;
    }
    seen.set(key, one);
    if (quantity < 0) remarks.note(`Credit of ${remarks.money(-cents)}${behind(invoice)} counted`);
    counted.push(one);
  }
  const twice = takeLoads(again, counted, most, remarks);
  if (clean(counted.reduce((sum, { quantity }) => sum + quantity, 0)) > most) flagAlike(counted, remarks);
  if (twice.length > 0) remarks.query(`${listed("invoice", twice)} entered twice; pay once`);
  // A price in brackets is often a typing slip or a copied balance: nobody gives back more than was billed.
  if (credited > 0 && billed < 0) {
    remarks.query(
      `Credits of ${remarks.money(credited)} are more than the ${remarks.money(billed + credited)} billed: is a price below zero meant?`,
    );
  }
  return { total: clean(counted.reduce((sum, { quantity }) => sum + quantity, 0)), counted, billed };
}

/** Names invoices of other numbers that ask for the same on the same day. */
function flagAlike(lines: readonly BilledLine[], remarks: Remarks): void {
  const first = new Map<string, string>();
  for (const { invoice, date, quantity, cents } of lines) {
    if (date === undefined || invoice === "") continue;
    const key = `${date}\n${quantity}\n${cents}`;
    const other = first.get(key);
    if (other === undefined) first.set(key, invoice);
    else if (codeKey(other) !== codeKey(invoice)) {
      remarks.query(`Invoices ${other} and ${invoice} ask for the same on one day: is one the other again?`);
    }
  }
}

function countable(
  line: DeliveryLine | InvoiceLine,
  paper: "Delivery" | "Invoice",
  turner: UnitTurner,
  remarks: Remarks,
): number | undefined {
  if (line.quantity === undefined || line.quantity === 0) {
    remarks.query(`${paper} row ${line.row} has no quantity; not counted`);
    return undefined;
  }
  const quantity = turner.turn(line.quantity, line.unit);
  if (quantity === undefined) {
    remarks.query(`${paper} row ${line.row} not counted: ${turner.reason(line.unit ?? "")}`);
  }
  return quantity;
}

function behind(invoice: string): string {
  return invoice === "" ? "" : ` on ${invoice}`;
}
