import { convert, sameDimension } from "./units";

/** What quantities of a dimension are called, and how people write them: for sentences that refuse one. */
export interface Kind {
  /** "a length" */
  readonly name: string;
  /** "45 cm or 12 ft" */
  readonly examples: string;
}

/** Units and their kinds; the first of a dimension stands for those of its units that have no row. */
const KINDS: readonly (readonly [unit: string, name: string, examples: string])[] = [
  ["ft", "a length", `3'-2", 3.17 ft or 38 in`],
  ["in", "a length", `6 1/2", 6.5 in or 16.5 cm`],
  ["m", "a length", `2.8 m, 280 cm or 3'-2"`],
  ["mm", "a length", `65 mm, 6.5 cm or 2-1/2"`],
  ["sq ft", "an area", "120 sq ft or 11 m2"],
  ["m^2", "an area", "11 m2 or 120 sq ft"],
  ["cu yd", "a volume", "3.5 cu yd or 2.7 m3"],
  ["gal", "a volume", "400 gal or 1500 L"],
  ["L", "a volume", "1500 L or 1.5 m3"],
  ["m^3", "a volume", "1.5 m3, 1500 L or 3.5 cu yd"],
  ["gph", "a flow", "2400 gph, 40 gpm or 150 L/min"],
  ["L/h", "a flow", "9000 L/h, 150 L/min or 40 gpm"],
  ["ft/s", "a speed", "4 ft/s or 1.2 m/s"],
  ["m/s", "a speed", "1.2 m/s or 4 ft/s"],
  ["mph", "a speed", "5 mph or 8 km/h"],
  ["km/h", "a speed", "8 km/h or 5 mph"],
  ["lb", "a weight", "350 lb or 160 kg"],
  ["kg", "a weight", "160 kg or 350 lb"],
  ["ton", "a weight", "1.5 ton, 3000 lb or 1.4 t"],
  ["tonne", "a weight", "1.4 t, 1400 kg or 1.5 ton"],
  ["lb/ft3", "a density", "165 lb/ft3 or 2.65 t/m3"],
  ["t/m3", "a density", "2.65 t/m3 or 165 lb/ft3"],
  ["degF", "a temperature", "68 °F or 20 °C"],
  ["degC", "a temperature", "20 °C or 68 °F"],
  ["psi", "a pressure", "10 psi or 69 kPa"],
  ["kPa", "a pressure", "69 kPa, 0.69 bar or 10 psi"],
  ["W", "a power", "750 W or 0.75 kW"],
];

/**
 * The kind of quantity a unit measures, with examples in that unit; undefined for a unit of none of these.
 *
 * @example kindOf("ft").name => "a length"; by definition
 */
export function kindOf(unit: string): Kind | undefined {
  const alike = KINDS.filter(([known]) => sameDimension(known, unit));
  const found = alike.find(([known]) => Math.abs(convert(1, known, unit) - 1) < 1e-9) ?? alike[0];
  return found && { name: found[1], examples: found[2] };
}
