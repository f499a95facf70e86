import type { Wanted } from "../../book/ask";
import { wantedByCode } from "../../book/fromCode";
import type { ProductKind } from "../../book/kinds";
import { sidesIn } from "../../book/sides";
import { fromInside, type Measure } from "../../calc/quantity/measures";
import { PIPE_TYPES, USUAL_PIPE } from "../../calc/tables/pipes";
import type { Job } from "../facts";
import { oneAsk } from "../takeoff/asks";
import type { Offers, OfferedPipe, OfferedTub } from "./offers";
import { asOffer } from "./works";

/** Sizes of the usual pipe that are tried, m. */
const SIZES = { least: 0.03, most: 0.17 } as const;

/** Lines of the price list that a basin is made of, and what they are counted in. */
const LINES: Partial<Record<ProductKind, readonly [string, Measure?]>> = {
  "stone delivery": ["STONEHAUL"],
  "spoil haul": ["SPOIL"],
  "bedding sand": ["BEDDING", "earth"],
  fabric: ["FABRIC", "area"],
  "basin stone": ["BASINSTONE", "load"],
  gravel: ["GRAVEL", "load"],
  "pump well": ["PUMPWELL"],
};

/** What a job's own tables offer, where there is no book: its pumps, rolls, machine and price list. */
export function offersOfJob(job: Partial<Job> & Pick<Job, "system">): Offers {
  const { moduleLength, moduleWidth, moduleHeight, machineWidth, machineLift } = job;
  const price = (code: string): number | undefined =>
    job.prices?.find((line) => line.code?.toLowerCase() === code.toLowerCase())?.cost ?? undefined;
  /** A line's own price, else that of the product it asks for. */
  const asked = (line: string, wanted: { readonly [K in keyof Wanted]: Wanted[K] | undefined }): number | undefined =>
    price(line) ??
    oneAsk(job, wanted)[0]
      ?.codes.map(price)
      .find((cost) => cost !== undefined);
  const module = asked("MODULE", {
    kind: "void module",
    length: moduleLength,
    width: moduleWidth,
    height: moduleHeight,
  });
  const inside = (kind: ProductKind): number => {
    const [code, measure] = LINES[kind] ?? [];
    if (code === undefined) return 0;
    const found = asked(code, { kind, ...wantedOf(kind, job) }) ?? 0;
    return found * (measure ? fromInside(measure, 1, job.system) : 1);
  };
  const meter = (size: number): number | undefined => {
    const cost = asked("PIPE-1", { kind: "pipe", size, type: USUAL_PIPE[job.system] });
    return cost === undefined ? undefined : cost * fromInside("length", 1, job.system);
  };
  return {
    pumps: (job.pumps ?? []).flatMap(asOffer),
    pipes: usualPipes(job.system, meter),
    modules:
      moduleLength === undefined || moduleWidth === undefined || moduleHeight === undefined || module === undefined
        ? []
        : [{ length: moduleLength, width: moduleWidth, height: moduleHeight, price: module }],
    tubs: tubsOf(job),
    lipStones: [],
    boxes: [],
    boulders: [],
    rolls: (job.rolls ?? []).flatMap(({ width, price: asked, per = "length", longest = Infinity }) =>
      width === undefined || asked === undefined
        ? []
        : [{ width, price: per === "roll" ? asked : asked * fromInside(per, 1, job.system), per, longest }],
    ),
    machines:
      machineWidth === undefined || machineLift === undefined
        ? []
        : [{ name: "the usual machine", width: machineWidth, lift: machineLift, usual: true, digs: true }],
    price: inside,
    linerArea: cheapest(job),
  };
}

/** Tubs of the price list whose descriptions name their sides; what a tub holds is in its code. */
function tubsOf({ prices = [], system }: Partial<Job> & Pick<Job, "system">): OfferedTub[] {
  return prices.flatMap(({ code = "", description = code, cost, freight = 0 }) => {
    const wanted = wantedByCode(code, system);
    const sides = sidesIn(description);
    if (wanted?.kind !== "tub" || wanted.size === undefined || !sides || typeof cost !== "number") return [];
    return [{ ...sides, volume: wanted.size, price: cost + freight, name: description }];
  });
}

/** What of a kind is asked for beside the kind itself. */
function wantedOf(
  kind: ProductKind,
  job: Partial<Job>,
): Partial<{ readonly [K in keyof Wanted]: Wanted[K] | undefined }> {
  if (kind === "gravel") return { type: job.gravel };
  if (kind === "basin stone") return { type: job.basinStone };
  return kind === "fabric" ? { size: job.fabricRollWidth } : {};
}

/** The usual pipe in the sizes a stream takes that have a price for a meter; all of them, as if free, where none has. */
function usualPipes(system: Job["system"], meter: (size: number) => number | undefined): OfferedPipe[] {
  const type = PIPE_TYPES.find(({ name }) => name === USUAL_PIPE[system]);
  const sizes = (type?.sizes ?? [])
    .map(({ nominal }) => nominal)
    .filter((size) => size >= SIZES.least && size <= SIZES.most);
  const offer = (size: number, price: number): OfferedPipe => ({ size, type: USUAL_PIPE[system], price });
  const priced = sizes.flatMap((size) => {
    const price = meter(size);
    return price === undefined ? [] : [offer(size, price)];
  });
  return priced.length > 0 ? priced : sizes.map((size) => offer(size, 0));
}

/** Money for a m² off the cheapest roll. */
function cheapest({ rolls = [], system }: Partial<Job> & Pick<Job, "system">): number {
  const each = rolls.flatMap(({ width = 0, price = 0, per, longest = 30 }) => {
    if (!(width > 0)) return [];
    if (per === "area") return [price * fromInside("area", 1, system)];
    return [per === "roll" ? price / (width * longest) : (price * fromInside("length", 1, system)) / width];
  });
  return each.length > 0 ? Math.min(...each) : 0;
}
