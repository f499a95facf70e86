import { describe, expect, it } from "vitest";
import { fromCents, lineCents, sumCents, toCents } from "../../src/calc/money/cents";
import { costOdds } from "../../src/calc/money/odds/costOdds";
import { marginOf, markupFor } from "../../src/calc/money/margin";
import { orderQuantity } from "../../src/calc/money/orderQuantity";
import { buildPrice, shareOfCents } from "../calc/money/priceBuildUp";
import { expectCase, expectUnlike, given, arithmeticCase, arithmeticCases, type Case } from "./cases";

const TOPIC = "15 business arithmetic";
const named = (cases: readonly Case[]): [string, Case][] => cases.map((c) => [c.id, c]);

describe("business arithmetic", () => {
  it.each(named(arithmeticCases(TOPIC, "BU-MM")))("%s: margin and price of a markup", (_, c) => {
    const markup = given(c.inputs, "markup");
    expectCase(c, "margin", marginOf(markup));
    expectCase(c, "price", given(c.inputs, "cost") * (1 + markup));
    expect(markupFor(given(c.expected, "margin"))).toBeCloseTo(markup, 4);
  });

  it.each(named(arithmeticCases(TOPIC, "BU-GM")))("%s: price for a margin, and the price of mixing them up", (_, c) => {
    const margin = given(c.inputs, "margin");
    const cost = given(c.inputs, "cost");
    expectCase(c, "price", cost * (1 + markupFor(margin)));
    expectCase(c, "wrongIfUsedAsMarkup", cost * (1 + margin));
  });

  it("BU-BURD: a burdened rate, overhead on it, price at the margin", () => {
    const c = arithmeticCase("BU-BURD");
    const rate = given(c.inputs, "wage") * (1 + given(c.inputs, "burden"));
    const labor = fromCents(lineCents(given(c.inputs, "hours"), rate));
    expectCase(c, "burdenedRate", rate);
    expectCase(c, "labourCost", labor);
    const markup = markupFor(given(c.inputs, "margin"));
    const price = buildPrice({
      costs: { labor },
      markups: { labor: markup },
      overhead: { share: given(c.inputs, "overhead") },
      overheadMarkup: markup,
      contingency: 0,
      taxRate: 0,
      taxBase: "nothing",
      roundTo: 0,
    });
    expectCase(c, "withOverhead", fromCents(price.totalCost));
    expectCase(c, "price", fromCents(price.priceBeforeTax));
  });

  it("BU-PERT-02: one activity", () => {
    const c = arithmeticCase("BU-PERT-02");
    const [low, likely, high] = ["O", "M", "P"].map((name) => given(c.inputs, name)) as [number, number, number];
    const odds = costOdds([{ low, likely, high }]);
    // Its spread, (high - low) / 6, is the estimate by rule of thumb; COSTODDS has that of the distribution itself.
    expectCase(c, "mean", odds.mean);
  });

  it("BU-PERT-03: activities added up", () => {
    const c = arithmeticCase("BU-PERT-03");
    const means = c.inputs["means"]?.value as number[];
    const spreads = c.inputs["sds"]?.value as number[];
    // Symmetric items with the means and spreads of the case: likely = mean, low and high √7 spreads off, because the
    // variance of beta-PERT is (mean - low) (high - mean) / 7.
    const odds = costOdds(
      means.map((likely, index) => {
        const reach = Math.sqrt(7) * (spreads[index] ?? 0);
        return { low: likely - reach, likely, high: likely + reach };
      }),
    );
    expectCase(c, "total", odds.mean);
    expectCase(c, "sd", odds.spread);
  });

  it("BU-ROUND: rounding per line", () => {
    const c = arithmeticCase("BU-ROUND");
    const line = lineCents(given(c.inputs, "qty"), given(c.inputs, "unit"));
    expectCase(c, "lineHalfUp", fromCents(line));
    expectCase(c, "sumOfRounded", fromCents(sumCents([line, line, line])));
    // Rounding only the sum, as this project never does, loses a cent.
    expectCase(c, "roundedSum", fromCents(lineCents(3 * given(c.inputs, "qty"), given(c.inputs, "unit"))));
  });

  it.each(named(arithmeticCases(TOPIC, "BU-PACK")))("%s: whole packs", (_, c) => {
    const pack = given(c.inputs, "pack");
    expectCase(c, "packs", orderQuantity(given(c.inputs, "need"), 0, pack) / pack);
  });

  it("BU-WASTE: waste is an add-on", () => {
    const c = arithmeticCase("BU-WASTE");
    const order = orderQuantity(given(c.inputs, "net"), given(c.inputs, "waste"), 0.0001);
    expectCase(c, "addOn", order);
    expectUnlike(c, "yieldBasis", order);
  });

  it("BU-TAX: tax on materials only", () => {
    const c = arithmeticCase("BU-TAX");
    const price = buildPrice({
      costs: { material: given(c.inputs, "materials"), labor: given(c.inputs, "labor") },
      markups: {},
      overhead: { share: 0 },
      contingency: 0,
      taxRate: given(c.inputs, "rate"),
      taxable: given(c.inputs, "materials"),
      taxBase: "taxable lines at cost",
      roundTo: 0,
    });
    expectCase(c, "tax", fromCents(price.tax));
    expectCase(c, "total", fromCents(price.priceTotal));
    expect(price.tax).toBe(shareOfCents(toCents(given(c.inputs, "materials")), given(c.inputs, "rate")));
  });
});
