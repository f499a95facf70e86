import { dateOf, serialOf } from "../../calc/quantity/dateSerial";
import { readSaleUnit } from "../../book/units";
import type { Book, Product } from "../../book/types";
import { isCostKind, type CostKind } from "../../calc/money/costKinds";
import type { Job, JobRow } from "../facts";

/** What a finished job knows that the book does not: each is shown before it is taken. */
export type BookNews =
  | { readonly what: "price"; readonly code: string; readonly from: Product; readonly to: Product }
  | { readonly what: "product"; readonly to: Product };

/** News that cannot be taken as it stands, and why. */
export interface LeftOut {
  readonly name: string;
  readonly reason: string;
}

/**
 * Prices of a job that are newer than the book's, and products the book does not hold: lines that were added to the
 * job's price list, and lines of its own that were typed with a price. An older price never takes the place of a newer.
 */
export function newsForBook(
  job: Job,
  book: Book,
): { readonly news: readonly BookNews[]; readonly left: readonly LeftOut[] } {
  const known = new Map(book.products.map((product) => [product.code.toLowerCase(), product]));
  const news: BookNews[] = [];
  const left: LeftOut[] = [];
  for (const line of job.prices) {
    const { code } = line;
    if (code === undefined || typeof line.cost !== "number") continue;
    const held = known.get(code.toLowerCase());
    const read = held ? changedPrice(held, line) : newProduct(line);
    if (typeof read === "string") left.push({ name: code, reason: read });
    else if (read)
      news.push(held ? { what: "price", code: held.code, from: held, to: read } : { what: "product", to: read });
    if (!held && read && typeof read !== "string") known.set(code.toLowerCase(), read);
  }
  for (const line of job.ownLines) {
    const name = line.code ?? line.description ?? "";
    if (name === "" || typeof line.price !== "number" || known.has(name.toLowerCase())) continue;
    const read = newProduct({ ...ownPrice(line), code: name, cost: line.price });
    if (typeof read === "string") left.push({ name, reason: read });
    else {
      known.set(name.toLowerCase(), read);
      news.push({ what: "product", to: read });
    }
  }
  return { news, left };
}

/** The book with the news a person has taken. */
export function takeNews(book: Book, news: readonly BookNews[]): Book {
  const prices = new Map(news.flatMap((one) => (one.what === "price" ? [[one.from, one.to] as const] : [])));
  const added = news.flatMap((one) => (one.what === "product" ? [one.to] : []));
  return { ...book, products: [...book.products.map((product) => prices.get(product) ?? product), ...added] };
}

function changedPrice(held: Product, line: JobRow<"prices">): Product | string | undefined {
  const { cost, unit, day, supplier } = line;
  if (typeof cost !== "number" || cost === held.price) return undefined;
  if (unit !== undefined && readSaleUnit(unit) !== held.unit) {
    return `is priced by the ${unit} in the job and by the ${held.unit} in the book`;
  }
  const before = serialOf(held.day);
  if (before !== undefined && held.price !== undefined && (day ?? 0) < before) {
    return `its price in the book is newer (${held.day})`;
  }
  return { ...held, price: cost, day: dayOf(day) || held.day, supplier: supplier ?? held.supplier, invented: false };
}

function newProduct(line: JobRow<"prices">): Product | string {
  const { code = "", description, cost, pack, minimum, waste, supplier, kind, taxable, day, theirs } = line;
  const unit = readSaleUnit(line.unit ?? "each");
  if (unit === undefined) return `the unit "${line.unit ?? ""}" is no unit of sale of the book`;
  return {
    ...{ code, description: description ?? code, kind: "other", unit, price: cost ?? undefined },
    ...{ pack: pack ?? 1, minimum: minimum ?? 0, waste: waste ?? 0, freight: 0 },
    ...{ supplier: supplier ?? "", theirs: theirs ?? "", day: dayOf(day) },
    costKind: costKindOf(kind),
    taxable: taxable !== "no",
    invented: false,
  };
}

function ownPrice(line: JobRow<"ownLines">): JobRow<"prices"> {
  const { description, unit, waste, minimum, pack, supplier, kind, taxable } = line;
  const said = { description, unit, waste, minimum, pack, supplier, kind, taxable };
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined && value !== null));
}

function costKindOf(kind: string | undefined): CostKind {
  const word = kind?.toLowerCase() ?? "";
  return isCostKind(word) ? word : "material";
}

function dayOf(serial: number | undefined): string {
  return (serial === undefined ? undefined : dateOf(Math.floor(serial))) ?? "";
}
