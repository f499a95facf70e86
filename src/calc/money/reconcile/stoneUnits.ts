import { convert, findUnit, sameDimension } from "../../quantity/units";

/** Words for a plain count, which the unit library does not know. */
const COUNT_WORDS: ReadonlySet<string> = new Set("each ea pc pcs piece pieces unit units no count ct stk".split(" "));

/** Turns quantities into a unit; a blank unit means that of the order. */
export interface UnitTurner {
  /** The quantity in the target unit, or undefined when the units do not meet. */
  turn(quantity: number, unit: string | undefined): number | undefined;
  /** Why a unit does not meet the target, as the end of a sentence. */
  reason(unit: string): string;
}

// Only units that stand on papers get into these; capped all the same.
const MOST_REMEMBERED = 1000;
const factors = new Map<string, number | undefined>();
const plainUnits = new Map<string, string>();

/**
 * A turner into `target`. Weight and volume meet through the bulk density (kg/m³):
 * 24 short tons of gravel at 1600 kg/m³ are 24 × 907.18474 / 1600 = 13.61 m³.
 */
export function unitTurner(target: string | undefined, density: number | undefined): UnitTurner {
  const to = plainUnit(target);
  const factorFrom = (unit: string): number | undefined => {
    const from = plainUnit(unit);
    if (from === to) return 1;
    const key = `${from}|${to}|${density ?? ""}`;
    if (!factors.has(key)) {
      if (factors.size > MOST_REMEMBERED) factors.clear();
      factors.set(key, factorBetween(from, to, density));
    }
    return factors.get(key);
  };
  return {
    turn(quantity, unit) {
      const factor = unit === undefined || unit === target ? 1 : factorFrom(unit);
      return factor === undefined ? undefined : clean(quantity * factor);
    },
    reason: (unit) =>
      density === undefined && isBulk(plainUnit(unit)) && isBulk(to)
        ? `${unit} meets ${target ?? "each"} only with a density on the order line`
        : `${unit} cannot be turned into ${target ?? "each"}`,
  };
}

function factorBetween(from: string, to: string, density: number | undefined): number | undefined {
  if (findUnit(from) === null || findUnit(to) === null) return undefined;
  if (sameDimension(from, to)) return convert(1, from, to);
  if (density === undefined) return undefined;
  if (sameDimension(from, "kg") && sameDimension(to, "m^3"))
    return convert(convert(1, from, "kg") / density, "m^3", to);
  if (sameDimension(from, "m^3") && sameDimension(to, "kg"))
    return convert(convert(1, from, "m^3") * density, "kg", to);
  return undefined;
}

function isBulk(unit: string): boolean {
  return sameDimension(unit, "kg") || sameDimension(unit, "m^3");
}

/** "Rolls" and "roll" are one unit; blank is a plain count. */
function plainUnit(unit = ""): string {
  let plain = plainUnits.get(unit);
  if (plain === undefined) {
    if (plainUnits.size > MOST_REMEMBERED) plainUnits.clear();
    plainUnits.set(unit, (plain = readPlainUnit(unit)));
  }
  return plain;
}

function readPlainUnit(unit: string): string {
  const text = unit.trim().replace(/\s+/g, " ");
  const word = text.toLowerCase().replace(/\.$/, "");
  if (word === "" || COUNT_WORDS.has(word)) return "each";
  return findUnit(text) === null ? word.replace(/s$/, "") : text;
}

/**
 * Drops the noise that turning and adding leave behind the twelfth digit.
 *
 * @example clean(0.1 + 0.2) => 0.3; twelve digits
 */
export function clean(quantity: number): number {
  return Number.isInteger(quantity) ? quantity : Number(quantity.toPrecision(12));
}
