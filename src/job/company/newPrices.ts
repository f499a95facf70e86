import { serialOf } from "../../calc/quantity/dateSerial";
import { askingCode } from "../../book/ask";
import { inUnitsOf } from "../../book/choose";
import { aboutKind, type ProductKind } from "../../book/kinds";
import type { Book, Product } from "../../book/types";
import { aboutUnit, type SaleUnit } from "../../book/units";
import type { JobRow } from "../facts";

/** A job's own copy of a book's prices: lines under the codes that the takeoff asks for, and what could not come along. */
export interface NewPrices {
  readonly lines: readonly JobRow<"prices">[];
  readonly left: readonly string[];
}

/** The unit the takeoff counts in. */
const TAKEOFF_UNITS = {
  US: { pieces: "each", length: "ft", area: "ft²", volume: "yd³", weight: "ton" },
  SI: { pieces: "each", length: "m", area: "m²", volume: "m³", weight: "t" },
} as const satisfies Record<string, Record<string, SaleUnit>>;

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
  const { counted } = aboutKind(product.kind);
  const isOwn = product.kind === "other" || product.unit === "load";
  const unit: SaleUnit = isOwn ? product.unit : TAKEOFF_UNITS[system][counted];
  // How many units of sale one unit of the takeoff is.
  const each = unit === product.unit ? 1 : inUnitsOf(product, { [counted]: aboutUnit(unit).inside });
  if (each === undefined || !(each > 0)) return undefined;
  const { description, price, pack, minimum, waste, supplier, costKind, taxable, day, theirs, invented } = product;
  const serial = serialOf(day);
  return {
    ...{ description, code: product.kind === "other" ? product.code : askingCode(product, system), unit },
    ...(price === undefined ? {} : { cost: digits(price * each) }),
    ...{ pack: digits(pack / each), minimum: digits(minimum / each), waste, supplier, kind: costKind },
    ...{ taxable: taxable ? "yes" : "no", theirs },
    ...(serial === undefined ? {} : { day: serial }),
    ...(invented ? { mark: "invented" } : {}),
  };
}

function digits(value: number): number {
  return Number(value.toPrecision(10));
}
