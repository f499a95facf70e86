import { lineCents } from "../cents";
import type { DeliveryLine, InvoiceLine } from "./lines";
import { codeKey } from "./group";
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

/** Adds the tickets of a group up in the order's unit; what can't be counted becomes a remark. */
export function tallyDeliveries(
  lines: readonly DeliveryLine[],
  turner: UnitTurner,
  unit: string,
  remarks: Remarks,
): DeliveryTally {
  const counted: Counted[] = [];
  const twice: string[] = [];
  const differing: string[] = [];
  const seen = new Map<string, number>();
  for (const line of lines) {
    const quantity = countable(line, "Delivery", turner, remarks);
    if (quantity === undefined) continue;
    const ticket = codeKey(line.ticket);
    const before = ticket === "" ? undefined : seen.get(ticket);
    if (before === quantity) {
      twice.push(line.ticket ?? "");
      continue;
    }
    if (before !== undefined) differing.push(line.ticket ?? "");
    seen.set(ticket, quantity);
    counted.push({ quantity, date: line.date });
  }
  if (twice.length > 0) remarks.query(`${listed("ticket", twice)} entered twice; counted once`);
  if (differing.length > 0) {
    remarks.query(`${listed("ticket", differing)} entered twice with different quantities; both counted`);
  }
  const returned = counted.filter(({ quantity }) => quantity < 0);
  if (returned.length > 0) {
    remarks.note(`${clean(-returned.reduce((sum, { quantity }) => sum + quantity, 0))} ${unit} sent back`);
  }
  const loads = counted.length - returned.length;
  if (loads > 1) remarks.note(`Came in ${loads} deliveries`);
  return { total: clean(counted.reduce((sum, { quantity }) => sum + quantity, 0)), counted };
}

/** An invoice line that counted: goods at their price in the order's unit. */
export interface BilledLine extends Counted {
  /** Quantity and cents as they stand on the paper. */
  readonly written: number;
  readonly writtenPrice: number;
  readonly cents: number;
  readonly invoice: string;
}

export interface InvoiceTally {
  readonly total: number;
  readonly counted: readonly BilledLine[];
  /** Cents of every line, duplicates and credits included. */
  readonly billed: number;
}

/** Adds the invoices of a group up in the order's unit; duplicates count once but stay in the money billed. */
export function tallyInvoices(lines: readonly InvoiceLine[], turner: UnitTurner, remarks: Remarks): InvoiceTally {
  const counted: BilledLine[] = [];
  const twice: string[] = [];
  const seen = new Set<string>();
  let billed = 0;
  for (const line of lines) {
    const invoice = line.invoice?.trim() ?? "";
    if (line.price === undefined) {
      remarks.query(`Invoice row ${line.row} has no price; not counted`);
      continue;
    }
    // A negative price is a credit of money alone: no goods move.
    if (line.price < 0 && (line.quantity ?? 1) > 0) {
      billed += lineCents(line.quantity ?? 1, line.price);
      remarks.note(`Credit of ${(-line.price * (line.quantity ?? 1)).toFixed(2)}${behind(invoice)} counted`);
      continue;
    }
    const cents = line.quantity ? lineCents(line.quantity, line.price) : 0;
    billed += cents;
    const quantity = countable(line, "Invoice", turner, remarks);
    if (quantity === undefined || !line.quantity) continue;
    const key = `${codeKey(invoice)}\n${quantity}\n${cents}`;
    if (invoice !== "" && seen.has(key)) {
      twice.push(invoice);
      continue;
    }
    seen.add(key);
    if (quantity < 0) remarks.note(`Credit of ${(-cents / 100).toFixed(2)}${behind(invoice)} counted`);
    counted.push({ quantity, written: line.quantity, writtenPrice: line.price, cents, invoice, date: line.date });
  }
  if (twice.length > 0) remarks.query(`${listed("invoice", twice)} entered twice; pay once`);
  return { total: clean(counted.reduce((sum, { quantity }) => sum + quantity, 0)), counted, billed };
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
