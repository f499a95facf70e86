import { askingCode, type Wanted } from "../../book/ask";
import type { ProductKind } from "../../book/kinds";
import { orderQuantity } from "../../calc/money/orderQuantity";
import { USUAL_PIPE } from "../../calc/tables/pipes";
import type { Job, JobRow } from "../facts";
import { attempt, isKnown, type Derived } from "../derived";
import { total } from "../rows";

/** One product that a line of the takeoff needs: how much of the line it is, and the codes it is looked for by, the most exact first. */
export interface Ask {
  /** Pieces, or a share of the line: only the ratio counts. */
  readonly count: number;
  readonly codes: readonly string[];
}

/** Codes of a product: with its type first, then without, where the price holds for every type. */
export function codesOf(wanted: Wanted, system: Job["system"]): string[] {
  const { type, ...any } = wanted;
  const exact = askingCode(wanted, system);
  return type === undefined ? [exact] : [exact, askingCode(any, system)];
}

/** A pipe of the route or a riser, by size and type. */
export function pipeAsk({ system }: Job, pipe: JobRow<"route">, times = 1): Ask[] {
  const { size, length = 0, type = USUAL_PIPE[system] } = pipe;
  const count = length * times;
  return size === undefined ? [] : [{ count, codes: [askingCode({ kind: "pipe", size, type }, system)] }];
}

/** The fittings of a kind on every pipe, each of the pipe's size: those for its type, else those that fit any. */
export function fittingAsks(job: Job, kind: ProductKind, on: (pipe: JobRow<"route">) => number): Ask[] {
  const pipes = [...job.route.map((pipe) => ({ pipe, times: 1 })), ...risersOf(job)];
  return pipes.map(({ pipe, times }) => {
    const { size, type = USUAL_PIPE[job.system] } = pipe;
    const count = on(pipe) * times;
    // Of what there is none nobody looks for a price.
    return { count, codes: size === undefined || count === 0 ? [] : codesOf({ kind, size, type }, job.system) };
  });
}

function risersOf({ riser, pumpCount = 0 }: Job): { pipe: JobRow<"riser">; times: number }[] {
  return riser.map((pipe) => ({ pipe, times: pumpCount }));
}

/** One product of a kind; none while its size is not known. */
export function oneAsk(
  job: Pick<Job, "system">,
  wanted: { readonly [K in keyof Wanted]: Wanted[K] | undefined },
): Ask[] {
  const said = Object.entries(wanted);
  if (said.some(([, value]) => value === undefined)) return [];
  return [{ count: 1, codes: codesOf(wanted as Wanted, job.system) }];
}

/** Cable, by its gauge alone. */
export function cableAsk({ system, cableLength = 0, cableGauge: type }: Job): Ask[] {
  return type === undefined ? [] : [{ count: cableLength, codes: [askingCode({ kind: "cable", type }, system)] }];
}

/** Boulders, by the shares of their sizes. */
export function boulderAsks(job: Job): Ask[] {
  return job.boulderSizes.map(({ size, share = 0 }) => ({
    count: size === undefined ? 0 : share,
    codes: size === undefined ? [] : codesOf({ kind: "boulder", size, ...typed(job.rock) }, job.system),
  }));
}

/** Tubs, by what they hold. */
export function tubAsks(job: Job): Ask[] {
  return tubVolumes(job).map((size) => ({
    count: 1,
    codes: size === undefined ? [] : [askingCode({ kind: "tub", size }, job.system)],
  }));
}

/** What each tub of the basin holds, in whole gallons or liters, as they are sold; m³. */
export function tubVolumes({ basinParts, system }: Pick<Job, "basinParts" | "system">): (number | undefined)[] {
  const unit = system === "US" ? 231 * 0.0254 ** 3 : 0.001;
  return basinParts
    .filter(({ kind }) => kind === "tub")
    .map(({ length, width, depth, voids = 1 }) => {
      const known = length !== undefined && width !== undefined && depth !== undefined;
      return known ? Math.round((length * width * depth * voids) / unit) * unit : undefined;
    });
}

function typed(type: string | undefined): { type: string } | Record<string, never> {
  return type === undefined ? {} : { type };
}

type Prices = ReadonlyMap<string, JobRow<"prices">>;

/** A product that a line asks for, with its line of the price list where that holds one. */
export interface Found extends Ask {
  readonly code: string;
  readonly listed: JobRow<"prices"> | undefined;
}

/** What a line asks for, looked up in the price list; of what there is nothing it asks for none. */
export function foundIn(asks: readonly Ask[], prices: Prices): Found[] {
  return asks
    .filter(({ count }) => count > 0)
    .map((ask) => {
      const code = ask.codes.find((one) => prices.has(one.toLowerCase()))?.toLowerCase() ?? "";
      return { ...ask, code, listed: prices.get(code) };
    });
}

/**
 * How much is bought of a line that stands for several products: each in packs of its own, since what is left over of one
 * size is of no use for another. What the list does not hold counts as it is, to the next piece. Undefined where nothing
 * is asked for by size.
 *
 * @param need of the whole line, in place
 */
export function askedOrder(found: readonly Found[], need: number): number | undefined {
  return found.length === 0 ? undefined : total(ordersOf(found, need));
}

function ordersOf(found: readonly Found[], need: number): number[] {
  const counted = total(found.map(({ count }) => count));
  return found.map(({ count, listed: { waste = 0, minimum = 0, pack = 0 } = {} }) =>
    orderQuantity((need * count) / counted, waste, pack > 0 ? pack : 1, minimum),
  );
}

/**
 * What one unit of a line costs: the mean of its products' prices, by how much is bought of each, or while nobody knows
 * the need, by how much there is; unknown while one of them has no price of its own.
 */
export function askedPrice(found: readonly Found[], need: Derived<number>): Derived<number> {
  if (found.length === 0 || !found.every(({ listed }) => isKnown(listed?.cost ?? undefined))) return undefined;
  return attempt(() => {
    const weights = isKnown(need) && need > 0 ? ordersOf(found, need) : found.map(({ count }) => count);
    return total(found.map(({ listed }, index) => (listed?.cost ?? 0) * (weights[index] ?? 0))) / total(weights);
  });
}

/** How the products of a line are bought. */
export interface AskedTerms {
  readonly waste: number;
  readonly minimum: number;
  readonly pack: number;
  readonly supplier: string | undefined;
  readonly kind: string;
  readonly taxable: string;
  readonly freight: number;
}

/**
 * The terms of all products of a line together, as they are shown: the mean waste by how much there is of each, every
 * minimum, the largest pack, and freight once for a product that no line before has brought.
 *
 * @param brought codes whose freight is paid already; those of this line are added
 */
export function askedTerms(needed: readonly Found[], brought: Set<string>): AskedTerms {
  const found = needed.flatMap(({ count, code, listed: line }) => (line ? [{ count, code, line }] : []));
  const counted = total(needed.map(({ count }) => count));
  const first = (key: "supplier" | "kind" | "taxable"): string | undefined =>
    found.map(({ line }) => line[key]).find((word) => word !== undefined && word !== "");
  const pack = Math.max(0, ...found.map(({ line }) => line.pack ?? 0));
  const freight = found.map(({ code, line }) => {
    if (brought.has(code)) return 0;
    brought.add(code);
    return line.freight ?? 0;
  });
  return {
    waste: counted === 0 ? 0 : total(found.map(({ count, line }) => count * (line.waste ?? 0))) / counted,
    minimum: total(found.map(({ line }) => line.minimum ?? 0)),
    pack: pack > 0 ? pack : 1,
    supplier: first("supplier"),
    kind: first("kind") ?? "material",
    taxable: first("taxable") ?? "yes",
    freight: total(freight),
  };
}
