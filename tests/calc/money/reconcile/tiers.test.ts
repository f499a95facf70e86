import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cheapestOf, TierStock, tiersOf, worthOf } from "../../../../src/calc/money/reconcile/tiers";

describe("price tiers", () => {
  it("add up per price, cheapest first", () => {
    expect(
      tiersOf([
        { price: 60, quantity: 1 },
        { price: 30, quantity: 90 },
        { price: 60, quantity: 2 },
      ]),
    ).toEqual([
      { price: 30, quantity: 90 },
      { price: 60, quantity: 3 },
    ]);
  });

  it("lose a cut from its own price, then from the dearest", () => {
    const lines = [
      { price: 20, quantity: 10 },
      { price: 26, quantity: 5 },
    ];
    expect(tiersOf([...lines, { price: 20, quantity: -4 }]).map(({ quantity }) => quantity)).toEqual([6, 5]);
    // 7 less at a price of its own: 5 of those at 26, 2 of those at 20.
    expect(tiersOf([...lines, { price: 22, quantity: -7 }]).map(({ quantity }) => quantity)).toEqual([8, 0, 0]);
  });

  it("give what is wanted cheapest first, and the rest at the cheapest price", () => {
    const stock = new TierStock([
      { price: 30, quantity: 2 },
      { price: 60, quantity: 1 },
    ]);
    expect(stock.takeCheapest(2.5)).toEqual([
      { price: 30, quantity: 2 },
      { price: 60, quantity: 0.5 },
    ]);
    expect(stock.takeCheapest(4)).toEqual([
      { price: 30, quantity: 3.5 },
      { price: 60, quantity: 0.5 },
    ]);
  });

  it("count credits first", () => {
    // 5 at 26 less 2 of them credited, and 10 at 20: the cheapest 11 are 10 at 20 and 1 at 26 = 226.
    const billed = [
      { price: 26, quantity: 5 },
      { price: 26, quantity: -2 },
      { price: 20, quantity: 10 },
    ];
    expect(worthOf(cheapestOf(billed, 11))).toBe(22600);
  });

  it("are as cheap as the cheapest of all ways to fill a quantity (fast-check)", () => {
    const tier = fc.record({ price: fc.integer({ min: 1, max: 9 }), quantity: fc.integer({ min: 0, max: 4 }) });
    fc.assert(
      fc.property(fc.array(tier, { minLength: 1, maxLength: 4 }), fc.nat(6), (lines, wanted) => {
        // Every unit stands for itself; all choices of `wanted` units are tried.
        const units = lines.flatMap(({ price, quantity }) => Array.from({ length: quantity }, () => price));
        if (units.length < wanted) return;
        let least = Infinity;
        for (let choice = 0; choice < 2 ** units.length; choice++) {
          const chosen = units.filter((_, index) => (choice >> index) & 1);
          if (chosen.length === wanted)
            least = Math.min(
              least,
              chosen.reduce((sum, price) => sum + price, 0),
            );
        }
        expect(worthOf(new TierStock(tiersOf(lines)).takeCheapest(wanted))).toBe(least * 100);
      }),
      { numRuns: 50 },
    );
  });
});
