import { unit, type Unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { NumberUnit } from "../../../src/calc/quantity/numberUnits";

/** Units of the library that no number alone can hold: its imaginary power. */
const LEFT_OUT = new Set(["VAR"]);
/** Units of our own, which are there once `units.ts` is loaded. */
const OURS = new Set(["gph", "gpm", "mph"]);
const names = Object.keys(NumberUnit.UNITS).filter((name) => name !== "" && !LEFT_OUT.has(name) && !OURS.has(name));

/** A unit of the same dimension to convert into: the base units, written out. */
function inBase(made: Unit): string {
  return made.toSI().formatUnits();
}

describe("units over plain numbers", () => {
  it("know the units of the whole library", () => {
    expect(names.length).toBeGreaterThan(150);
  });

  it.each(names)("convert %s as the whole library does", (name) => {
    const whole = unit(3.7, name);
    const ours = new NumberUnit(3.7, name);
    const base = inBase(whole);
    expect(ours.equalBase(new NumberUnit(1, base))).toBe(true);
    const expected = whole.toNumber(base);
    expect(Math.abs(ours.toNumber(base) - expected)).toBeLessThanOrEqual(1e-12 * Math.abs(expected));
  });

  it.each(["ft^2", "yd^3", "lb/ft^3", "ton/yd^3", "gallon/hour", "km/hour", "L/second", "kg/m^3"])(
    "convert %s",
    (name) => {
      const base = inBase(unit(1, name));
      expect(new NumberUnit(2.5, name).toNumber(base)).toBeCloseTo(unit(2.5, name).toNumber(base), 12);
    },
  );

  it("refuse what is no unit", () => {
    expect(() => new NumberUnit(1, "constructor")).toThrow();
    expect(() => new NumberUnit(1, "furlongs of rope")).toThrow();
  });
});
