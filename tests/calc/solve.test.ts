import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Problem } from "../../src/calc/problem";
import { solveBracketed } from "../../src/calc/solve";

describe("solveBracketed", () => {
  it("finds roots known in closed form", () => {
    expect(solveBracketed((x) => x * x - 2, 0, 2, "x")).toBeCloseTo(Math.SQRT2, 11);
    expect(solveBracketed((x) => Math.cos(x), 1, 2, "x")).toBeCloseTo(Math.PI / 2, 11);
    // x³ - 2x - 5 = 0, Wallis's example: 2.0945514815423265 (any numerical analysis text)
    expect(solveBracketed((x) => x ** 3 - 2 * x - 5, 2, 3, "x")).toBeCloseTo(2.0945514815423265, 11);
  });

  it("keeps its relative accuracy when the root is tiny beside the bracket", () => {
    const root = solveBracketed((x) => Math.sqrt(x) - 0.03, 0, 1000, "slope");
    expect(Math.abs(root / 0.0009 - 1)).toBeLessThan(1e-9);
  });

  it("returns an end that is itself the root, and a root at zero inside", () => {
    expect(solveBracketed((x) => x, 0, 5, "x")).toBe(0);
    expect(solveBracketed((x) => x - 5, 0, 5, "x")).toBe(5);
    expect(Math.abs(solveBracketed((x) => x ** 3, -1, 2, "x"))).toBeLessThan(1e-12);
  });

  it.each([
    ["flat at the root", (x: number) => (x - 0.3) ** 9],
    ["a jump without a zero", (x: number) => (x < 0.7310585 ? -1 : 1)],
    ["almost a step", (x: number) => Math.atan(1e12 * (x - 0.123456789))],
    ["huge on one side", (x: number) => Math.exp(700 * x) - 2],
  ])("ends within its cap: %s", (_, f) => {
    let calls = 0;
    const root = solveBracketed(
      (x) => {
        calls++;
        return f(x);
      },
      0,
      1,
      "x",
    );
    expect(calls).toBeLessThanOrEqual(202);
    expect(root).toBeGreaterThanOrEqual(0);
    expect(root).toBeLessThanOrEqual(1);
  });

  it("finds where any rising cubic crosses a level (fast-check)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (root, slope) => {
          const found = solveBracketed((x) => slope * (x ** 3 - root ** 3), 0, 2e6, "x");
          expect(Math.abs(found / root - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it("says what is wrong instead of returning something that is not a root", () => {
    expect(() => solveBracketed((x) => x * x + 1, -1, 1, "the depth")).toThrow("the depth has no answer");
    expect(() => solveBracketed(() => NaN, 0, 1, "the depth")).toThrow("the depth cannot be worked out");
    expect(() => solveBracketed((x) => x, 1, 1, "the depth")).toThrow("cannot be looked for");
    expect(() => solveBracketed((x) => x, 0, Infinity, "the depth")).toThrow(Problem);
  });
});
