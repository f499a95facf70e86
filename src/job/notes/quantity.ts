import { Problem } from "../../calc/problem";
import { readQuantity } from "../../calc/quantity/readQuantity";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { MeasuredWord } from "./words";

const NUMBER = String.raw`(?:\d+\s*\/\s*\d+|\d[\d.,]*\d|\d)(?:[ -]\d+\s*\/\s*\d+)?[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞]`;
const UNIT = String.raw`(?:'|"|′|″|’|”|''|ft|feet|foot|in|inch|inches|yd|yards?|mm|cm|m|meters?|metres?|gph|gpm|l\/h|l\/min|m3\/h)(?![A-Za-z])\.?`;

/** A quantity as it stands in a line of notes: numbers with units that follow each other, or a bare number. */
export const QUANTITY = new RegExp(`(?:${NUMBER})\\s*(?:${UNIT})?(?:[ -]*(?:${NUMBER})(?:\\s*${UNIT})?)*`, "gi");

const HAS_UNIT = new RegExp(`\\d\\s*${UNIT}|[½¼¾⅓⅔⅛⅜⅝⅞]\\s*${UNIT}`, "i");

/** Units in which people leave a number bare. */
const BARE: Readonly<Record<MeasuredWord["measure"], Readonly<Record<UnitSystem, readonly string[]>>>> = {
  length: { US: ["ft", "in"], SI: ["m", "cm", "mm"] },
  flow: { US: ["gph", "gpm"], SI: ["L/h", "L/min"] },
};

/** What a quantity was understood as, or why it was not. */
export type QuantityRead = { readonly value: number; readonly remark: string } | { readonly why: string };

/**
 * A quantity that belongs to a fact. Without a unit it is taken in the one unit that makes sense of it; where two do, or
 * none does, it is not taken.
 */
export function quantityFor(
  text: string,
  { measure, plausible, called }: MeasuredWord,
  system: UnitSystem,
): QuantityRead {
  const inside = measure === "length" ? "m" : "m^3/s";
  const [least, most] = plausible;
  const fits = (value: number): boolean => value >= least && value <= most;
  const read = (written: string): number | string => {
    try {
      return readQuantity(written, inside, called);
    } catch (error) {
      if (error instanceof Problem) return error.message;
      throw error;
    }
  };
  if (HAS_UNIT.test(text)) {
    const value = read(
      text
        .replace(/[′’]/g, "'")
        .replace(/[″”]|''/g, '"')
        .replace(/\.$/, ""),
    );
    return typeof value === "number" ? { value, remark: "" } : { why: value };
  }
  const units = BARE[measure][system];
  const readings = units.flatMap((unit) => {
    const value = read(`${text.trim()} ${unit}`);
    return typeof value === "number" && fits(value) ? [{ value, unit }] : [];
  });
  if (units.every((unit) => read(`${text.trim()} ${unit}`) === 0)) return { why: `${called} must be more than 0` };
  const [only, second] = readings;
  if (only && !second) return { value: only.value, remark: `${only.unit}, as no other unit makes sense` };
  return {
    why: only
      ? `${text.trim()} could be ${units.join(" or ")}: write the unit`
      : `${text.trim()} is no ${called} in ${units.join(" or ")}: write it with its unit`,
  };
}
