import type { UnitSystem } from "../calc/quantity/unitSystem";
import type { CellValue } from "./model";

/** The unit system of a job, from what its workbook holds under the name Units. */
export function unitsHeld(units: readonly (readonly CellValue[])[] | undefined): UnitSystem {
  return units?.[0]?.[0] === "SI" ? "SI" : "US";
}
