import { erf as whole } from "mathjs";
import { describe, expect, it } from "vitest";
import { erf } from "../../../../src/calc/money/odds/erf";

describe("erf", () => {
  // M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), table 7.1.
  it.each([
    [0, 0],
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [2, 0.995322265],
  ])("erf(%d) is the table's", (x, expected) => {
    expect(erf(x)).toBeCloseTo(expected, 9);
  });

  it("is the whole library's, on both sides of zero", () => {
    for (let x = -6; x <= 6; x += 0.37) expect(erf(x)).toBe(whole(x));
  });
});
