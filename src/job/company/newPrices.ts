import { serialOf } from "../../calc/quantity/dateSerial";
import { askingCode } from "../../book/ask";
import type { ProductKind } from "../../book/kinds";
import type { Book, Product } from "../../book/types";
import type { JobRow } from "../facts";
import { takeoffTerms } from "../takeoff/terms";

/** A job's own copy of a book's prices: lines under the codes that the takeoff asks for, and what could not come along. */
export interface NewPrices {
  readonly lines: readonly JobRow<"prices">[];
  readonly left: readonly string[];
}

/** Kinds that a job prices from tables of their own. */
const APART: ReadonlySet<ProductKind> = new Set(["liner"]);

/** Every product of a book for a job, in the units its takeoff counts in, with the day and the mark of its price. */
export function newPrices(book: Book): NewPrices {
  const left: string[] = [];
  const lines = book.products.flatMap((product): JobRow<"prices">[] => {
    if (APART.has(product.kind)) return [];
    const line = lineOf(product, book);
    if (line) return [line];
    left.push(
      `${product.code} is sold by the ${product.unit}, and the book does not say what one of it holds or weighs`,
    );
    return [];
  });
  return { lines, left };
}

function lineOf(product: Product, { system }: Book): JobRow<"prices"> | undefined {
  const terms = takeoffTerms(product, system);
  if (!terms) return undefined;
  const { kind, code, day, theirs, invented } = product;
  const serial = serialOf(day);
  return {
    ...terms,
    code: kind === "other" ? code : askingCode(product, system),
    theirs,
    ...(serial === undefined ? {} : { day: serial }),
    ...(invented ? { mark: "invented" } : {}),
  };
}
