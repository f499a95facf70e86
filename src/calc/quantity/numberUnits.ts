import { createUnitClass } from "mathjs";

declare module "mathjs" {
  // The library exports its factories; its types leave this one out.
  export function createUnitClass(parts: Readonly<Record<string, unknown>>): UnitCtor;
}

/** The few fractions in the library's own table (5/9 for °F), as far as arithmetic on plain numbers needs them. */
class Ratio {
  readonly isFraction = true;

  constructor(
    private readonly top: number,
    private readonly bottom: number,
  ) {}

  valueOf(): number {
    return this.top / this.bottom;
  }
}

/** Stands in for kinds of numbers that no quantity here has. */
class NoSuchNumber {}

/**
 * The unit library's own class over plain numbers.
 * Made the library's usual way it brings arbitrary precision, fractions and complex numbers along,
 * which would more than double what Excel loads before the first cell answers.
 */
export const NumberUnit = createUnitClass({
  config: { number: "number", predictable: false },
  addScalar: (a: number, b: number) => a + b,
  subtractScalar: (a: number, b: number) => a - b,
  multiplyScalar: (a: number, b: number) => a * b,
  divideScalar: (a: number, b: number) => a / b,
  pow: (a: number, b: number) => a ** b,
  abs: Math.abs,
  fix: Math.trunc,
  round: Math.round,
  equal: (a: number, b: number) => a === b,
  isNumeric: (x: unknown) => typeof x === "number",
  format: String,
  number: Number,
  Complex: NoSuchNumber,
  BigNumber: NoSuchNumber,
  Fraction: Ratio,
});
