import { describe, expect, it } from "vitest";
import { demo } from "./moneyJob";
import type { Tried } from "./tried";

/** What the lines come to, worked by hand: 7 × 1.115, 25 × 4, 110 × 0.99, 8 × 57.5, nothing, 0.3 × 33.35, 2 × 115. */
const LINES = {
  "¥": [8, 100, 109, 460, 0, 10, 230],
  KWD: [7.805, 100, 108.9, 460, 0, 10.005, 230],
} as const;

/** Shares of the payments that leave a unit over in any total. */
const THIRDS = [[0.3334], [0.3333], [0.3333], [""], [""], [""]];

const column = (one: Tried, name: string, rows: number): number[] =>
  Array.from({ length: rows }, (_, row) => one.value(name, row + 1)).filter((cell) => typeof cell === "number");

const sum = (amounts: readonly number[]): number => amounts.reduce((all, each) => all + each, 0);

describe.each([
  ["¥", 0],
  ["KWD", 3],
] as const)("amounts in %s, rounded to %i digits", (currency, digits) => {
  const whole = (amount: number): number => Number(amount.toFixed(digits));

  it("are those of hand arithmetic, and what is printed adds up", async () => {
    const one = await demo({ Currency: currency, RoundTo: 0, StageShares: THIRDS });
    expect(one.value("MoneyDigits")).toBe(digits);
    const lines = column(one, "TakeoffCosts", 24);
    expect(lines.slice(0, 7)).toEqual(LINES[currency]);
    expect(one.number("TakeoffTotal")).toBeCloseTo(sum(lines.map(whole)), 9);
    const costs = column(one, "QuotedCosts", 8);
    expect(one.number("TotalCost")).toBeCloseTo(sum(costs.map(whole)), 9);
    const [before, tax, all] = ["PriceBeforeTax", "TaxAmount", "PriceTotal"].map((name) => one.number(name));
    expect(all).toBeCloseTo(whole(before ?? 0) + whole(tax ?? 0), 9);
    const stages = column(one, "StageAmounts", 6);
    expect(stages.map(whole)).toEqual(stages);
    expect(sum(stages)).toBeCloseTo(whole(all ?? 0), 9);
  });

  it("makes a price that is wanted", async () => {
    const wanted = digits === 0 ? 12_345 : 12_345.678;
    const one = await demo({ Currency: currency, RoundTo: 0, OwnPrice: wanted });
    expect(one.number("PriceBeforeTax")).toBeCloseTo(wanted, 9);
  });
});
