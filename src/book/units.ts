import type { UnitSystem } from "../calc/quantity/unitSystem";
import type { Counted } from "./kinds";

/**
 * What a price can be for: what it counts, and one of it in pieces, m, m², m³ or kg. Exact by definition: the foot is
 * 0.3048 m and the pound 0.45359237 kg (NIST SP 811, appendix B); a ton is 2000 lb, a gallon 231 in³.
 */
const UNITS = {
  each: { counts: "pieces", inside: 1 },
  load: { counts: "pieces", inside: 1 },
  roll: { counts: "pieces", inside: 1 },
  bag: { counts: "pieces", inside: 1 },
  pallet: { counts: "pieces", inside: 1 },
  ft: { counts: "length", inside: 0.3048, system: "US" },
  m: { counts: "length", inside: 1, system: "SI" },
  "ft²": { counts: "area", inside: 0.3048 ** 2, system: "US" },
  "yd²": { counts: "area", inside: 0.9144 ** 2, system: "US" },
  "m²": { counts: "area", inside: 1, system: "SI" },
  "ft³": { counts: "volume", inside: 0.3048 ** 3, system: "US" },
  "yd³": { counts: "volume", inside: 0.9144 ** 3, system: "US" },
  gal: { counts: "volume", inside: 231 * 0.0254 ** 3, system: "US" },
  "m³": { counts: "volume", inside: 1, system: "SI" },
  L: { counts: "volume", inside: 0.001, system: "SI" },
  lb: { counts: "weight", inside: 0.45359237, system: "US" },
  ton: { counts: "weight", inside: 2000 * 0.45359237, system: "US" },
  kg: { counts: "weight", inside: 1, system: "SI" },
  t: { counts: "weight", inside: 1000, system: "SI" },
} as const satisfies Readonly<Record<string, Unit>>;

interface Unit {
  readonly counts: Counted;
  readonly inside: number;
  readonly system?: UnitSystem;
}

export type SaleUnit = keyof typeof UNITS;

/** What one unit of sale counts, and how much of it that is, in SI. */
export function aboutUnit(unit: SaleUnit): Unit {
  return UNITS[unit];
}

/** Units of sale that belong to a system, those of both among them. */
export function unitsOf(system: UnitSystem): SaleUnit[] {
  return (Object.keys(UNITS) as SaleUnit[]).filter((name) => {
    const { system: own }: Unit = UNITS[name];
    return own === undefined || own === system;
  });
}

/** Other ways in which units of sale are written. */
const ALSO: Readonly<Record<string, SaleUnit>> = {
  ea: "each",
  pc: "each",
  pcs: "each",
  piece: "each",
  unit: "each",
  foot: "ft",
  feet: "ft",
  lf: "ft",
  ft2: "ft²",
  sf: "ft²",
  sqft: "ft²",
  yd2: "yd²",
  sy: "yd²",
  ft3: "ft³",
  cf: "ft³",
  yd3: "yd³",
  cy: "yd³",
  m2: "m²",
  m3: "m³",
  l: "L",
  gallon: "gal",
  gallons: "gal",
  lbs: "lb",
  tons: "ton",
  tonne: "t",
  tonnes: "t",
};

/** A unit of sale from how a person or a supplier writes it; undefined when it is none. */
export function readSaleUnit(text: string): SaleUnit | undefined {
  const word = text.trim().replace(/\.$/, "").toLowerCase().replace(/\s+/g, "");
  const exact = (Object.keys(UNITS) as SaleUnit[]).find((name) => name.toLowerCase() === word);
  return exact ?? ALSO[word];
}
