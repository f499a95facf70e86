import { beforeAll, describe, expect, it } from "vitest";
import { COST_KINDS, TAX_BASES } from "../../../src/calc/money/costKinds";
import { fromCents, toCents } from "../../../src/calc/money/cents";
import { buildPrice, shareOfCents, type PriceParts } from "../../calc/money/priceBuildUp";
import { demo } from "./moneyJob";
import type { Tried } from "./tried";

let tried: Tried;
beforeAll(async () => {
  tried = await demo();
});

describe("Price", () => {
  const MARKUPS = { material: 0.32, labor: 0.42, machine: 0.25, subcontract: 0.15, hauling: 0.15, other: 0.1 };
  const demoLines = { material: 176.4, subcontract: 640, other: 85 }; // the three lines of the user's own in the demo
  const taken = { material: 7.81 + 100 + 108.9 + 460 + 10.01 + demoLines.material, hauling: 230 };
  const base: PriceParts = {
    costs: { ...taken, labor: 2480.35, machine: 641.2, subcontract: 640, other: 85 },
    markups: MARKUPS,
    overhead: { share: 0.12 },
    overheadMarkup: 0.12,
    contingency: 0.05,
    contingencyMarkup: 0.1,
    taxRate: 0.065,
    taxable: taken.material + taken.hauling,
    taxBase: "materials with markup",
    roundTo: 10,
  };
  const cents = (amount: unknown): number => Math.round((amount as number) * 100);

  const agrees = (one: Tried, parts: PriceParts): void => {
    const expected = buildPrice(parts);
    expect(cents(one.value("TotalCost"))).toBe(expected.totalCost);
    expect(cents(one.value("PriceBeforeTax"))).toBe(expected.priceBeforeTax);
    expect(cents(one.value("TaxAmount"))).toBe(expected.tax);
    expect(cents(one.value("PriceTotal"))).toBe(expected.priceTotal);
    expect(one.number("GrossMargin")).toBeCloseTo(expected.grossMargin, 9);
  };

  it("builds the price up as the calculations do", () => agrees(tried, base));

  it.each(TAX_BASES)("with tax on %s, not rounded", async (taxBase) => {
    agrees(await demo({ TaxBase: taxBase, RoundTo: 0 }), { ...base, taxBase, roundTo: 0 });
  });

  it("raised to a multiple that it is already, without a step for the noise of adding up", async () => {
    // A price that is one whole multiple, where adding its lines in binary comes out above: 0.1 + 0.2 is 0.30000000000000004.
    const candidates = Array.from({ length: 60 }, (_, index) => (30 + index) / 100).map((material) => {
      const parts = { ...base, markups: { ...MARKUPS, material }, roundTo: 0 };
      const costs = buildPrice(parts);
      const price = fromCents(costs.beforeRounding);
      const lines = COST_KINDS.map((kind) => [toCents(base.costs[kind] ?? 0), parts.markups[kind]] as const);
      const all = [...lines, [costs.overhead, 0.12] as const, [costs.contingency, 0.1] as const];
      const added = all.reduce((sum, [cost, markup]) => sum + fromCents(cost + shareOfCents(cost, markup)), 0);
      return { material, price, above: added > price };
    });
    const noisy = candidates.find(({ above }) => above) ?? never();
    const one = await demo({ Markups: [[noisy.material]], RoundTo: noisy.price });
    expect(one.value("PriceBeforeTax")).toBe(noisy.price);
  });

  it("with overhead by crew hours, and other markups", async () => {
    const one = await demo({ OverheadBy: "crew hours", OverheadPerHour: 14.3, Markups: [[0.5]] });
    agrees(one, { ...base, overhead: { perHour: 14.3, hours: 62 }, markups: { ...MARKUPS, material: 0.5 } });
  });

  it.each([
    ["B", { material: 385, labor: 210 }],
    ["C", { material: 495, labor: 180 }],
  ])("for option %s with the changes of its cost", async (letter, changes) => {
    const one = await demo({ ChosenOption: letter });
    const costs = { ...base.costs };
    for (const kind of COST_KINDS) costs[kind] = (costs[kind] ?? 0) + ((changes as Record<string, number>)[kind] ?? 0);
    agrees(one, { ...base, costs });
  });

  it.each([
    ["a price, unrounded", { OwnPrice: 8123.37, RoundTo: 0 }, 8123.37],
    ["a price, raised to 10", { OwnPrice: 8123.37, RoundTo: 10 }, 8130],
    ["a price for option B", { OwnPrice: 9000, RoundTo: 0, ChosenOption: "B" }, 9000],
    ["a price without any markup typed", { OwnPrice: 7777.77, RoundTo: 0, Markups: Array(8).fill([0]) }, 7777.77],
  ])("comes to the cent to %s, and the markups go up and down together", async (_, typed, price) => {
    const one = await demo(typed);
    expect(cents(one.value("PriceBeforeTax"))).toBe(cents(price));
    expect(one.value("PriceAsked")).toBe(price);
    expect(one.verdict("Price", "The price wanted is the price")).toBe("OK");
    // Material has 32 % and hauling 15 %: what earned more earns more by the same factor, (price - cost) / sum of cost x markup.
    const used = [1, 5].map((row) => one.number("MarkupsUsed", row));
    const factor = "Markups" in typed ? undefined : one.number("MarkupFactor");
    if (factor === undefined) expect(used[0]).toBeCloseTo(used[1] ?? 0, 8);
    else expect(used).toEqual([expect.closeTo(0.32 * factor, 8), expect.closeTo(0.15 * factor, 8)]);
    expect(one.number("GrossMargin")).toBeCloseTo(one.number("MarginAsked"), 12);
  });

  it("reaches a margin wanted: the price is the job's own cost / (1 - margin), up to the cent", async () => {
    const one = await demo({ OwnMargin: 0.4, RoundTo: 0 });
    const jobCost = one.number("TotalCost") - one.number("CostsA", 7);
    expect(cents(one.value("PriceBeforeTax"))).toBe(Math.ceil(Number((jobCost * 100).toFixed(0)) / 0.6 - 1e-6));
    expect(one.number("GrossMargin")).toBeCloseTo(0.4, 5);
  });

  it.each([
    ["under the cost", { OwnPrice: 1000 }, /^under the cost of [\d,]+\.\d\d: your markups stay$/],
    ["over all markups", { OwnPrice: 900_000 }, /1000%/],
  ])("leaves the markups where the price is %s, and a check says so", async (_, typed, said) => {
    const one = await demo(typed);
    expect(one.value("PriceBeforeTax")).toBe(tried.value("PriceBeforeTax"));
    expect(one.value("WantedSaid")).toMatch(said);
    expect(one.verdict("Price", "The price wanted is the price")).not.toBe("OK");
  });

  it("takes the crew's hours and days along where an option changes labor", async () => {
    // 62 hours cost 2480.35: 210 more are 5.249 hours more, 180 more 4.499; a day has 62 / 2.4 of them.
    const hours = [62, 67.249, 66.499];
    const days = [1, 3, 5].map((column) => tried.number("OptionDays", 1, column));
    days.forEach((day, index) => expect(day).toBeCloseTo(((hours[index] ?? 0) * 2.4) / 62, 3));
    const one = await demo({ OverheadBy: "crew hours", OverheadPerHour: 10, ChosenOption: "B" });
    // 672.49 of overhead beside the direct cost of A with 385 of material and 210 of labor, and 5 % of contingency.
    const direct = Object.values(base.costs).reduce((sum, cost) => sum + (cost ?? 0), 0) + 595;
    expect(one.number("TotalCost")).toBeCloseTo(direct * 1.05 + 672.49, 1);
    const profit = one.number("PriceBeforeTax") - one.number("TotalCost");
    expect(one.number("CrewDayProfit")).toBeCloseTo(profit / ((67.249 * 2.4) / 62), 1);
  });

  it("leaves options without a name out, and says when one of them is quoted", async () => {
    const one = await demo({ ChosenOption: "C", OptionNames: [["As designed"], [""], [""]] });
    expect(one.value("PriceTotal")).toBe("not complete: the option quoted");
    expect(one.value("PriceBeforeTax")).toBe("");
    expect(one.verdict("Price", "The quoted option")).toBe("FIX");
    expect(one.value("OptionTotals", 1, 3)).toBe("");
    expect(one.errors("Quote")).toEqual([]);
  });

  it("keeps the price where of a change that was cleared the kind of cost is left standing", async () => {
    const cleared = Array.from({ length: 8 }, () => [""]);
    const one = await demo({ OptionChanges: cleared, OptionChangesB: cleared, OptionChangesC: cleared });
    expect(one.value("OptionKinds")).not.toBe("");
    expect(one.value("PriceTotal")).toBe(tried.value("PriceTotal"));
    const half = await demo({ OptionChanges: [["Another pump"]], OptionChangesB: cleared, OptionChangesC: cleared });
    expect(half.value("PriceTotal")).toBe("not complete: changes of the options");
  });

  it("finds the smallest markup on every line that keeps the margin", async () => {
    const row = (one: Tried): number => one.number("SmallestMarkups", 1, 1);
    const markup = row(tried);
    const all = Array.from({ length: 8 }, () => [markup]);
    const kept = await demo({ Markups: all, RoundTo: 0 });
    const lost = await demo({ Markups: all.map(() => [markup - 0.002]), RoundTo: 0 });
    expect(kept.verdict("Price", "Gross margin")).toBe("OK");
    expect(lost.verdict("Price", "Gross margin")).toBe("FIX");
    // margin 0.3: markup on the job's own cost 0.3 / 0.7
    expect(tried.number("MarkupWanted")).toBeCloseTo(0.428571, 6);
  });

  it("keeps the payments to the cent, and says when their shares do not add up", async () => {
    const stages = [1, 2, 3, 4, 5, 6].map((row) => cents(tried.value("StageAmounts", row)));
    expect(stages.reduce((sum, each) => sum + each, 0)).toBe(cents(tried.value("PriceTotal")));
    expect(cents(tried.value("QuotePayments"))).toBe(cents(tried.value("PriceTotal")));
    const short = await demo({ StageShares: [[0.2]] });
    expect(["FIX", "ERROR"]).toContain(short.verdict("Price", "Payment stages"));
  });

  it("gives the odds of the quoted cost", () => {
    // Likely = direct cost of option A.
    const direct = Object.values(base.costs).reduce((sum, cost) => sum + (cost ?? 0), 0);
    expect(tried.number("CostOdds", 2, 2)).toBeCloseTo(direct, 2);
    expect(tried.number("CostOdds", 5, 2)).toBeGreaterThan(tried.number("CostOdds", 3, 2));
  });
});

function never(): never {
  throw new Error("no sum of lines comes out above its price");
}
