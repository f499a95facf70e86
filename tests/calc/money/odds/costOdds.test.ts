import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { UncertainCost } from "../../../../src/calc/money/odds/betaPert";
import { costOdds, MOST_ITEMS } from "../../../../src/calc/money/odds/costOdds";
import { seeded } from "../../../seeded";

const items = (rows: readonly (readonly [number, number, number])[]): UncertainCost[] =>
  rows.map(([low, likely, high]) => ({ low, likely, high }));

describe("costOdds", () => {
  it("adds means and variances of beta-PERT items", () => {
    // By hand: (90 + 4 × 100 + 140) / 6 = 105, (105 - 90) (140 - 105) / 7 = 75; twice: 210 and √150 = 12.247
    const item = { low: 90, likely: 100, high: 140 };
    const odds = costOdds([item, item]);
    expect(odds).toMatchObject({ low: 180, likely: 200, high: 280, mean: 210 });
    expect(odds.spread).toBeCloseTo(12.247, 3);
  });

  it.each([0.5, 0.8, 0.9, 0.95, 0.99])("keeps one item with confidence %s as its own distribution says", (p) => {
    // By hand: likely at the low end, the density is 5 (1 - t)^4, the share above t is (1 - t)^5; at the high end mirrored.
    expect(costOdds(items([[100, 100, 200]]), p).atConfidence).toBeCloseTo(200 - 100 * (1 - p) ** 0.2, 1);
    expect(costOdds(items([[100, 200, 200]]), p).atConfidence).toBeCloseTo(100 + 100 * p ** 0.2, 1);
  });

  it.each([0.5, 0.8, 0.9, 0.95, 0.99])(
    "adds what single items keep with confidence %s where all are bad together",
    (p) => {
      const both = costOdds(
        items([
          [100, 100, 200],
          [0, 0, 50],
          [10, 10, 10],
        ]),
        p,
        1,
      );
      expect(both.atConfidence).toBeCloseTo(110 + 150 * (1 - (1 - p) ** 0.2), 1);
    },
  );

  it("reaches the bell curve with many items alike", () => {
    // By hand: mean 3, variance 3 × 3 / 7; forty: 120 and √(40 × 9 / 7) = 7.171. z of 0.9 is 1.2816 (NIST/SEMATECH
    // e-Handbook, table 1.3.6.7.1).
    const forty = Array.from({ length: 40 }, () => ({ low: 0, likely: 3, high: 6 }));
    expect(costOdds(forty, 0.9).atConfidence).toBeCloseTo(120 + 1.2816 * 7.171, 1);
  });

  it("never leaves the sums of low and high, and knows what is sure", () => {
    expect(costOdds(items([[10, 10, 10.6]]), 0.99).atConfidence).toBeLessThanOrEqual(10.6);
    expect(costOdds(items([[5, 5, 5]]), 0.9)).toMatchObject({ mean: 5, spread: 0, atConfidence: 5 });
    const sure = costOdds([...items([[5000, 5000, 5000]]), ...items([[100, 100, 200]])], 0.8);
    expect(sure.atConfidence).toBeCloseTo(5000 + 200 - 100 * 0.2 ** 0.2, 1);
    expect(costOdds(items([[0, 0, 0]])).atConfidence).toBe(0);
  });

  it("names an item that is out of order", () => {
    const good = { low: 1, likely: 2, high: 3 };
    expect(() => costOdds([good, { low: 3, likely: 2, high: 5 }])).toThrow(
      "item 2 must run from low to likely to high; got 3, 2, 5",
    );
    expect(() => costOdds([{ low: -1, likely: 2, high: 5 }])).toThrow("item 1: low must be 0 to");
    expect(() => costOdds([good], 1)).toThrow("confidence must be 0.5 to 0.99; got 1");
    expect(() => costOdds([good], 0.8, 1.2)).toThrow("correlation must be 0 to 1; got 1.2");
    expect(() => costOdds([{ low: 0, likely: NaN, high: 1 }])).toThrow("item 1 must run");
    expect(() => costOdds(Array.from({ length: MOST_ITEMS + 1 }, () => good))).toThrow("number of items must be 0 to");
  });

  it("costs more the surer one wants to be, and the more costs rise together (fast-check)", () => {
    const item = fc
      .array(fc.double({ min: 0, max: 1e5, noNaN: true }), { minLength: 3, maxLength: 3 })
      .map((values): UncertainCost => {
        const [low = 0, likely = 0, high = 0] = [...values].sort((a, b) => a - b);
        return { low, likely, high };
      });
    const chance = fc.double({ min: 0.5, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 8 }), chance, chance, chance, (list, a, b, rho) => {
        const sure = (confidence: number): number => costOdds(list, confidence, rho).atConfidence;
        expect(sure(Math.min(a, b))).toBeLessThanOrEqual(sure(Math.max(a, b)) * (1 + 1e-6) + 1e-6);
        expect(costOdds(list, 0.8, rho).spread).toBeGreaterThanOrEqual(costOdds(list).spread * (1 - 1e-3));
      }),
      { numRuns: 40 },
    );
  });

  it("answers within a tenth of a second, with as many items as it takes", () => {
    const many = Array.from({ length: MOST_ITEMS }, (_, i) => ({
      low: 80 + (i % 7),
      likely: 100,
      high: 130 + ((i * 37) % 90),
    }));
    costOdds(many, 0.8, 0.3);
    const times = [0, 1, 2, 3].map(() => {
      const before = process.cpuUsage();
      costOdds(many, 0.8, 0.3);
      // The processor's own time: the clock would count what else the machine is doing.
      return process.cpuUsage(before).user / 1000;
    });
    // Twice a tenth, because the machine that tests run on is slower while all of them run.
    expect(Math.min(...times)).toBeLessThan(200);
  });
});

/*
 * Sums of beta-PERT items that were drawn 10,000,000 times each with numpy 2.4.6 (lists invented), and worked out a second
 * time by Fourier convolution of the items' distributions: [items, correlation, spread, value at 50, 80, 90 and 95 %].
 */
const MILD: readonly (readonly [number, number, number])[] = [
  [80, 100, 130],
  [40, 50, 75],
  [200, 240, 300],
  [15, 20, 40],
  [60, 70, 85],
];
const MIXED: readonly (readonly [number, number, number])[] = [
  [10, 28, 30],
  [10, 12, 30],
  [5, 14, 15],
  [5, 6, 15],
  [100, 150, 170],
  [100, 110, 170],
];
const LONG_TAIL: readonly (readonly [number, number, number])[] = [
  [99, 100, 101],
  [49, 50, 51.5],
  [5, 10, 90],
  [20, 21, 22],
];
const TASKS: readonly (readonly [number, number, number])[] = [
  [4, 6, 12],
  [8, 10, 18],
  [2, 3, 8],
  [6, 8, 10],
  [1, 2, 6],
  [10, 14, 30],
  [3, 4, 6],
  [5, 8, 16],
];

describe("the cost that is kept", () => {
  it.each([
    ["five items of mild skew", MILD, 0, 22.789147, [490.24682, 510.63033, 521.02578, 529.28964]],
    ["the same that rise together", MILD, 0.3, 30.407381, [489.80625, 517.30358, 531.43022, 542.66289]],
    ["skew to both sides", MIXED, 0, 17.932855, [323.25816, 338.37926, 346.52124, 353.28479]],
    ["the same that rise together", MIXED, 0.3, 23.640802, [323.04001, 343.59052, 354.30988, 362.97596]],
    ["one long tail among sure things", LONG_TAIL, 0, 13.009802, [190.74443, 204.13055, 212.26019, 219.13278]],
    ["eight tasks that rise together", TASKS, 0.3, 7.5831447, [60.297375, 67.257438, 71.056478, 74.203579]],
  ] as const)("is that of ten million draws: %s", (_, rows, correlation, spread, kept) => {
    const list = items(rows);
    expect(Math.abs(costOdds(list, 0.8, correlation).spread / spread - 1)).toBeLessThan(0.0005);
    [0.5, 0.8, 0.9, 0.95].forEach((chance, index) => {
      const value = costOdds(list, chance, correlation).atConfidence;
      const expected = kept[index] ?? NaN;
      expect(Math.abs(value / expected - 1), `${value} at ${chance}, ${expected} drawn`).toBeLessThan(0.0003);
    });
  });

  // 200,000 draws from a seed: the share of draws below a value is right to 0.1 % (standard error at 80 %), 0.5 % allowed.
  const DRAWS = 200_000;
  it.each([
    ["one skewed item", [[900, 950, 2100]]],
    [
      "four items skewed up",
      [
        [900, 950, 2100],
        [400, 410, 700],
        [1500, 1520, 2600],
        [800, 800, 1900],
      ],
    ],
    ["ten symmetric items", Array.from({ length: 10 }, () => [90, 100, 110])],
    [
      "one that outweighs all",
      [
        [0, 100, 5000],
        [10, 11, 12],
        [10, 11, 12],
      ],
    ],
    [
      "skewed down and up",
      [
        [250, 315, 320],
        [1100, 1490, 1500],
        [200, 200, 900],
      ],
    ],
  ] as const)("is kept in the stated share of seeded draws: %s", (_, rows) => {
    const list = items(rows as unknown as readonly (readonly [number, number, number])[]);
    const sums = simulate(list, DRAWS);
    for (const chance of [0.5, 0.8, 0.95]) {
      const { atConfidence } = costOdds(list, chance);
      const kept = sums.filter((sum) => sum <= atConfidence).length / DRAWS;
      expect(Math.abs(kept - chance), `${kept} kept of ${chance}`).toBeLessThan(0.005);
    }
  });

  it.each([0.1, 0.3, 0.6, 0.9, 0.99])(
    "is kept in the stated share of seeded draws where scores are correlated by %s",
    (rho) => {
      // Likely at the low end, the cost at score z is high - width (1 - Φ(z))^(1/5): no table is needed to draw it. The
      // share of normal draws above z is the rank of the draw, so Φ is counted, not computed.
      const widths = [100, 60, 250, 40, 10, 90];
      const random = seeded(11);
      const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
      const sums = new Float64Array(DRAWS);
      const common = Float64Array.from({ length: DRAWS }, normal);
      for (const width of widths) {
        const scores = common.map((z) => Math.sqrt(rho) * z + Math.sqrt(1 - rho) * normal());
        const order = Uint32Array.from(scores.keys()).sort((a, b) => (scores[a] ?? 0) - (scores[b] ?? 0));
        order.forEach(
          (draw, rank) => (sums[draw] = (sums[draw] ?? 0) + width * (1 - (1 - (rank + 0.5) / DRAWS) ** 0.2)),
        );
      }
      const list = widths.map((width) => ({ low: 0, likely: 0, high: width }));
      for (const chance of [0.5, 0.8, 0.95]) {
        const { atConfidence } = costOdds(list, chance, rho);
        const kept = sums.filter((sum) => sum <= atConfidence).length / DRAWS;
        expect(Math.abs(kept - chance), `${kept} kept of ${chance}`).toBeLessThan(0.005);
      }
    },
  );
});

/** Sums of `draws` rounds; the same every time. */
function simulate(list: readonly UncertainCost[], draws: number): number[] {
  const random = seeded(20310528);
  // Beta(a, b) of beta-PERT: mean a / (a + b), a + b = 6.
  const shapes = list.map(({ low, likely, high }) => {
    const a = 1 + (4 * (likely - low)) / (high - low);
    return { low, width: high - low, a, b: 6 - a };
  });
  return Array.from({ length: draws }, () =>
    shapes.reduce((sum, { low, width, a, b }) => {
      const x = gamma(a, random);
      return sum + low + (width * x) / (x + gamma(b, random));
    }, 0),
  );
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
