import { exactness, inWords, type Wanted } from "./ask";
import { aboutKind } from "./kinds";
import type { Book, Product, Row } from "./types";

/** What does not fit within a book, at a row of one of its tables and a column of it. */
export interface Fault {
  readonly table: "products" | "pumps" | "machines";
  readonly row: Row;
  readonly key: string;
  /** What is wrong, as the end of a sentence that begins with the cell. */
  readonly words: string;
}

/** What no single cell can tell: products that stand twice, pumps without a curve, machines whose lift cannot be used. */
export function checkBook(book: Book): Fault[] {
  return [...repeatedCodes(book), ...repeatedProducts(book), ...sizeless(book), ...pumps(book), ...machines(book)];
}

function repeatedCodes({ products }: Book): Fault[] {
  return repeated(products, ({ code }) => code.toLowerCase()).map(([row, first]) => ({
    table: "products",
    row,
    key: "code",
    words: `holds the code ${row.code} a second time; it stands ${place(first)} already`,
  }));
}

/** Two products of the same kind, type and size with codes of their own: nobody could say which price is meant. */
function repeatedProducts({ products, system }: Book): Fault[] {
  const coded = new Set(repeatedCodesOf(products));
  const ofSale = products.filter((product) => !coded.has(product) && product.kind !== "other");
  return repeated(ofSale, identity).map(([row, first]) => ({
    table: "products",
    row,
    key: "kind",
    words: `is a second ${inWords(row, system)}: ${first.code} stands ${place(first)}, and only one of them can be bought; take one out or tell them apart by type`,
  }));
}

function repeatedCodesOf(products: readonly Product[]): Product[] {
  return repeated(products, ({ code }) => code.toLowerCase()).map(([row]) => row);
}

function identity(product: Product): string {
  const { size, sides = [], type } = aboutKind(product.kind);
  const rounded = (value: number | undefined): string => value?.toPrecision(5) ?? "any";
  return [
    product.kind,
    size ? rounded(product.size) : "",
    ...sides.map((side) => rounded(product[side])),
    type === undefined ? "" : (product.type?.toLowerCase() ?? "any"),
  ].join("|");
}

/** A pipe without a size would be the price of every size. */
function sizeless({ products }: Book): Fault[] {
  const needsSize = new Set<Wanted["kind"]>(["pipe", "tub", "void module"]);
  return products
    .filter((product) => needsSize.has(product.kind) && exactness(product) === 0)
    .map((row) => ({ table: "products", row, key: "size", words: `is blank: a ${row.kind} is priced by its size` }));
}

function pumps({ pumps: held }: Book): Fault[] {
  const twice = repeated(held, ({ name }) => name.toLowerCase()).map(([row, first]): Fault => ({
    table: "pumps",
    row,
    key: "name",
    words: `holds the name ${row.name} a second time; it stands ${place(first)} already`,
  }));
  const short = held
    .filter(({ curve }) => curve.length < 2)
    .map((row): Fault => ({
      table: "pumps",
      row,
      key: "shutOff",
      words: `belongs to a curve of ${row.curve.length} points: give the head at no flow and one point more, or the pump cannot be chosen`,
    }));
  return [...twice, ...short];
}

function machines({ machines: held }: Book): Fault[] {
  return held
    .filter(({ lift = 0, reach, width }) => lift > 0 && (reach === undefined || width === undefined))
    .map((row) => ({
      table: "machines",
      row,
      key: row.reach === undefined ? "reach" : "width",
      words: `is blank: ${row.name} is not chosen for a stone before ${row.reach === undefined ? "the reach of its lift" : "the way it needs"} is known`,
    }));
}

/** Rows whose key stands before, with the row that has it first. */
function repeated<R extends Row>(rows: readonly R[], keyOf: (row: R) => string): [row: R, first: R][] {
  const firsts = new Map<string, R>();
  return rows.flatMap((row): [R, R][] => {
    const key = keyOf(row);
    const first = firsts.get(key);
    if (first) return [[row, first]];
    firsts.set(key, row);
    return [];
  });
}

function place({ row }: Row): string {
  return row === undefined ? "above" : `in row ${row}`;
}
