import type { Product } from "../../src/book/types";

/** A product with what the test cares about; the rest is plain. */
export function product(said: Partial<Product> & Pick<Product, "code" | "kind">): Product {
  return {
    description: said.code,
    unit: "each",
    pack: 1,
    minimum: 0,
    waste: 0,
    freight: 0,
    costKind: "material",
    taxable: true,
    price: 1,
    day: "2026-04-01",
    supplier: "Yard",
    theirs: "",
    invented: false,
    ...said,
  };
}

export const INCH = 0.0254;
export const FOOT = 0.3048;
export const POUND = 0.45359237;
