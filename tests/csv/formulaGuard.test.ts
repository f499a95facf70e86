import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { guardText, unguardText } from "../../src/csv/formulaGuard";

describe("guardText", () => {
  it.each(["=1+1", "+A1", "-A1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1", "'=1", "-5 mm pipe", "+", "--1"])(
    "guards %j",
    (text) => {
      expect(guardText(text)).toBe(`'${text}`);
    },
  );

  it.each(["", "Gravel", "1+1", "a=b", "'tis", "-12.5", "+3", "-0,5", "-.5", " =1 behind a blank"])(
    "leaves %j as it is",
    (text) => {
      expect(guardText(text)).toBe(text);
    },
  );

  it("comes off again, and nothing it writes runs (fast-check)", () => {
    const risky = fc.string({ unit: fc.constantFrom("=", "+", "-", "@", "'", "\t", "\r", "\n", "1", "a", ".", ",") });
    fc.assert(
      fc.property(fc.oneof(fc.string(), risky), (text) => {
        const guarded = guardText(text);
        expect(unguardText(guarded)).toBe(text);
        if (/^[=+\-@\t\r\n]/.test(guarded)) expect(guarded).toMatch(/^[+-][\d.,]+$/);
      }),
    );
  });
});
