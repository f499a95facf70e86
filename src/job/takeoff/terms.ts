import { inUnitsOf } from "../../book/choose";
import { aboutKind } from "../../book/kinds";
import type { Product } from "../../book/types";
import { aboutUnit, type SaleUnit } from "../../book/units";
import { costKindWord } from "../../calc/money/costKinds";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { JobRow } from "../facts";

/** The line that all freight comes to, and how it is bought: once, whole. */
export const FREIGHT_LINE = {
  ...{ code: "FREIGHT", description: "Freight of all lines", unit: "job" },
  ...{ pack: 1, minimum: 0, waste: 0, kind: "hauling", taxable: "yes" },
} as const satisfies JobRow<"prices">;

/** The unit the takeoff counts in. */
const TAKEOFF_UNITS = {
  US: { pieces: "each", length: "ft", area: "ft²", volume: "yd³", weight: "ton" },
  SI: { pieces: "each", length: "m", area: "m²", volume: "m³", weight: "t" },
} as const satisfies Record<string, Record<string, SaleUnit>>;

/** The unit the takeoff counts a product in, and how many units of sale one of it is; undefined where that is unknown. */
export function takeoffUnit(
  product: Product,
  system: UnitSystem,
): { readonly unit: SaleUnit; readonly each: number } | undefined {
  const { counted } = aboutKind(product.kind);
  const isOwn = product.kind === "other" || product.unit === "load";
  const unit: SaleUnit = isOwn ? product.unit : TAKEOFF_UNITS[system][counted];
  const each = unit === product.unit ? 1 : inUnitsOf(product, { [counted]: aboutUnit(unit).inside });
  return each === undefined || !(each > 0) ? undefined : { unit, each };
}

/**
 * What a product is bought for under a line of the takeoff, in the unit the takeoff counts in; undefined where the book
 * does not say what one unit of sale holds or weighs.
 */
export function takeoffTerms(product: Product, system: UnitSystem): JobRow<"prices"> | undefined {
  const counted = takeoffUnit(product, system);
  if (!counted) return undefined;
  const { unit, each } = counted;
  const { description, price, pack, minimum, waste, supplier, costKind, taxable, freight } = product;
  return {
    ...{ description, unit },
    ...(price === undefined ? {} : { cost: digits(price * each) }),
    ...{
      pack: digits(pack / each),
      minimum: digits(minimum / each),
      waste,
      supplier,
      kind: costKindWord(costKind, system),
    },
    taxable: taxable ? "yes" : "no",
    ...(freight > 0 ? { freight } : {}),
  };
}

function digits(value: number): number {
  return Number(value.toPrecision(10));
}
