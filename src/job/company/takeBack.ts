import { dateOf, serialOf } from "../../calc/quantity/dateSerial";
import { readSaleUnit } from "../../book/units";
import type { Book, Product } from "../../book/types";
import { readCostKind, type CostKind } from "../../calc/money/costKinds";
import type { Job, JobRow } from "../facts";
import { byCode, type PricedProduct } from "./newPrices";
import type { PriceLine } from "./refresh";
import { takeoffUnit } from "../takeoff/terms";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Wanted } from "../../book/ask";
import { wantedByCode } from "../../book/fromCode";
import { sidesIn } from "../../book/sides";

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
 * job's price list, and lines of its own that were typed with a price. An older price never takes the place of a newer,
 * and what is still marked invented is nobody's news.
 */
export function newsForBook(
  job: Pick<Job, "prices" | "ownLines">,
  book: Book,
): { readonly news: readonly BookNews[]; readonly left: readonly LeftOut[] } {
  const known = new Map(
    book.products.map((product) => [product.code.toLowerCase(), undefined as PricedProduct | undefined]),
  );
  for (const [code, priced] of byCode(book)) known.set(code, priced);
  const news: BookNews[] = [];
  const left: LeftOut[] = [];
  const add = (name: string, line: PriceLine): void => {
    const read = newProduct(line, book.system);
    if (typeof read === "string") left.push({ name, reason: read });
    else news.push({ what: "product", to: read });
    known.set(name.toLowerCase(), undefined);
  };
  for (const line of job.prices) {
    const { code } = line;
    if (code === undefined || typeof line.cost !== "number" || isMarked(line)) continue;
    const key = code.toLowerCase();
    if (!known.has(key)) {
      add(code, line);
      continue;
    }
    const held = known.get(key);
    const read = held && changedPrice(held, line, book.system);
    if (typeof read === "string") left.push({ name: code, reason: read });
    else if (held && read) news.push({ what: "price", code: held.product.code, from: held.product, to: read });
  }
  // A line of its own that is looked up takes its price from the list, where it was news already or is marked.
  const listed = new Set(job.prices.map(({ code = "" }) => code.toLowerCase()));
  for (const line of job.ownLines) {
    const name = line.code ?? line.description ?? "";
    const key = name.toLowerCase();
    if (name === "" || typeof line.price !== "number" || known.has(key) || listed.has(key)) continue;
    add(name, { ...ownPrice(line), code: name, cost: line.price });
  }
  return { news, left };
}

function isMarked({ mark }: PriceLine): boolean {
  return (mark ?? "").trim() !== "";
}

/** The price of one unit of sale, from that of one unit of the takeoff. */
function changedPrice(
  { product, line: today }: PricedProduct,
  line: PriceLine,
  system: UnitSystem,
): Product | string | undefined {
  const { cost, unit, day, supplier } = line;
  if (typeof cost !== "number") return undefined;
  if (unit !== undefined && unit !== today.unit && readSaleUnit(unit) !== today.unit) {
    return `is priced by the ${unit} in the job and by the ${today.unit ?? product.unit} in the book`;
  }
  if (typeof today.cost === "number" && Math.abs(cost - today.cost) <= 1e-9 * Math.max(1, cost)) return undefined;
  const before = serialOf(product.day);
  if (before !== undefined && product.price !== undefined && (day ?? 0) < before) {
    return `its price in the book is newer (${product.day})`;
  }
  const price = Number((cost / (takeoffUnit(product, system)?.each ?? 1)).toPrecision(10));
  return { ...product, price, day: dayOf(day) || product.day, supplier: supplier ?? product.supplier, invented: false };
}

function newProduct(line: PriceLine, system: UnitSystem): Product | string {
  const { code = "", description, cost, pack, minimum, waste, supplier, kind, taxable, day, theirs, freight } = line;
  const unit = readSaleUnit(line.unit ?? "each");
  const wanted: Wanted = wantedByCode(code, system) ?? { kind: "other" };
  if (unit === undefined) return `the unit "${line.unit ?? ""}" is no unit of sale of the book`;
  return {
    ...wanted,
    ...(wanted.kind === "tub" ? sidesIn(description ?? "") : {}),
    ...{ code, description: description ?? code, unit, price: cost ?? undefined },
    ...{ pack: pack ?? 1, minimum: minimum ?? 0, waste: waste ?? 0, freight: freight ?? 0 },
    ...{ supplier: supplier ?? "", theirs: theirs ?? "", day: dayOf(day) },
    costKind: costKindOf(kind),
    taxable: taxable !== "no",
    invented: false,
  };
}

function ownPrice(line: JobRow<"ownLines">): PriceLine {
  const { description, unit, waste, minimum, pack, supplier, kind, taxable } = line;
  const said = { description, unit, waste, minimum, pack, supplier, kind, taxable };
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined && value !== null));
}

function costKindOf(kind: string | undefined): CostKind {
  return readCostKind(kind ?? "") ?? "material";
}

function dayOf(serial: number | undefined): string {
  return (serial === undefined ? undefined : dateOf(Math.floor(serial))) ?? "";
}
