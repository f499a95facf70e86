import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Problem } from "../../../src/calc/problem";
import { readQuantity } from "../../../src/calc/quantity/readQuantity";
import { convert } from "../../../src/calc/quantity/units";

const RUNS = 5000;

/** Texts made of the pieces that quantities are made of, and of what code and other scripts are made of. */
const pieces = fc.array(
  fc.oneof(
    fc.constantFrom(..."0123456789 .,'\"+-/^()*&½¼²³°%e".split("")),
    fc.constantFrom(
      "ft",
      "in",
      "feet",
      "inches",
      "m",
      "cm",
      "mm",
      "gal",
      "gpm",
      "sq ft",
      "cu yd",
      "lb",
      "and",
      "per",
      "°F",
    ),
    fc.constantFrom(
      "__proto__",
      "constructor",
      "toString",
      "import(",
      "require('fs')",
      "globalThis",
      "=>",
      ";",
      "{",
      "}",
      "`",
      "$",
      "\\u0000",
    ),
    fc.string({ unit: "grapheme", maxLength: 4 }),
  ),
  { maxLength: 40 },
);
const hostile = fc.oneof(
  pieces.map((parts) => parts.join("")),
  fc.string({ unit: "binary", maxLength: 250 }),
);

describe("the reader of quantities, given anything", () => {
  it(`answers ${RUNS} texts with a finite number, or a sentence that names the argument`, () => {
    fc.assert(
      fc.property(hostile, fc.constantFrom("ft", "m", "gph", "yd^3", "degC"), (text, unit) => {
        try {
          expect(Number.isFinite(readQuantity(text, unit, "lip width"))).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
          expect((error as Problem).message).toContain("lip width");
        }
      }),
      { numRuns: RUNS },
    );
  });

  it("reads back what is written as feet and inches, in any sum", () => {
    const term = fc.record({ feet: fc.nat({ max: 500 }), inches: fc.nat({ max: 11 }), eighths: fc.nat({ max: 7 }) });
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 6 }), (terms) => {
        const text = terms
          .map(({ feet, inches, eighths }) => `${feet}' ${inches}${eighths ? ` ${eighths}/8` : ""}"`)
          .join(" + ");
        const expected = terms.reduce((sum, t) => sum + t.feet + (t.inches + t.eighths / 8) / 12, 0);
        expect(Math.abs(readQuantity(text, "ft") - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, expected));
      }),
    );
  });

  it("never runs code from a text, nor touches what all objects share", () => {
    const shared = Object.getOwnPropertyNames(Object.prototype).sort();
    const globals = Object.keys(globalThis).length;
    for (const text of [
      "globalThis.seen=1",
      "1 ft; globalThis.seen=1",
      "__proto__",
      "1 __proto__",
      "1 constructor.constructor('seen=1')()",
      "${1}",
      "f(x)=x ft",
    ])
      expect(() => readQuantity(text, "ft"), text).toThrow(Problem);
    for (const name of ["__proto__", "constructor", "toString", "hasOwnProperty", "prototype"]) {
      expect(() => convert(1, name, "ft"), name).toThrow(Problem);
      expect(() => convert(1, "ft", name), name).toThrow(Problem);
    }
    expect((globalThis as { seen?: unknown }).seen).toBeUndefined();
    expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(shared);
    expect(Object.keys(globalThis).length).toBe(globals);
  });

  it("takes no longer for a text made to confuse it", () => {
    const repeated = [
      "1 ",
      "1,",
      "1/",
      "ft ",
      "a ",
      "1 ft ",
      "'",
      "1'1",
      "- ",
      "(",
      "1e",
      "½",
      "°",
      "and ",
      "1,111",
      "sq ",
      "/ft",
    ];
    for (const piece of repeated) {
      const text = piece.repeat(200).slice(0, 200);
      const began = performance.now();
      for (let i = 0; i < 20; i++) {
        try {
          readQuantity(text, "ft");
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
        }
      }
      expect((performance.now() - began) / 20, piece).toBeLessThan(20);
    }
  });
});
