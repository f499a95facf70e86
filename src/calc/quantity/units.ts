import type { Unit } from "mathjs";
import { invalid } from "../problem";
import { NumberUnit } from "./numberUnits";

NumberUnit.createUnit({
  gph: "1 gallon/hour",
  gpm: "1 gallon/minute",
  mph: "1 mile/hour",
});

/** Spellings people use, in lower case, and the unit library's name for each. */
const SPELLINGS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    "'": "ft",
    '"': "in",
    foot: "ft",
    feet: "ft",
    "lin ft": "ft",
    lf: "ft",
    inch: "in",
    ins: "in",
    yard: "yd",
    yds: "yd",
    yards: "yd",
    metre: "m",
    metres: "m",
    meter: "m",
    meters: "m",
    millimetre: "mm",
    millimetres: "mm",
    centimetre: "cm",
    centimetres: "cm",
    sf: "ft^2",
    sqft: "ft^2",
    "sq ft": "ft^2",
    "square feet": "ft^2",
    "square foot": "ft^2",
    "sq in": "in^2",
    "sq yd": "yd^2",
    sy: "yd^2",
    "square yards": "yd^2",
    "sq m": "m^2",
    sqm: "m^2",
    cf: "ft^3",
    cuft: "ft^3",
    "cu ft": "ft^3",
    "cubic feet": "ft^3",
    cy: "yd^3",
    cuyd: "yd^3",
    "cu yd": "yd^3",
    "cubic yard": "yd^3",
    "cubic yards": "yd^3",
    "cu m": "m^3",
    cum: "m^3",
    gal: "gallon",
    gals: "gallon",
    "us gal": "gallon",
    litre: "L",
    liter: "L",
    litres: "L",
    liters: "L",
    lit: "L",
    "l/h": "L/hour",
    lph: "L/hour",
    "l/hr": "L/hour",
    "l/min": "L/minute",
    lpm: "L/minute",
    "l/s": "L/second",
    lps: "L/second",
    cfs: "ft^3/second",
    fps: "ft/second",
    "ft/s": "ft/second",
    "km/h": "km/hour",
    kph: "km/hour",
    lbs: "lb",
    pound: "lb",
    pounds: "lb",
    kilo: "kg",
    kgs: "kg",
    kilogram: "kg",
    kilograms: "kg",
    ton: "ton",
    tons: "ton",
    "short ton": "ton",
    "short tons": "ton",
    "metric ton": "tonne",
    "metric tons": "tonne",
    f: "degF",
    "°f": "degF",
    "deg f": "degF",
    c: "degC",
    "°c": "degC",
    "deg c": "degC",
    hp: "hp",
    pcf: "lb/ft^3",
  }),
);

/** Units as the library writes them, without regard to the case a user typed. */
const CASELESS: ReadonlySet<string> = new Set(
  "ft in yd mi m mm cm km gph gpm mph gallon kg g lb oz ton tonne pt qt acre hectare w kw psi bar kpa pa h s".split(
    " ",
  ),
);
const CASED: ReadonlyMap<string, string> = new Map(
  Object.entries({ w: "W", kw: "kW", kpa: "kPa", pa: "Pa", l: "L", h: "hour", s: "second", ml: "mL" }),
);

const cache = new Map<string, Unit | null>();

/**
 * The unit a person's spelling stands for, or null when nothing fits.
 *
 * @example findUnit("furlongs per spoon") => null; no such unit
 */
export function findUnit(spelling: string): Unit | null {
  const text = spelling.trim().replace(/\s+/g, " ");
  const known = cache.get(text);
  if (known !== undefined) return known;
  const found = lookUp(text);
  // The cache only ever holds what people typed; cap it so that it cannot grow without end.
  if (cache.size > 500) cache.clear();
  cache.set(text, found);
  return found;
}

function lookUp(text: string): Unit | null {
  if (text === "" || text.length > 40) return null;
  const powers = text
    .replace(/²/g, "^2")
    .replace(/³/g, "^3")
    .replace(/\s*(?:\/|\bper\b)\s*/gi, "/");
  const lower = powers.toLowerCase();
  const caseless = CASED.get(lower) ?? (CASELESS.has(lower) ? lower : undefined);
  const joined = lower
    .replace(/\/(cf|cu ft|cubic foot)$/, "/ft3")
    .replace(/\/(cy|cu yd|cubic yard)$/, "/yd3")
    .replace(/^tons\//, "ton/")
    .replace(/(^|\/)(ft|in|yd|m|mm|cm)([23])$/, "$1$2^$3");
  const candidates = [SPELLINGS.get(lower), caseless, joined !== lower ? joined : undefined, powers];
  for (const name of candidates) {
    // Digits may only stand as powers: "5 5 ft" must not become a unit of its own.
    if (name === undefined || !/^[A-Za-z°][A-Za-z0-9°^/* ()]*$/.test(name)) continue;
    try {
      return new NumberUnit(1, name);
    } catch {
      // Not a unit of the library under this spelling; try the next.
    }
  }
  return null;
}

/**
 * `value` of `from` expressed in `to`, both spelled as a person would.
 *
 * @example convert(1, "ft", "m") => 0.3048; the international foot
 */
export function convert(value: number, from: string, to: string): number {
  const source = requireUnit(from);
  const target = requireUnit(to);
  if (!source.equalBase(target)) throw invalid(`${from} cannot be turned into ${to}: they measure different things`);
  return new NumberUnit(value, unitName(source)).toNumber(unitName(target));
}

/**
 * Whether two spellings name units of the same dimension.
 *
 * @example sameDimension("ft", "m") => true; both are lengths
 */
export function sameDimension(a: string, b: string): boolean {
  const first = findUnit(a);
  const second = findUnit(b);
  return first !== null && second !== null && first.equalBase(second);
}

/**
 * Whether a unit belongs to the metric system; units of power or temperature in either system count as such.
 *
 * @example isMetric("mm") => true; by definition
 */
export function isMetric(spelling: string): boolean {
  const unit = findUnit(spelling);
  return unit !== null && /^\(?(?:[kcdm]?m|m?[Ll]|[km]?g|t|tonne|degC|k?Pa|bar|k?W)\b/.test(unitName(unit));
}

/**
 * The unit of a spelling, or a problem whose sentence offers units that exist; `name` is the argument it stood in.
 *
 * @example requireUnit("gpm").equalBase(requireUnit("gpm")) => true; by definition
 */
export function requireUnit(spelling: string, name?: string): Unit {
  const found = findUnit(spelling);
  if (found) return found;
  throw invalid(
    `${name === undefined ? "" : `${name}: `}unit "${spelling.slice(0, 40)}" is not known; use one such as ft, in, m, mm, sq ft, cu yd, gal, L, gph, gpm, L/h, ton, t, lb or kg`,
  );
}

function unitName(unit: Unit): string {
  return unit.formatUnits();
}
