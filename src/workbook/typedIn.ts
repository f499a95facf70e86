import { fromInside, type Measure } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import type { CellValue } from "./model";

/** An SI value as it is typed, without the noise of the conversion; "" where it is not known. */
export function typedIn(measure: Measure, inside: number | undefined, system: UnitSystem): CellValue {
  return inside === undefined ? "" : Number(fromInside(measure, inside, system).toPrecision(9));
}
