import { sameDimension } from "./units";

/** What quantities of a dimension are called, and how people write them: for sentences that refuse one. */
export interface Kind {
  /** "a length" */
  readonly name: string;
  /** "45 cm or 12 ft" */
  readonly examples: string;
}

/** A unit of each dimension, and its kind. */
const KINDS: readonly (readonly [unit: string, name: string, examples: string])[] = [
  ["ft", "a length", `2' 6 1/2", 45 cm or 12 ft + 8 ft 6 in`],
  ["sq ft", "an area", "120 sq ft or 11 m2"],
  ["cu ft", "a volume", "3.5 cu yd, 400 gal or 1500 L"],
  ["gph", "a flow", "2400 gph, 40 gpm or 150 L/min"],
  ["ft/s", "a speed", "4 ft/s, 1.2 m/s or 5 mph"],
  ["lb", "a weight", "1.5 ton, 350 lb or 160 kg"],
  ["lb/ft3", "a density", "165 lb/ft3 or 2.65 t/m3"],
  ["degF", "a temperature", "68 °F or 20 °C"],
  ["W", "a power", "750 W or 0.75 kW"],
];

/** The kind of quantity a unit measures; undefined for a unit of none of these. */
export function kindOf(unit: string): Kind | undefined {
  const found = KINDS.find(([known]) => sameDimension(known, unit));
  return found && { name: found[1], examples: found[2] };
}
