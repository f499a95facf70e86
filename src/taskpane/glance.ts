import { readUnitSystem } from "../calc/quantity/unitSystem";
import type { Grid, Place } from "../host/port";
import { GLANCE } from "../workbook/glance";
import { unitOf } from "../workbook/layout/formats";

/** One number of the job, as it is shown. */
export interface Glance {
  readonly label: string;
  readonly text: string;
  readonly name: string;
}

/** The names that `readGlance` needs, in its order. */
export const GLANCE_PLACES: readonly Place[] = ["Units", "Currency", ...GLANCE.map(({ name }) => name)];

/** The job in a dozen numbers; nothing where the workbook is none of ours. */
export function readGlance(grids: readonly (Grid | undefined)[]): readonly Glance[] {
  const [units, currency, ...values] = grids.map((grid) => grid?.[0]?.[0]);
  if (units !== "US" && units !== "SI") return [];
  const system = readUnitSystem(units);
  return GLANCE.flatMap(({ name, label, kind }, index) => {
    const value = values[index];
    if (value === undefined) return [];
    const unit = kind === "money" ? String(currency ?? "") : unitOf(kind, system);
    const decimals = kind === "money" ? 2 : 0;
    const shown =
      typeof value === "number"
        ? value.toLocaleString("en-US", { minimumFractionDigits: decimals, maximumFractionDigits: 2 })
        : String(value);
    return [{ name, label, text: shown === "" ? "to fill" : `${shown} ${unit}`.trim() }];
  });
}
