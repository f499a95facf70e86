import { shippedBook } from "../../../src/book/shipped";
import type { ProductKind } from "../../../src/book/kinds";
import type { Product } from "../../../src/book/types";
import type { SomeFacts } from "../../../src/workbook/jobCells/typeJob";

/** The nearest product of a kind that the demo's price list holds. */
function nearest(system: "US" | "SI", kind: ProductKind, size: (product: Product) => number, wanted: number): Product {
  const sold = shippedBook(system).products.filter((product) => product.kind === kind);
  const off = (product: Product): number => Math.abs(size(product) - wanted);
  return sold.reduce((best, one) => (off(one) < off(best) ? one : best));
}

/** The same facts in sizes that the price list sells, so that they have a price: as a person would choose them. */
export function asSold(facts: SomeFacts, system: "US" | "SI"): SomeFacts {
  const { moduleLength, lipStoneLength, fabricRollWidth, boxWidth, gravel, basinStone, boulderSizes } = facts;
  const size = (kind: ProductKind, wanted: number): number | undefined =>
    nearest(system, kind, (one) => one.size ?? 0, wanted).size;
  const module = nearest(system, "void module", ({ length = 0 }) => length, moduleLength ?? 0);
  const lip = nearest(system, "lip stone", ({ length = 0 }) => length, lipStoneLength ?? 0);
  const sides = ({ length, width, height }: Product) => [length, width, height] as const;
  const [moduleSides, lipSides] = [sides(module), sides(lip)];
  const grade = <T extends string>(kind: ProductKind, wanted: T | undefined): T | undefined => {
    const sold = shippedBook(system).products.filter((product) => product.kind === kind);
    return wanted === undefined || sold.some(({ type }) => type === wanted) ? wanted : (sold[0]?.type as T);
  };
  return {
    ...facts,
    ...(moduleLength === undefined
      ? {}
      : { moduleLength: moduleSides[0], moduleWidth: moduleSides[1], moduleHeight: moduleSides[2] }),
    ...(lipStoneLength === undefined
      ? {}
      : { lipStoneLength: lipSides[0], lipStoneWidth: lipSides[1], lipStoneHeight: lipSides[2] }),
    ...(fabricRollWidth === undefined ? {} : { fabricRollWidth: size("fabric", fabricRollWidth) }),
    ...(boxWidth === undefined ? {} : { boxWidth: size("spillway box", boxWidth) }),
    ...(gravel === undefined ? {} : { gravel: grade("gravel", gravel) }),
    ...(basinStone === undefined ? {} : { basinStone: grade("basin stone", basinStone) }),
    ...(boulderSizes === undefined
      ? {}
      : {
          boulderSizes: boulderSizes.map((row) =>
            row.size === undefined ? row : { ...row, size: size("boulder", row.size) },
          ),
        }),
  } as SomeFacts;
}
