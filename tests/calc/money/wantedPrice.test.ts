import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundCents } from "../../../src/calc/money/cents";
import { markupsForMargin, markupsForPrice } from "../../../src/calc/money/wantedPrice";

/** The sum of the rows as the price table rounds them: each to the cent. */
function summed(rows: readonly { cost: number }[], markups: readonly number[]): number {
  return roundCents(rows.reduce((sum, { cost }, row) => sum + roundCents(cost * (1 + (markups[row] ?? 0))), 0));
}

const row = (cost: number, markup: number) => ({ cost, markup });

describe("markups for a wanted price", () => {
  it("are all changed in the same proportion: 1000 at 20 % and 500 at 40 % are 1900; 2000 takes 25 and 50 %", () => {
    const { markups, price } = markupsForPrice([row(1000, 0.2), row(500, 0.4)], 2000);
    expect(price).toBe(2000);
    expect(markups[0]).toBeCloseTo(0.25, 9);
    expect(markups[1]).toBeCloseTo(0.5, 9);
  });

  it("are the same for all where there were none: 1500 of cost at 1800 is 20 %", () => {
    expect(markupsForPrice([row(1000, 0), row(500, 0)], 1800).markups).toEqual([0.2, 0.2]);
  });

  it("keep the step: 1,991 wanted in steps of 10 is 2,000", () => {
    expect(markupsForPrice([row(1000, 0.2), row(500, 0.4)], 1991, 10).price).toBe(2000);
  });

  it("make a margin: 1,400 of job cost at 30 % is 1400 / 0.7 = 2,000", () => {
    const rows = [row(1000, 0.2), row(500, 0.4)];
    const { markups, price } = markupsForMargin(rows, { jobCost: 1400, margin: 0.3 });
    expect(price).toBe(2000);
    expect((price - 1400) / price).toBe(0.3);
    expect(summed(rows, markups)).toBe(2000);
  });

  it("come to the price to the cent, whatever the costs", () => {
    const cents = fc.integer({ min: 0, max: 5_000_000 }).map((amount) => amount / 100);
    const rows = fc.array(fc.record({ cost: cents, markup: fc.integer({ min: 0, max: 90 }).map((m) => m / 100) }), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(rows, fc.integer({ min: 1000, max: 2500 }), (costs, factor) => {
        const total = costs.reduce((sum, { cost }) => sum + cost, 0);
        fc.pre(total >= 1);
        const wanted = roundCents((total * factor) / 1000);
        const { markups, price } = markupsForPrice(costs, wanted);
        expect(price).toBe(wanted);
        expect(summed(costs, markups)).toBe(wanted);
      }),
      { seed: 8, numRuns: 500 },
    );
  });

  it.each<[string, () => unknown, RegExp]>([
    ["a price under the cost", () => markupsForPrice([row(1000, 0.2)], 900), /under the cost of 1000/],
    ["no cost", () => markupsForPrice([row(0, 0.2)], 900), /no cost to mark up/],
    ["a price of ten times and more", () => markupsForPrice([row(100, 0.2)], 5000), /0 to 1000% is possible/],
    ["a margin of 1", () => markupsForMargin([row(100, 0.2)], { jobCost: 90, margin: 1 }), /margin must be 0 to 0.9/],
    ["no number", () => markupsForPrice([row(100, 0.2)], NaN), /price/],
  ])("say what is wrong with %s", (_, work, sentence) => {
    expect(work).toThrow(sentence);
  });
});
