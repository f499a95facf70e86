/** What a size is measured in: m, m³, or not at all. */
export type SizeMeasure = "length" | "volume";

/** A side of a product that tells it from its neighbors. */
export type Side = "length" | "width" | "height";

/** What a product is asked for by, and what the design counts of it. */
interface KindOfProduct {
  readonly name: string;
  /** What its one size is, where it has one. */
  readonly size?: { readonly measure: SizeMeasure; readonly words: string };
  /** What its type says, where it has types; a product without one fits every type. */
  readonly type?: string;
  /** The sides it is asked for by, all of them. */
  readonly sides?: readonly Side[];
  /** What the design needs of it: pieces, m, m², m³ or kg. */
  readonly counted: Counted;
}

/** What a quantity is: pieces, m, m², m³ or kg. */
export type Counted = "pieces" | "length" | "area" | "volume" | "weight";

const bore = { measure: "length", words: "nominal size" } as const;
const fitting = (name: string): KindOfProduct => ({ name, size: bore, type: "pipe it fits", counted: "pieces" });
const haul = (name: string): KindOfProduct => ({ name, counted: "pieces" });

/**
 * Every kind of product the takeoff can ask for. Sizes and sides that a kind names are asked for exactly: the price of
 * another size is nobody's price.
 */
export const PRODUCT_KINDS = [
  { name: "pipe", size: bore, type: "pipe type", counted: "length" },
  fitting("90 elbow"),
  fitting("90 sweep"),
  fitting("45 elbow"),
  fitting("tee"),
  fitting("ball valve"),
  fitting("check valve"),
  fitting("union"),
  { name: "spillway box", size: { measure: "length", words: "lip width" }, counted: "pieces" },
  { name: "tub", size: { measure: "volume", words: "volume" }, counted: "pieces" },
  { name: "void module", sides: ["length", "width", "height"], counted: "pieces" },
  { name: "pump well", sides: ["length", "height"], counted: "pieces" },
  { name: "liner", size: { measure: "length", words: "roll width" }, type: "sheet", counted: "area" },
  { name: "fabric", size: { measure: "length", words: "roll width" }, type: "mass by area", counted: "area" },
  { name: "seam tape", counted: "length" },
  { name: "gravel", size: { measure: "length", words: "stone size" }, type: "grade", counted: "weight" },
  { name: "boulder", size: { measure: "length", words: "mean size" }, type: "rock", counted: "weight" },
  { name: "lip stone", sides: ["length", "width", "height"], type: "rock", counted: "pieces" },
  { name: "cable", type: "conductor", counted: "length" },
  haul("stone delivery"),
  haul("spoil haul"),
  { name: "fill", counted: "volume" },
  { name: "pipe bedding", counted: "volume" },
  { name: "other", type: "type", counted: "pieces" },
] as const satisfies readonly KindOfProduct[];

export type ProductKind = (typeof PRODUCT_KINDS)[number]["name"];

const byName: ReadonlyMap<string, KindOfProduct> = new Map(PRODUCT_KINDS.map((kind) => [kind.name, kind]));

/** How products of a kind are asked for. */
export function aboutKind(kind: ProductKind): KindOfProduct {
  return byName.get(kind) ?? { name: kind, counted: "pieces" };
}

export function isProductKind(text: string): text is ProductKind {
  return byName.has(text);
}
