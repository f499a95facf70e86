import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatFeetInches, TAPE_FRACTIONS } from "../../../src/calc/quantity/feetInches";
import { readQuantity } from "../../../src/calc/quantity/readQuantity";
import { arithmeticCases } from "../../arithmetic/cases";

const FOOT = 0.3048; // m, NIST SP 811, appendix B.8

describe("feet, inches and fractions", () => {
  it.each(arithmeticCases("14 levelling and fractions", "LV-F-").map((c) => [c.id, c] as const))(
    "published case %s",
    (_, c) => {
      const feet = c.inputs.feet?.value as number;
      expect(formatFeetInches(feet * FOOT, c.inputs.denominator?.value as number)).toBe(c.expected.text?.value);
    },
  );

  it.each([
    [11.99 / 12, 16, "1'-0\""],
    [2.5 + 0.5 / 12, 16, "2'-6 1/2\""],
    [0, 16, "0'-0\""],
    [-2.5, 16, "-2'-6\""],
    [1 / 12 / 64, 32, "0'-0 1/32\""], // exactly half a step: away from zero
    [-0.0001, 16, "0'-0\""],
  ])("%d ft to the nearest 1/%d is %s (by hand)", (feet, nearest, expected) => {
    expect(formatFeetInches(feet * FOOT, nearest)).toBe(expected);
  });

  it("refuses a fraction no tape has", () => {
    expect(() => formatFeetInches(1, 10)).toThrow("nearest must be 1, 2, 4, 8, 16, 32, 64");
  });

  it("reads back within half a step", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 3000, noNaN: true }),
        fc.constantFrom(...TAPE_FRACTIONS),
        (feet, nearest) => {
          const back = readQuantity(formatFeetInches(feet * FOOT, nearest), "ft");
          expect(Math.abs(back - feet)).toBeLessThanOrEqual((0.5 / nearest + 1e-8) / 12);
        },
      ),
    );
  });
});
