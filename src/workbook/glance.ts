import type { Kind } from "./layout";

/** The job in a dozen numbers, by the names that hold them: on Start, and printed by the command. */
export const GLANCE: readonly { readonly name: string; readonly label: string; readonly kind: Kind }[] = [
  { name: "DesignFlow", label: "Design flow", kind: "flow" },
  { name: "DesignHead", label: "Total dynamic head", kind: "head" },
  { name: "PumpName", label: "Pump", kind: "text" },
  { name: "DeliveredFlow", label: "Flow the pump delivers", kind: "flow" },
  { name: "DrainBack", label: "Drain-back when the pump stops", kind: "water" },
  { name: "BasinHold", label: "Water the basin holds", kind: "water" },
  { name: "LinerBuyArea", label: "Liner to buy", kind: "area" },
  { name: "GravelTons", label: "Gravel", kind: "load" },
  { name: "BoulderTons", label: "Boulders", kind: "load" },
  { name: "TotalCost", label: "Cost", kind: "money" },
  { name: "PriceTotal", label: "Price with tax", kind: "money" },
];
