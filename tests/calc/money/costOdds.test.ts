import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { costOdds, type UncertainCost } from "../../../src/calc/money/costOdds";

describe("costOdds", () => {
  it("adds means, and spreads as squares", () => {
    // By hand: (90 + 4 × 100 + 140) / 6 = 105, (140 - 90) / 6 = 8.3333; twice: 210 and √2 × 8.3333 = 11.785
    const item = { low: 90, likely: 100, high: 140 };
    const odds = costOdds([item, item]);
    expect(odds).toMatchObject({ low: 180, likely: 200, high: 280, mean: 210 });
    expect(odds.spread).toBeCloseTo(11.785, 3);
  });

  // z of the standard normal distribution (NIST/SEMATECH e-Handbook, table 1.3.6.7.1, read between its rows).
  it.each([
    [0.5, 0],
    [0.8, 0.8416],
    [0.9, 1.2816],
    [0.95, 1.6449],
    [0.99, 2.3263],
  ])("keeps the cost with confidence %s at mean + %s spreads", (confidence, z) => {
    const items = Array.from({ length: 20 }, () => ({ low: 0, likely: 3, high: 6 })); // mean 60, spread √20 = 4.4721
    expect(costOdds(items, confidence).atConfidence).toBeCloseTo(60 + z * Math.sqrt(20), 3);
  });

  it("never leaves the sums of low and high", () => {
    expect(costOdds([{ low: 10, likely: 10, high: 10.6 }], 0.99).atConfidence).toBeLessThanOrEqual(10.6);
    expect(costOdds([{ low: 5, likely: 5, high: 5 }], 0.9)).toMatchObject({ mean: 5, spread: 0, atConfidence: 5 });
  });

  it("names an item that is out of order", () => {
    const good = { low: 1, likely: 2, high: 3 };
    expect(() => costOdds([good, { low: 3, likely: 2, high: 5 }])).toThrow(
      "item 2 must run from low to likely to high; got 3, 2, 5",
    );
    expect(() => costOdds([{ low: -1, likely: 2, high: 5 }])).toThrow("item 1: low must be 0 to");
    expect(() => costOdds([good], 1)).toThrow("confidence must be 0.5 to 0.99; got 1");
    expect(() => costOdds([{ low: 0, likely: NaN, high: 1 }])).toThrow("item 1 must run");
  });

  it("costs more the surer one wants to be (fast-check)", () => {
    const item = fc
      .array(fc.double({ min: 0, max: 1e5, noNaN: true }), { minLength: 3, maxLength: 3 })
      .map((values): UncertainCost => {
        const [low = 0, likely = 0, high = 0] = [...values].sort((a, b) => a - b);
        return { low, likely, high };
      });
    const chance = fc.double({ min: 0.5, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 10 }), chance, chance, (items, a, b) => {
        const sure = (confidence: number): number => costOdds(items, confidence).atConfidence;
        expect(sure(Math.min(a, b))).toBeLessThanOrEqual(sure(Math.max(a, b)) + 1e-6);
      }),
    );
  });
});

/*
 * Monte Carlo: each item is drawn 100,000 times from a beta distribution between its low and high that has the PERT
 * mean and spread, and the draws are added. The sum's own mean, spread and percentiles need no normal curve.
 */
describe("costOdds against a Monte Carlo", () => {
  const items: UncertainCost[] = [
    { low: 900, likely: 1200, high: 2100 },
    { low: 400, likely: 450, high: 700 },
    { low: 1500, likely: 1600, high: 2600 },
    { low: 250, likely: 300, high: 320 },
    { low: 800, likely: 1000, high: 1900 },
    { low: 1100, likely: 1400, high: 1500 },
    { low: 200, likely: 260, high: 500 },
    { low: 600, likely: 640, high: 900 },
  ];
  const sums = simulate(items, 100_000, "as PERT states it");
  const odds = costOdds(items);

  it("agrees on mean and spread", () => {
    const mean = sums.reduce((total, each) => total + each, 0) / sums.length;
    const spread = Math.sqrt(sums.reduce((total, each) => total + (each - mean) ** 2, 0) / (sums.length - 1));
    // Standard errors: spread / √100000 of the mean (0.3 %), about 0.25 % of the spread; four of each allowed.
    expect(Math.abs(odds.mean - mean)).toBeLessThan(0.013 * spread);
    expect(Math.abs(odds.spread / spread - 1)).toBeLessThan(0.01);
  });

  it.each([0.5, 0.7, 0.8, 0.9, 0.95])(
    "agrees on the cost kept with confidence %s to a tenth of the spread",
    (chance) => {
      // The sum of eight skewed items is still a little skewed: that is what the normal curve leaves out.
      const kept = sums[Math.floor(chance * sums.length)] ?? NaN;
      expect(Math.abs(costOdds(items, chance).atConfidence - kept)).toBeLessThan(0.1 * odds.spread);
    },
  );

  it("stays within a quarter of the spread when items follow the wider beta-PERT shape", () => {
    const wider = simulate(items, 100_000, "beta-PERT");
    const kept = wider[Math.floor(0.9 * wider.length)] ?? NaN;
    expect(Math.abs(costOdds(items, 0.9).atConfidence - kept)).toBeLessThan(0.25 * odds.spread);
  });
});

/** Sorted sums of `draws` rounds; the same every time. */
function simulate(items: readonly UncertainCost[], draws: number, shape: "as PERT states it" | "beta-PERT"): number[] {
  const random = seeded(20310528);
  const shapes = items.map(({ low, likely, high }) => {
    const mean = (low + 4 * likely + high) / 6;
    const m = (mean - low) / (high - low);
    // Beta(a, b) has mean a / (a + b) and variance m (1 - m) / (a + b + 1).
    const weight = shape === "beta-PERT" ? 6 : m * (1 - m) * 36 - 1;
    return { low, width: high - low, a: m * weight, b: (1 - m) * weight };
  });
  return Array.from({ length: draws }, () =>
    shapes.reduce((sum, { low, width, a, b }) => {
      const x = gamma(a, random);
      return sum + low + (width * x) / (x + gamma(b, random));
    }, 0),
  ).sort((x, y) => x - y);
}

/** Marsaglia and Tsang, ACM TOMS 26 (2000): a gamma value of shape k; below 1 through k + 1. */
function gamma(k: number, random: () => number): number {
  if (k < 1) return gamma(k + 1, random) * random() ** (1 / k);
  const d = k - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** Mulberry32: a small generator whose numbers are the same on every machine. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
