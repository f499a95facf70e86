import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COST_KINDS, TAX_BASES } from "../../../src/calc/money/costKinds";
import { buildPrice, type PriceParts } from "./priceBuildUp";

const plainJob: PriceParts = {
  costs: { material: 4321.55, labor: 2480, machine: 640, hauling: 310.4 },
  markups: { material: 0.25, labor: 0.4, machine: 0.15, hauling: 0.1 },
  overhead: { share: 0.12 },
  contingency: 0.05,
  taxRate: 0.0825,
  taxable: 4321.55,
  taxBase: "taxable lines at cost",
  roundTo: 0,
};

describe("buildPrice", () => {
  it("builds up line by line, each rounded to the cent", () => {
    // By hand: direct 4321.55 + 2480 + 640 + 310.40 = 7751.95
    // overhead 0.12 × 7751.95 = 930.234 -> 930.23; contingency 0.05 × 7751.95 = 387.5975 -> 387.60
    // material 4321.55 + 1080.3875 -> 1080.39 = 5401.94; labor 2480 + 992 = 3472; machine 640 + 96 = 736;
    // hauling 310.40 + 31.04 = 341.44; price 5401.94 + 3472 + 736 + 341.44 + 930.23 + 387.60 = 11269.21
    // tax 0.0825 × 4321.55 = 356.527875 -> 356.53; total 11625.74
    // gross margin (11269.21 - 7751.95 - 387.60) / 11269.21 = 3129.66 / 11269.21 = 0.277718
    const price = buildPrice(plainJob);
    expect(price).toMatchObject({
      direct: 775195,
      overhead: 93023,
      contingency: 38760,
      totalCost: 906978,
      beforeRounding: 1126921,
      rounding: 0,
      priceBeforeTax: 1126921,
      tax: 35653,
      priceTotal: 1162574,
    });
    expect(price.grossMargin).toBeCloseTo(0.277718, 6);
  });

  it("raises the price to the step and owns up to the difference", () => {
    const price = buildPrice({ ...plainJob, roundTo: 50 });
    expect(price).toMatchObject({ priceBeforeTax: 1130000, rounding: 3079 }); // 11269.21 -> 11300.00
    expect(
      buildPrice({
        ...plainJob,
        costs: { other: 100 },
        taxable: 0,
        overhead: { share: 0 },
        contingency: 0,
        roundTo: 50,
      }),
    ).toMatchObject({
      priceBeforeTax: 10000,
      rounding: 0,
    });
  });

  it("takes tax on the base that is picked", () => {
    const tax = (taxBase: PriceParts["taxBase"]) => buildPrice({ ...plainJob, taxBase }).tax;
    expect(tax("nothing")).toBe(0);
    expect(tax("materials with markup")).toBe(44566); // 0.0825 × 5401.94 = 445.66005
    expect(tax("whole price")).toBe(92971); // 0.0825 × 11269.21 = 929.709825
  });

  it("takes overhead per crew hour, with its markup", () => {
    const price = buildPrice({ ...plainJob, overhead: { perHour: 14.25, hours: 62 }, overheadMarkup: 0.1 });
    expect(price.overhead).toBe(88350); // 14.25 × 62 = 883.50
    // 11269.21 - 930.23 + 883.50 + 88.35
    expect(price.priceBeforeTax).toBe(1131083);
  });

  it("has no margin on no price", () => {
    const nothing = buildPrice({ ...plainJob, costs: {}, taxable: 0 });
    expect(nothing).toMatchObject({ priceBeforeTax: 0, tax: 0, grossMargin: 0 });
  });

  it("names what is out of range", () => {
    expect(() => buildPrice({ ...plainJob, contingency: 5 })).toThrow("contingency must be 0 to 1");
    expect(() => buildPrice({ ...plainJob, taxRate: 8.25 })).toThrow("tax rate must be 0 to 1");
    expect(() => buildPrice({ ...plainJob, markups: { labor: 40 } })).toThrow("labor markup must be 0 to 10");
    expect(() => buildPrice({ ...plainJob, costs: { material: Infinity } })).toThrow("material cost must be a finite");
  });

  it("keeps its accounts: the price is cost and margin, and no tax base taxes more than the price (fast-check)", () => {
    const money = fc.integer({ min: 0, max: 5_000_000 }).map((cents) => cents / 100);
    const share = fc.integer({ min: 0, max: 60 }).map((percent) => percent / 100);
    fc.assert(
      fc.property(
        fc.array(money, { minLength: 6, maxLength: 6 }),
        fc.array(share, { minLength: 6, maxLength: 6 }),
        share,
        share,
        fc.constantFrom(...TAX_BASES),
        fc.constantFrom(0, 1, 10, 50),
        (costs, markups, overhead, contingency, taxBase, roundTo) => {
          const price = buildPrice({
            costs: Object.fromEntries(COST_KINDS.map((kind, index) => [kind, costs[index]])),
            markups: Object.fromEntries(COST_KINDS.map((kind, index) => [kind, markups[index]])),
            overhead: { share: overhead },
            contingency,
            taxRate: 0.08,
            taxable: costs[0],
            taxBase,
            roundTo,
          });
          expect(price.direct).toBe(costs.reduce((sum, cost) => sum + Math.round(cost * 100), 0));
          expect(price.totalCost).toBe(price.direct + price.overhead + price.contingency);
          expect(price.priceBeforeTax).toBe(price.beforeRounding + price.rounding);
          expect(price.priceTotal).toBe(price.priceBeforeTax + price.tax);
          expect(price.rounding).toBeGreaterThanOrEqual(0);
          if (roundTo > 0) expect(price.priceBeforeTax % (roundTo * 100)).toBe(0);
          expect(price.priceBeforeTax).toBeGreaterThanOrEqual(price.totalCost);
          expect(price.tax).toBeLessThanOrEqual(Math.ceil(price.priceBeforeTax * 0.08));
        },
      ),
    );
  });
});
