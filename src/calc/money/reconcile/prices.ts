import { plain } from "../../problem";
import { fromCents, lineCents } from "../cents";
import { amountOf, listed, type Remarks } from "./remarks";
import { clean } from "./stoneUnits";
import type { BilledLine } from "./tally";
import { TierStock, worthOf, type Tier } from "./tiers";

/** A price turned into another unit is rounded to the cent there; by more than this share it is another price. */
const ROUNDED_PRICE_SHARE = 0.001;

/** What the invoiced goods come to at the ordered prices. */
export interface PricesCompared {
  /** The invoiced quantities at the ordered prices that stand for them. */
  readonly agreed: readonly Tier[];
  readonly agreedCents: number;
  /** Cents invoiced above that. */
  readonly difference: number;
}

interface Matched {
  readonly line: BilledLine;
  readonly parts: readonly Tier[];
  readonly fair: number;
}

/**
 * Holds invoiced goods against the quantities ordered at each price. A line takes its own price while that price has
 * quantity left; anything else takes the cheapest prices that are free: the cheapest reading for the buyer.
 *
 * @param tolerance share by which a line may go beyond the quantity of its price
 */
export function comparePrices(
  billed: readonly BilledLine[],
  tiers: readonly Tier[],
  tolerance: number,
  unit: string,
  remarks: Remarks,
): PricesCompared {
  const [only, ...others] = tiers;
  const matched =
    only === undefined
      ? billed.map((line) => asBilled(line, remarks))
      : others.length === 0
        ? billed.map((line) => matchedBy(line, [{ price: only.price, quantity: line.quantity }], remarks))
        : matchTiers(billed, tiers, tolerance, remarks);
  const rounded: Matched[] = [];
  const wrong: Matched[] = [];
  let agreedCents = 0;
  let difference = 0;
  for (const each of matched) {
    const off = each.line.cents - each.fair;
    agreedCents += each.fair;
    difference += off;
    if (off !== 0) (Math.abs(off) <= roundingOf(each) ? rounded : wrong).push(each);
  }
  sayRounded(rounded, remarks);
  sayWrong(wrong, unit, remarks);
  return { agreed: matched.flatMap(({ parts }) => parts), agreedCents, difference };
}

/** What one of a line costs as billed, in money. */
function priceOf({ cents, quantity }: BilledLine, { digits }: Remarks): number {
  return fromCents(cents, digits) / quantity;
}

/** Without an ordered price there is nothing to hold a line against. */
function asBilled(line: BilledLine, remarks: Remarks): Matched {
  return { line, parts: [{ price: priceOf(line, remarks), quantity: line.quantity }], fair: line.cents };
}

function matchTiers(
  billed: readonly BilledLine[],
  tiers: readonly Tier[],
  tolerance: number,
  remarks: Remarks,
): Matched[] {
  const stock = new TierStock(tiers);
  const matched = new Map<BilledLine, readonly Tier[]>();
  const room = new Map(tiers.map(({ price, quantity }) => [price, tolerance * quantity]));
  const takeAt = (line: BilledLine, price: number): void => {
    stock.takeAt(price, line.quantity);
    matched.set(line, [{ price, quantity: line.quantity }]);
  };
  // Credits first: what they give back may be invoiced again.
  for (const line of billed) if (line.quantity < 0) takeAt(line, nearestPrice(line, tiers, remarks));
  for (const line of billed) {
    if (matched.has(line)) continue;
    const price = nearestPrice(line, tiers, remarks);
    const off = line.cents - lineCents(line.quantity, price, undefined, remarks.digits);
    const own = Math.abs(off) <= roundingOf({ line, fair: line.cents - off });
    if (own && line.quantity <= clean(stock.left(price) + (room.get(price) ?? 0))) takeAt(line, price);
  }
  const left = billed.filter((line) => !matched.has(line)).sort((a, b) => a.cents / a.quantity - b.cents / b.quantity);
  for (const line of left) matched.set(line, stock.takeCheapest(line.quantity));
  return billed.map((line) => matchedBy(line, matched.get(line) ?? [], remarks));
}

function matchedBy(line: BilledLine, parts: readonly Tier[], { digits }: Remarks): Matched {
  return { line, parts, fair: worthOf(parts, digits) };
}

function nearestPrice(line: BilledLine, tiers: readonly Tier[], { digits }: Remarks): number {
  let best = NaN;
  let least = Infinity;
  for (const { price } of tiers) {
    const off = Math.abs(lineCents(line.quantity, price, undefined, digits) - line.cents);
    if (off >= least) continue;
    least = off;
    best = price;
  }
  return best;
}

/** Cents by which a line may be off because its price was turned into another unit: said, and counted all the same. */
function roundingOf({ line, fair }: Pick<Matched, "line" | "fair">): number {
  if (line.quantity === line.written) return 0;
  const halfCents = Math.abs(line.written) / 2;
  // Both amounts are rounded to the cent as well.
  return Math.min(halfCents, ROUNDED_PRICE_SHARE * Math.abs(fair)) + 1;
}

function sayRounded(lines: readonly Matched[], remarks: Remarks): void {
  if (lines.length === 0) return;
  const off = differenceOf(lines);
  const where = listed("invoice", invoicesOf(lines));
  remarks.note(
    `Price in another unit rounded on ${where}: ${remarks.money(Math.abs(off))} ${off < 0 ? "less" : "more"} than ordered`,
  );
}

function sayWrong(lines: readonly Matched[], unit: string, remarks: Remarks): void {
  const [first] = lines;
  if (first === undefined) return;
  const off = differenceOf(lines);
  const where =
    lines.length === 1 ? onePrice(first, unit, remarks) : `Prices differ on ${listed("invoice", invoicesOf(lines))}`;
  if (off > 0) remarks.query(`${where}: ${remarks.money(off)} too much`);
  else remarks.note(`${where}: ${remarks.money(-off)} less than ordered`);
}

function onePrice({ line, parts }: Matched, unit: string, remarks: Remarks): string {
  const price = priceOf(line, remarks);
  const apart = parts.filter(
    (part) => Math.abs(part.price - price) * Math.abs(part.quantity) >= fromCents(0.5, remarks.digits),
  );
  const other = apart.length > 0 ? apart : parts;
  const quantity = clean(other.reduce((sum, part) => sum + part.quantity, 0));
  const share = quantity === line.quantity ? "" : ` for ${amountOf(quantity, unit)}`;
  const instead = other.map((part) => plain(part.price)).join(" and ");
  return `Price ${plain(price)} instead of ${instead} per ${unit}${share}${line.invoice ? ` on ${line.invoice}` : ""}`;
}

function differenceOf(lines: readonly Matched[]): number {
  return lines.reduce((sum, { line, fair }) => sum + line.cents - fair, 0);
}

function invoicesOf(lines: readonly Matched[]): string[] {
  return [...new Set(lines.map(({ line }) => line.invoice || "without number"))];
}
