import { find } from "../../book/choose";
import { askingCode, type Wanted } from "../../book/ask";
import { aboutKind, type ProductKind } from "../../book/kinds";
import type { Product } from "../../book/types";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { USUAL_PIPE } from "../../calc/tables/pipes";
import type { JobRow } from "../facts";
import { tubVolumes } from "../takeoff/asks";
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
    const reason = `Prices of the book for the sizes chosen${job.visitDate === undefined ? "" : ", as they were on their day"}.`;
    if (!products.some(({ invented }) => invented)) return { value, reason };
    return {
      value,
      reason,
      get low() {
        return scaled(0.94);
      },
      get high() {
        return scaled(1.12);
      },
      at: (place: number) => scaled((place < 0 ? 0.94 : 1.12) ** (Math.abs(place) / 1.2816)),
    };
  });
}

const sorted = new WeakMap<readonly Product[], ReadonlyMap<ProductKind, readonly Product[]>>();

/** The product that is wanted, looked for among its kind; a book is sorted out once for all drafts of a range. */
function held(products: readonly Product[], wanted: Wanted): Product | undefined {
  let kinds = sorted.get(products);
  if (!kinds) {
    const all = new Map<ProductKind, Product[]>();
    for (const product of products) all.set(product.kind, [...(all.get(product.kind) ?? []), product]);
    sorted.set(products, (kinds = all));
  }
  return find(kinds.get(wanted.kind) ?? [], wanted);
}

/** The products that the design asks for, each under the code that the takeoff asks by, and what is bought in one size alone. */
function linesOf({ job, system }: Sketch, products: readonly Product[]): JobRow<"prices">[] {
  const { route, riser, basinParts, boulderSizes, rock: type } = job;
  const pipes = [...route, ...riser].filter(({ size }) => size !== undefined);
  const { lipStoneLength, lipStoneWidth, lipStoneHeight, moduleLength, moduleWidth, moduleHeight } = job;
  const wanted: Wanted[] = [
    { kind: "spillway box", size: job.boxWidth },
    ...pipes.map(({ size, type: pipeType = USUAL_PIPE[system] }) => ({ kind: "pipe", size, type: pipeType }) as const),
    { kind: "cable", type: job.cableGauge },
    { kind: "void module", length: moduleLength, width: moduleWidth, height: moduleHeight },
    ...tubVolumes({ basinParts, system }).map((size) => ({ kind: "tub", size }) as const),
    { kind: "fabric", size: job.fabricRollWidth },
    { kind: "gravel", type: job.gravel },
    { kind: "basin stone", type: job.basinStone },
    ...boulderSizes.map(({ size }) => ({ kind: "boulder", size, type }) as const),
    { kind: "lip stone", length: lipStoneLength, width: lipStoneWidth, height: lipStoneHeight, type },
  ];
  const lines = new Map<string, JobRow<"prices">>();
  const add = (code: string, product: Product | undefined): void => {
    const found = product && termsOf(product, system);
    if (found && !lines.has(code)) lines.set(code, { ...found, code });
  };
  for (const one of wanted) add(askingCode(one, system), held(products, one));
  // A fitting is asked for by its size, and is one that fits the pipe it stands on.
  for (const { size, type: pipeType } of pipes) {
    for (const [kind] of FITTINGS)
      add(askingCode({ kind, size }, system), held(products, { kind, size, type: pipeType }));
  }
  const plain = PLAIN.map((kind) => lineOf(aboutKind(kind).word, held(products, { kind }), system));
  return [...lines.values(), PUMP_LINE, ...plain, linerLine(products, system), FREIGHT_LINE];
}

/** What has one line of the price list, whatever its size. */
const PLAIN = ["pump well", "seam tape", "stone delivery", "spoil haul", "fill", "bedding sand"] as const;

/** The pump's price is that of its row among the pumps. */
const PUMP_LINE: JobRow<"prices"> = {
  ...{ code: "PUMP", description: "Pump", unit: "each", pack: 1, minimum: 0, waste: 0 },
  ...{ kind: "material", taxable: "yes" },
};

/** How liner is bought; its rolls have their own prices. */
function linerLine(products: readonly Product[], system: Sketch["system"]): JobRow<"prices"> {
  const any = products.find(({ kind }) => kind === "liner");
  return { ...lineOf("LINER", any, system), cost: undefined };
}

/** A line of the price list under the takeoff's code and unit; without a cost where the book has none for it. */
function lineOf(code: string, product: Product | undefined, system: Sketch["system"]): JobRow<"prices"> {
  return { ...(product && termsOf(product, system)), code };
}

type Terms = ReturnType<typeof takeoffTerms>;
const terms = { US: new WeakMap<Product, Terms>(), SI: new WeakMap<Product, Terms>() } as const;

/** What a product is bought for, worked out once: a range drafts the same book over a hundred times. */
function termsOf(product: Product, system: UnitSystem): Terms {
  const known = terms[system].get(product) ?? takeoffTerms(product, system);
  terms[system].set(product, known);
  return known;
}
