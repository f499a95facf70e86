import type { CostKind } from "../../../calc/money/costKinds";
import type { Category, RateLine } from "../../layout";

const BY_CATEGORY: Readonly<Partial<Record<Category, CostKind>>> = {
  Labour: "labour",
  Equipment: "machine",
  Other: "other",
};

/** The kind of cost of a line of the price list; what is counted in truckloads is haulage. */
export function costKindOf({ cost, category, unit }: RateLine): CostKind {
  return cost ?? BY_CATEGORY[category] ?? (unit === "load" ? "haulage" : "material");
}
