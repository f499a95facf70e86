import { serialOf } from "../../calc/quantity/dateSerial";
import type { Book, Product } from "../../book/types";
import type { JobRow } from "../facts";

/** A line of the job's own copy of the prices. */
export type PriceLine = JobRow<"prices">;

/** What the book says of a line today. */
export type PriceField =
  "cost" | "unit" | "pack" | "minimum" | "waste" | "supplier" | "theirs" | "kind" | "taxable" | "day";

/** One line of the job that the book knows better today; nothing is changed before a person has seen it. */
export interface PriceUpdate {
  readonly code: string;
  readonly description: string;
  /** Its place in the job's list, from 0. */
  readonly at: number;
  readonly changes: readonly { readonly field: PriceField; readonly from: unknown; readonly to: unknown }[];
}

/** A product of the book as a line of a job's price list. */
export function priceLine(product: Product): PriceLine {
  const { description, code, unit, price, pack, minimum, waste, supplier, costKind, taxable, day, theirs } = product;
  const serial = serialOf(day);
  return {
    ...{ description, code, unit, pack, minimum, waste, supplier, kind: costKind, theirs },
    ...(price === undefined ? {} : { cost: price }),
    taxable: taxable ? "yes" : "no",
    ...(serial === undefined ? {} : { day: serial }),
  };
}

const FIELDS: readonly PriceField[] = [
  ...(["cost", "unit", "pack", "minimum", "waste", "supplier", "theirs", "kind", "taxable", "day"] as const),
];

/**
 * What would change if a job's prices were brought up to date with the book: of each line that the book has under its
 * code, every field in which they differ. Lines the book does not have stay; a price the book has not asked for changes
 * none; a day alone is no change.
 */
export function refreshed(prices: readonly PriceLine[], book: Book): PriceUpdate[] {
  const products = new Map(book.products.map((product) => [product.code.toLowerCase(), product]));
  return prices.flatMap((line, at): PriceUpdate[] => {
    const product = products.get(line.code?.toLowerCase() ?? "");
    if (!product || product.price === undefined) return [];
    const today = priceLine(product);
    const changes = FIELDS.flatMap((field) => {
      const [from, to] = [line[field], today[field]];
      return same(from, to) ? [] : [{ field, from, to }];
    });
    if (changes.every(({ field }) => field === "day")) return [];
    return [{ code: product.code, description: line.description ?? product.description, at, changes }];
  });
}

/** The job's prices with the updates a person has taken. */
export function takeUpdates(prices: readonly PriceLine[], updates: readonly PriceUpdate[]): PriceLine[] {
  const byLine = new Map(updates.map((update) => [update.at, update]));
  return prices.map((line, at) => {
    const { changes = [] } = byLine.get(at) ?? {};
    return changes.reduce((changed, { field, to }) => ({ ...changed, [field]: to }), line);
  });
}

/** A blank text and nothing are the same, and so are numbers but for binary noise. */
function same(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));
  return (a ?? "") === (b ?? "");
}
