import { roundCents } from "../calc/money/cents";
import { orderQuantity } from "../calc/money/orderQuantity";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { exactness, fits, inWords, sizeWords, type Wanted } from "./ask";
import { aboutKind, type Counted, type ProductKind } from "./kinds";
import type { Product } from "./types";
import { aboutUnit } from "./units";

/** How much is needed in place, by what it can be counted in: pieces, m, m², m³, kg. */
export type Amounts = Readonly<Partial<Record<Counted, number>>>;

/** A product for a need, or what is missing, in a sentence. Money. */
export type Choice =
  | {
      readonly product: Product;
      /** In units of sale: needed in place, and bought with waste, minimum and packs. */
      readonly need: number;
      readonly order: number;
      /** For the order, freight apart. */
      readonly cost: number;
      readonly freight: number;
      /** Of what is bought, kg; undefined where the book does not say what one unit weighs. */
      readonly weight: number | undefined;
    }
  | { readonly missing: string; readonly product?: Product };

/**
 * The product of a kind, size and type, with what must be bought of it and what that costs. Another size is never taken
 * in its place. Of two that fit, the one that says more exactly what it is; of two alike, the one with a price.
 *
 * @param amounts how much is needed; more than one measure where the design knows them, for the unit of sale to choose
 */
export function choose(products: readonly Product[], wanted: Wanted, amounts: Amounts, system: UnitSystem): Choice {
  const product = find(products, wanted);
  if (!product) return { missing: notHeld(products, wanted, system) };
  const need = inUnitsOf(product, amounts);
  if (need === undefined) return { missing: notConvertible(product), product };
  if (product.price === undefined) return { missing: `${product.code} has no price`, product };
  const order = orderQuantity(need, product.waste, product.pack > 0 ? product.pack : 1, product.minimum);
  return {
    product,
    need,
    order,
    cost: roundCents(order * product.price),
    freight: order > 0 ? product.freight : 0,
    weight: weightOf(product, order),
  };
}

/** The product that is wanted; undefined where the book holds none. */
export function find(products: readonly Product[], wanted: Wanted): Product | undefined {
  const found = products.filter((product) => fits(product, wanted));
  const rank = (product: Product): number => 2 * exactness(product) + (product.price === undefined ? 0 : 1);
  return found.reduce<Product | undefined>((best, one) => (best && rank(best) >= rank(one) ? best : one), undefined);
}

/** All of a kind and type that have a price, the smallest first: for designs that may choose the size. */
export function offers(products: readonly Product[], kind: ProductKind, type?: string): Product[] {
  const any = (product: Product): boolean =>
    product.price !== undefined &&
    product.kind === kind &&
    (type === undefined || product.type === undefined || product.type.toLowerCase() === type.toLowerCase());
  return products.filter(any).sort((a, b) => bulk(a) - bulk(b));
}

function bulk({ size, length = 1, width = 1, height = 1 }: Product): number {
  return size ?? length * width * height;
}

/** A need in the units a product is sold in; undefined where that cannot be known. */
export function inUnitsOf(product: Product, amounts: Amounts): number | undefined {
  const { counts, inside } = aboutUnit(product.unit);
  const direct = amounts[counts];
  if (direct !== undefined) return plainly(direct / inside);
  // What the design only weighs is sold by volume, by the bag or by the pallet: the book says what one weighs.
  if (amounts.weight !== undefined && product.weight) return plainly(amounts.weight / product.weight);
  const { area } = amounts;
  if (area === undefined) return undefined;
  // A sheet by the roll, or by its length off the roll.
  if (counts === "length" && product.size) return plainly(area / product.size / inside);
  if (counts === "pieces" && product.size && product.length) return plainly(area / (product.size * product.length));
  return undefined;
}

/** Without the noise of the last binary digits, which a conversion leaves behind. */
function plainly(quantity: number): number {
  return Number(quantity.toPrecision(14));
}

function weightOf({ unit, weight }: Product, order: number): number | undefined {
  const { counts, inside } = aboutUnit(unit);
  if (counts === "weight") return order * inside;
  return weight === undefined ? undefined : order * weight;
}

function notConvertible({ code, unit, kind }: Product): string {
  const { counted } = aboutKind(kind);
  const missing = counted === "area" ? "the width and length of a roll" : "what one weighs";
  return `${code} is sold by the ${unit}: the book must say ${missing}`;
}

/** How many sizes a sentence lists. */
const LISTED = 6;

function notHeld(products: readonly Product[], wanted: Wanted, system: UnitSystem): string {
  const ofKind = products.filter(({ kind }) => kind === wanted.kind);
  if (ofKind.length === 0) return `the book holds no ${wanted.kind}`;
  const asked = `the book holds no ${inWords(wanted, system)}`;
  const ofType = ofKind.filter((product) => wanted.type === undefined || sameWord(product.type, wanted.type));
  const sizes = [...new Set(ofType.map((product) => sizeWords(product, system)).filter((words) => words !== ""))];
  if (sizes.length === 0) return asked;
  const more = sizes.length > LISTED ? " and others" : "";
  return `${asked}; it has ${sizes.slice(0, LISTED).join(", ")}${more}`;
}

function sameWord(a: string | undefined, b: string): boolean {
  return a === undefined || a.toLowerCase() === b.toLowerCase();
}
