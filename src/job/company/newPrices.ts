import { serialOf } from "../../calc/quantity/dateSerial";
import { askingCode } from "../../book/ask";
import type { ProductKind } from "../../book/kinds";
import type { Book, Product } from "../../book/types";
import { withSides } from "../../book/sides";
import type { JobRow } from "../facts";
import { takeoffTerms } from "../takeoff/terms";

/** A job's own copy of a book's prices: lines under the codes that the takeoff asks for, and what could not come along. */
export interface NewPrices {
  readonly lines: readonly JobRow<"prices">[];
  readonly left: readonly string[];
}

/** A product beside its line in a job. */
export interface PricedProduct {
  readonly product: Product;
  readonly line: JobRow<"prices">;
}

/** Kinds that a job prices from tables of their own. */
const APART: ReadonlySet<ProductKind> = new Set(["liner"]);

/** Every product of a book for a job, in the units its takeoff counts in, with the day and the mark of its price. */
export function newPrices(book: Book): NewPrices {
  const { priced, left } = pricedProducts(book);
  return { lines: priced.map(({ line }) => line), left };
}

/** Every product of a book beside its line in a job, and those that no job can count. */
export function pricedProducts(book: Book): {
  readonly priced: readonly PricedProduct[];
  readonly left: readonly string[];
} {
  const left: string[] = [];
  const priced = book.products.flatMap((product): PricedProduct[] => {
    if (APART.has(product.kind)) return [];
    const line = lineOf(product, book);
    if (line) return [{ product, line }];
    left.push(
      `${product.code} is sold by the ${product.unit}, and the book does not say what one of it holds or weighs`,
    );
    return [];
  });
  return { priced, left };
}

/** The products of a book by the code that a job asks by, and by their own; of two with one code the first. */
export function byCode(book: Book): ReadonlyMap<string, PricedProduct> {
  const found = new Map<string, PricedProduct>();
  const { priced } = pricedProducts(book);
  const add = (code: string, one: PricedProduct): void => {
    if (code !== "" && !found.has(code.toLowerCase())) found.set(code.toLowerCase(), one);
  };
  for (const one of priced) add(one.line.code ?? "", one);
  for (const one of priced) add(one.product.code, one);
  return found;
}

function lineOf(product: Product, { system }: Book): JobRow<"prices"> | undefined {
  const terms = takeoffTerms(product, system);
  if (!terms) return undefined;
  const { kind, code, day, theirs, invented } = product;
  const serial = serialOf(day);
  return {
    ...terms,
    description: withSides(product, system),
    code: kind === "other" ? code : askingCode(product, system),
    theirs,
    ...(serial === undefined ? {} : { day: serial }),
    ...(invented ? { mark: "invented" } : {}),
  };
}
