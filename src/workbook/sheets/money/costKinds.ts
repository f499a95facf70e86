import { costKindWord, type CostKind } from "../../../calc/money/costKinds";
import type { UnitSystem } from "../../../calc/quantity/unitSystem";
import type { Category, RateLine } from "../../layout";

const BY_CATEGORY: Readonly<Partial<Record<Category, CostKind>>> = {
  Labor: "labor",
  Equipment: "machine",
  Other: "other",
};

/** The kind of cost of a line of the price list; what is counted in truckloads is hauling. */
export function costKindOf({ cost, category, unit }: RateLine): CostKind {
  return cost ?? BY_CATEGORY[category] ?? (unit === "load" ? "hauling" : "material");
}

const LABELS: Readonly<Partial<Record<CostKind, string>>> = {
  material: "Materials",
  machine: "Machines",
  subcontract: "Subcontractors",
};

/** What the line of a kind of cost is called on Price. */
export function costLabel(kind: CostKind, system: UnitSystem): string {
  const word = costKindWord(kind, system);
  return LABELS[kind] ?? word.slice(0, 1).toUpperCase() + word.slice(1);
}
