import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { marginOf, markupFor } from "../../../src/calc/money/margin";

describe("markup and margin", () => {
  it("are two sides of one price", () => {
    expect(marginOf(0.25)).toBeCloseTo(0.2, 12); // cost 100, price 125
    expect(markupFor(0.5)).toBeCloseTo(1, 12); // half the price is the cost again
    expect(marginOf(0)).toBe(0);
    expect(markupFor(0)).toBe(0);
  });

  it("undo each other, and a margin is never above its markup (fast-check)", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 9, noNaN: true }), (markup) => {
        const margin = marginOf(markup);
        expect(markupFor(margin)).toBeCloseTo(markup, 9);
        expect(margin).toBeLessThanOrEqual(markup);
      }),
    );
  });

  it("refuse percents written as whole numbers", () => {
    expect(() => marginOf(25)).toThrow("markup must be a share of 0 to 10; got 25");
    expect(() => markupFor(1)).toThrow("margin must be a share of 0 to 0.9; got 1");
    expect(() => marginOf(-0.1)).toThrow("markup must be");
    expect(() => markupFor(NaN)).toThrow("margin must be a finite number");
  });
});
