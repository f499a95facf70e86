import { find } from "../../book/choose";
import type { Wanted } from "../../book/ask";
import { aboutKind, type ProductKind } from "../../book/kinds";
import type { Product } from "../../book/types";
import type { JobRow } from "../facts";
import { total } from "../rows";
import { FITTINGS } from "../takeoff/fittings";
import { FREIGHT_LINE, takeoffTerms } from "../takeoff/terms";
import type { Sketch } from "./sketch";

/** The price list of this job: of every line the product of the size that the design asks for. */
export function pricesRule(sketch: Sketch): void {
  const { products } = sketch.offers;
  if (!products) return;
  const { job } = sketch;
  sketch.assume("prices", () => {
    const value = linesOf(sketch, products);
    const scaled = (factor: number): JobRow<"prices">[] =>
      value.map((line) => (typeof line.cost === "number" ? { ...line, cost: line.cost * factor } : line));
    return {
      value,
      reason: `Prices of the book for the sizes chosen${job.visitDate === undefined ? "" : ", as they were on their day"}.`,
      ...(products.some(({ invented }) => invented)
        ? {
            low: scaled(0.94),
            high: scaled(1.12),
            at: (place: number) => scaled((place < 0 ? 0.94 : 1.12) ** (Math.abs(place) / 1.2816)),
          }
        : {}),
    };
  });
}

function linesOf({ job, system }: Sketch, products: readonly Product[]): JobRow<"prices">[] {
  const line = (code: string, wanted: Wanted): JobRow<"prices"> => lineOf(code, find(products, wanted), system);
  const lip = Math.max(0, ...job.lips.map(({ width = 0 }) => width));
  const boxes = products
    .filter(({ kind, size }) => kind === "spillway box" && size !== undefined)
    .sort((a, b) => (a.size ?? 0) - (b.size ?? 0));
  const box = boxes.find(({ size = 0 }) => size >= lip - 1e-6) ?? boxes[boxes.length - 1];
  const [route] = job.route;
  const [riser] = job.riser;
  const sized = (pipe: JobRow<"route"> | undefined, kind: ProductKind): Wanted => ({
    kind,
    size: pipe?.size,
    type: pipe?.type,
  });
  const fitted = riser ?? route;
  const part = job.basinParts[0];
  const isTub = (tub: Product): boolean =>
    tub.kind === "tub" && same(tub.length, part?.length) && same(tub.width, part?.width);
  const tub = part?.kind === "pump well" ? products.find(isTub) : undefined;
  return [
    lineOf("SPILLBOX", box, system),
    {
      code: "PUMP",
      description: "Pump",
      unit: "each",
      pack: 1,
      minimum: 0,
      waste: 0,
      kind: "material",
      taxable: "yes",
    },
    ...[0, 1, 2, 3].flatMap((row) => (job.route[row] ? [line(`PIPE-${row + 1}`, sized(job.route[row], "pipe"))] : [])),
    ...(riser ? [line("RISER", sized(riser, "pipe"))] : []),
    ...FITTINGS.map(([kind]) => line(aboutKind(kind).word, sized(fitted, kind))),
    line("CABLE", { kind: "cable", type: job.cableGauge }),
    line("MODULE", { kind: "void module", length: job.moduleLength, width: job.moduleWidth, height: job.moduleHeight }),
    tub ? lineOf("PUMPWELL", tub, system) : line("PUMPWELL", { kind: "pump well" }),
    {
      ...lineOf(
        "LINER",
        products.find(({ kind }) => kind === "liner"),
        system,
      ),
      cost: undefined,
    },
    line("FABRIC", { kind: "fabric", size: job.fabricRollWidth }),
    line("SEAMTAPE", { kind: "seam tape" }),
    line("GRAVEL", { kind: "gravel", type: job.gravel }),
    line("BASINSTONE", { kind: "basin stone", type: job.basinStone }),
    boulderLine({ job, system }, products),
    line("LIPSTONE", {
      kind: "lip stone",
      length: job.lipStoneLength,
      width: job.lipStoneWidth,
      height: job.lipStoneHeight,
      type: job.rock,
    }),
    line("STONEHAUL", { kind: "stone delivery" }),
    line("SPOIL", { kind: "spoil haul" }),
    line("FILL", { kind: "fill" }),
    line("BEDDING", { kind: "bedding sand" }),
    FREIGHT_LINE,
  ];
}

function same(a: number | undefined, b: number | undefined): boolean {
  return a !== undefined && b !== undefined && Math.abs(a - b) < 1e-6;
}

/** Boulders are bought as a mix: its price is that of its sizes by their shares. */
function boulderLine({ job, system }: Pick<Sketch, "job" | "system">, products: readonly Product[]): JobRow<"prices"> {
  const found = job.boulderSizes.map(({ size, share = 0 }) => ({
    share,
    line: lineOf("BOULDER", find(products, { kind: "boulder", size }), system),
  }));
  const first = found[0]?.line ?? lineOf("BOULDER", undefined, system);
  const costs = found.map(({ line: { cost }, share }) => (typeof cost === "number" ? cost * share : undefined));
  const isComplete = costs.every((cost) => cost !== undefined);
  return { ...first, description: "Boulders, mixed sizes", cost: isComplete ? total(costs as number[]) : undefined };
}

/** A line of the price list under the takeoff's code and unit; without a cost where the book has none for it. */
function lineOf(code: string, product: Product | undefined, system: Sketch["system"]): JobRow<"prices"> {
  return { ...(product && takeoffTerms(product, system)), code };
}
