import { readCostKind, type CostKind } from "../../calc/money/costKinds";
import { orderQuantity } from "../../calc/money/orderQuantity";
import { Problem } from "../../calc/problem";
import type { Job, JobRow } from "../facts";
import { roundingOf } from "../money";
import { attempt, isKnown, known, derive, type Derived } from "../derived";
import { total } from "../rows";
import { askedOrder, askedPrice, askedTerms, foundIn } from "./asks";
import type { Need } from "./lines";
import { FREIGHT_LINE } from "./terms";

/** A line of the takeoff: what is needed, what is bought, and what it costs. */
export interface TakeoffLine {
  /** What it is called, where it is the user's own. */
  readonly what?: string | undefined;
  readonly code: string | undefined;
  readonly unit: string | undefined;
  readonly need: Derived<number>;
  /** Need with waste, at least the minimum, in whole packs. */
  readonly order: Derived<number>;
  /** Of one unit. */
  readonly price: number | undefined;
  readonly cost: Derived<number>;
  /** For bringing the order; it is priced on a line of its own. */
  readonly freight: Derived<number>;
  readonly kind: string | undefined;
  readonly supplier: string | undefined;
  readonly taxable: string | undefined;
  /** What was ordered of it already. */
  readonly ordered: number;
  /** What is to be looked at; "" where nothing is. */
  readonly look: "" | "no quantity" | "no terms" | "no cost" | "no cost kind" | "ordered short";
}

export interface Takeoff {
  readonly designLines: readonly TakeoffLine[];
  readonly ownLines: readonly TakeoffLine[];
  /** Both. */
  readonly lines: readonly TakeoffLine[];
  readonly total: Derived<number>;
}

/** How a line is bought. */
type Terms = Pick<TakeoffLine, "what" | "price" | "kind" | "supplier" | "taxable" | "unit"> & {
  readonly waste: number | undefined;
  readonly minimum: number | undefined;
  readonly pack: number | undefined;
  readonly freight: number;
  /** How much to buy for a need, where a line stands for several products that are bought each on its own terms. */
  readonly orderFor?: ((need: number) => number | undefined) | undefined;
};

/** How many digits below the unit of money the price of one unit keeps. */
const PRICE_DIGITS = 1e4;

export function deriveTakeoff(job: Job, needs: readonly Need[]): Takeoff {
  const prices = pricesByCode(job);
  const brought = new Set<string>();
  const ofDesign = needs.map((need) => designLine(job, need, prices, brought));
  const ownLines = job.ownLines.map((line) => ownLine(job, line, prices, needs));
  const designLines = [...ofDesign, freightLine(job, prices, [...ofDesign, ...ownLines])];
  const lines = [...designLines, ...ownLines];
  const anyCost = lines.some(({ cost }) => isKnown(cost));
  return { designLines, ownLines, lines, total: anyCost ? costOf(job, lines) : undefined };
}

/** What some lines cost. */
export function costOf(job: Job, lines: readonly TakeoffLine[]): number {
  return roundingOf(job)(total(lines.map(({ cost }) => known(cost) ?? 0)));
}

type Prices = ReadonlyMap<string, JobRow<"prices">>;

/** The first line of the price list under each code; letter case does not matter. */
function pricesByCode({ prices }: Job): Prices {
  const byCode = new Map<string, JobRow<"prices">>();
  for (const line of prices) {
    const key = line.code?.toLowerCase();
    if (key !== undefined && !byCode.has(key)) byCode.set(key, line);
  }
  return byCode;
}

/** All freight, once there is any. */
function freightLine(job: Job, prices: Prices, lines: readonly TakeoffLine[]): TakeoffLine {
  const freight = derive(
    lines.map((line) => line.freight ?? 0),
    (...each) => total(each),
  );
  const quantity = derive([freight], (all) => (all > 0 ? 1 : 0));
  return designLine(job, { code: FREIGHT_LINE.code, quantity, price: known(freight) || undefined }, prices, new Set());
}

function designLine(
  job: Job,
  { code, quantity, price, asks }: Need,
  prices: Prices,
  brought: Set<string>,
): TakeoffLine {
  const listed = prices.get(code.toLowerCase()) ?? {};
  const found = asks && foundIn(asks, prices);
  const terms = found && askedTerms(found, brought);
  const isOwn = listed.cost !== undefined && listed.cost !== null;
  const bySize =
    found && [listed.waste, listed.minimum, listed.pack].every((typed) => typed === undefined) ? found : undefined;
  const asked = found ? known(askedPrice(found, quantity)) : price;
  const cost = listed.cost === undefined ? asked : (listed.cost ?? undefined);
  return lineOf(job, code, quantity, true, {
    unit: listed.unit,
    orderFor: bySize && ((need) => askedOrder(bySize, need)),
    waste: listed.waste ?? terms?.waste,
    minimum: listed.minimum ?? terms?.minimum,
    pack: listed.pack ?? terms?.pack,
    freight: code === FREIGHT_LINE.code ? 0 : (listed.freight ?? (isOwn ? 0 : (terms?.freight ?? 0))),
    price: cost === undefined ? undefined : Math.round(Number((cost * PRICE_DIGITS).toPrecision(15))) / PRICE_DIGITS,
    kind: listed.kind ?? terms?.kind,
    supplier: listed.supplier ?? terms?.supplier,
    taxable: listed.taxable ?? terms?.taxable,
  });
}

/** A line of the user's own: what is blank in it comes from the price list, under its code. */
function ownLine(job: Job, line: JobRow<"ownLines">, prices: Prices, needs: readonly Need[]): TakeoffLine {
  const { code, need } = line;
  const listed = code === undefined ? {} : (prices.get(code.toLowerCase()) ?? {});
  const known = code !== undefined || need !== undefined;
  const said = [line.description, code, need, line.price].some((value) => value !== undefined);
  /** What was typed, else what the list says; where it says nothing, or zero, what stands for it. */
  const found = <T>(typed: T | undefined, inList: T | undefined, otherwise: T | undefined): T | undefined => {
    if (typed !== undefined) return typed;
    return known ? inList || otherwise : undefined;
  };
  const designPrice = needs.find((one) => one.code.toLowerCase() === code?.toLowerCase())?.price;
  const cost = listed.cost === undefined ? designPrice : (listed.cost ?? undefined);
  return lineOf(job, code, need, said, {
    what: found(line.description, listed.description, undefined),
    unit: found(line.unit, listed.unit, undefined),
    freight: listed.freight ?? 0,
    waste: found(line.waste, listed.waste, 0),
    minimum: found(line.minimum, listed.minimum, 0),
    pack: found(line.pack, listed.pack, 1),
    price: found(line.price, cost, undefined),
    kind: found<string>(line.kind, listed.kind, "material"),
    supplier: found(line.supplier, listed.supplier, undefined),
    taxable: found<string>(line.taxable, listed.taxable, "yes"),
  });
}

/** @param said whether the line says anything at all */
function lineOf(
  job: Job,
  code: string | undefined,
  quantity: Derived<number>,
  said: boolean,
  terms: Terms,
): TakeoffLine {
  const { what, waste, minimum, pack, price, freight, kind, supplier, taxable, unit, orderFor } = terms;
  const order = derive([quantity], (need) =>
    need <= 0
      ? 0
      : waste === undefined || minimum === undefined || pack === undefined
        ? undefined
        : (orderFor?.(need) ?? orderQuantity(need, waste, pack > 0 ? pack : 1, minimum)),
  );
  const cost = derive([order, price], (amount, each) => roundingOf(job)(amount * each));
  const ordered = orderedOf(job, code, unit);
  return {
    what,
    code,
    unit,
    need: quantity,
    order,
    price,
    cost,
    freight: derive([order], (amount) => (amount > 0 ? freight : 0)),
    kind,
    supplier,
    taxable,
    ordered,
    look: said ? lookAt({ need: quantity, order, cost, kind, taxable, ordered }) : "",
  };
}

function orderedOf({ orders }: Job, code: string | undefined, unit: string | undefined): number {
  if (code === undefined) return 0;
  const same = (a: string | undefined, b: string | undefined): boolean =>
    (a ?? "").toLowerCase() === (b ?? "").toLowerCase();
  return total(
    orders.flatMap(({ item, unit: per, quantity = 0 }) => (same(item, code) && same(per, unit) ? [quantity] : [])),
  );
}

function lookAt({
  need,
  order,
  cost,
  kind,
  taxable,
  ordered,
}: Pick<TakeoffLine, "need" | "order" | "cost" | "kind" | "taxable" | "ordered">): TakeoffLine["look"] {
  // What is in error is named by its cell.
  if (need instanceof Problem || order instanceof Problem || cost instanceof Problem) return "";
  if (need === undefined) return "no quantity";
  if (need <= 0) return "";
  if (order === undefined || !["yes", "no"].includes(taxable?.toLowerCase() ?? "")) return "no terms";
  if (cost === undefined || cost === 0) return "no cost";
  if (readCostKind(kind ?? "") === undefined) return "no cost kind";
  return ordered > 0 && ordered < order ? "ordered short" : "";
}

/** What the lines of a cost kind come to. */
export function costOfKind(job: Job, { lines }: Takeoff, kind: CostKind): Derived<number> {
  return attempt(() =>
    costOf(
      job,
      lines.filter((line) => readCostKind(line.kind ?? "") === kind),
    ),
  );
}
