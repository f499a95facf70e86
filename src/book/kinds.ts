/** What a size is measured in: m, m³, or not at all. */
export type SizeMeasure = "length" | "volume";

/** A side of a product that tells it from its neighbors. */
export type Side = "length" | "width" | "height";

/** What a quantity is: pieces, m, m², m³ or kg. */
export type Counted = "pieces" | "length" | "area" | "volume" | "weight";

/** What a product is asked for by, and what the design counts of it. */
export interface KindOfProduct {
  readonly name: string;
  /** The word its code begins with. */
  readonly word: string;
  /** What its one size is, where it has one. */
  readonly size?: { readonly measure: SizeMeasure; readonly words: string };
  /** What its type says, where it has types. */
  readonly type?: string;
  /** The sides it is asked for by, all of them. */
  readonly sides?: readonly Side[];
  readonly counted: Counted;
}

const bore = { measure: "length", words: "nominal size" } as const;
const rollWidth = { measure: "length", words: "roll width" } as const;
const fitting = <const N extends string>(name: N, word: string) =>
  ({ name, word, size: bore, type: "pipe it fits", counted: "pieces" }) as const;
const plain = <const N extends string>(name: N, word: string, counted: Counted) => ({ name, word, counted }) as const;

/**
 * Every kind of product the takeoff can ask for. Sizes, sides and types that a kind has are asked for exactly: the price
 * of another size is nobody's price. A product that leaves one out says that its price holds for all.
 */
export const PRODUCT_KINDS = [
  { name: "pipe", word: "PIPE", size: bore, type: "pipe type", counted: "length" },
  fitting("90 elbow", "FIT-EL90"),
  fitting("90 sweep", "FIT-SW90"),
  fitting("45 elbow", "FIT-EL45"),
  fitting("tee", "FIT-TEE"),
  fitting("ball valve", "FIT-BALL"),
  fitting("check valve", "FIT-CHECK"),
  fitting("union", "FIT-UNION"),
  { name: "spillway box", word: "SPILLBOX", size: { measure: "length", words: "lip width" }, counted: "pieces" },
  { name: "tub", word: "TUB", size: { measure: "volume", words: "volume" }, counted: "pieces" },
  { name: "void module", word: "MODULE", sides: ["length", "width", "height"], counted: "pieces" },
  plain("pump well", "PUMPWELL", "pieces"),
  { name: "liner", word: "LINER", size: rollWidth, type: "sheet", counted: "area" },
  { name: "fabric", word: "FABRIC", size: rollWidth, counted: "area" },
  plain("seam tape", "SEAMTAPE", "length"),
  { name: "gravel", word: "GRAVEL", type: "grade", counted: "weight" },
  { name: "basin stone", word: "BASINSTONE", type: "grade", counted: "weight" },
  {
    name: "boulder",
    word: "BOULDER",
    size: { measure: "length", words: "mean size" },
    type: "rock",
    counted: "weight",
  },
  { name: "lip stone", word: "LIPSTONE", sides: ["length", "width", "height"], type: "rock", counted: "pieces" },
  { name: "cable", word: "CABLE", type: "conductor", counted: "length" },
  plain("stone delivery", "STONEHAUL", "pieces"),
  plain("spoil haul", "SPOIL", "pieces"),
  plain("fill", "FILL", "volume"),
  plain("bedding sand", "BEDDING", "volume"),
  { name: "other", word: "OTHER", counted: "pieces" },
] as const satisfies readonly KindOfProduct[];

export type ProductKind = (typeof PRODUCT_KINDS)[number]["name"];

const byName: ReadonlyMap<string, KindOfProduct> = new Map(PRODUCT_KINDS.map((kind) => [kind.name, kind]));

/** How products of a kind are asked for. */
export function aboutKind(kind: ProductKind): KindOfProduct {
  return byName.get(kind) ?? plain(kind, "OTHER", "pieces");
}

export function isProductKind(text: string): text is ProductKind {
  return byName.has(text);
}
