import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOutSteps, LOWEST_DROP, SHORTEST_TREAD } from "../../../src/calc/levels/steps";

const EIGHTH = 0.0254 / 8;
const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

const job = fc.record({
  count: fc.integer({ min: 1, max: 20 }),
  fall: fc.double({ min: 0.6, max: 10, noNaN: true }),
  run: fc.double({ min: 1.2, max: 60, noNaN: true }),
  unevenness: fc.double({ min: 0, max: 1, noNaN: true }),
  seed: fc.integer({ min: 1, max: 1_000_000 }),
  grid: fc.constantFrom(EIGHTH, 0.005),
});

describe("layOutSteps", () => {
  it("adds up to the fall and the run, every part at least its least, all but the last on the grid", () => {
    fc.assert(
      fc.property(job, ({ fall, run, count, unevenness, seed, grid }) => {
        const steps = layOutSteps(fall, run, count, unevenness, seed, grid);
        expect(steps).toHaveLength(count);
        expect(Math.abs(sum(steps.map((s) => s.drop)) - fall)).toBeLessThan(1e-12);
        expect(Math.abs(sum(steps.map((s) => s.tread)) - run)).toBeLessThan(1e-11);
        steps.forEach(({ drop, tread }, i) => {
          expect(drop).toBeGreaterThanOrEqual(LOWEST_DROP - 1e-9);
          expect(tread).toBeGreaterThanOrEqual(SHORTEST_TREAD - 1e-9);
          if (i === count - 1) return;
          expect(Math.abs(drop / grid - Math.round(drop / grid))).toBeLessThan(1e-6);
          expect(Math.abs(tread / grid - Math.round(tread / grid))).toBeLessThan(1e-6);
        });
      }),
    );
  });

  it("repeats itself by seed, and changes with it", () => {
    const layout = (seed: number): string => JSON.stringify(layOutSteps(2, 6, 6, 0.5, seed, EIGHTH));
    expect(layout(17)).toBe(layout(17));
    expect(new Set(Array.from({ length: 50 }, (_, i) => layout(i + 1))).size).toBe(50);
  });

  it("makes all alike without unevenness, within a step of the grid", () => {
    // By hand: 2.4 m / 6 = 0.4 m and 9 m / 6 = 1.5 m, both whole multiples of 5 mm.
    for (const { drop, tread } of layOutSteps(2.4, 9, 6, 0, 3, 0.005)) {
      expect(drop).toBeCloseTo(0.4, 12);
      expect(tread).toBeCloseTo(1.5, 12);
    }
  });

  it("never lays two neighbours alike, and spreads wider the more uneven it is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const drops = (unevenness: number): number[] =>
          layOutSteps(3, 9, 8, unevenness, seed, 0.001).map((step) => step.drop);
        const wild = drops(0.8);
        wild.forEach((drop, i) => {
          const next = wild[i + 1];
          if (next !== undefined) expect(Math.abs(drop - next)).toBeGreaterThan(0.02);
        });
        const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
        expect(spread(wild)).toBeGreaterThan(spread(drops(0.2)));
      }),
    );
  });

  it("puts longer treads behind higher drops, as step and pool streams do", () => {
    const steps = layOutSteps(20, 60, 100, 1, 5, 0.001);
    const mean = sum(steps.map((s) => s.tread)) / steps.length;
    const median = [...steps].sort((a, b) => a.drop - b.drop)[50]?.drop ?? 0;
    const high = steps.filter((s) => s.drop > median).map((s) => s.tread);
    expect(sum(high) / high.length).toBeGreaterThan(1.1 * mean);
  });

  it("refuses more drops than the fall or the run allows, and says how many it does", () => {
    // By hand: 0.3 m / 25 mm = 12 drops; 0.3 m / 25.4 mm (8 eighths of an inch) = 11; 0.4 m / 50 mm = 8 treads.
    expect(() => layOutSteps(0.3, 9, 13, 0.3, 1, 0.005)).toThrow(
      "drops must be at most 12: a fall of 0.3 m (0.9843 ft) gives each no drop of at least 25 mm (1 in); got 13",
    );
    expect(() => layOutSteps(0.3, 9, 12, 0.3, 1, EIGHTH)).toThrow("drops must be at most 11");
    expect(() => layOutSteps(3, 0.4, 9, 0.3, 1, 0.005)).toThrow("drops must be at most 8: a run of 0.4 m");
    expect(() => layOutSteps(0.02, 1, 1, 0.3, 1, 0.005)).toThrow("fall must leave room for one drop of at least 25 mm");
    expect(layOutSteps(0.3, 9, 12, 1, 1, 0.005).every((s) => Math.abs(s.drop - 0.025) < 1e-9)).toBe(true);
  });

  it("refuses what is no layout", () => {
    expect(() => layOutSteps(NaN, 1, 1, 0.3, 1, 0.005)).toThrow("fall must be a finite number");
    expect(() => layOutSteps(1, -1, 1, 0.3, 1, 0.005)).toThrow("run must be 0 to 300 m");
    expect(() => layOutSteps(1, 1, 2.5, 0.3, 1, 0.005)).toThrow("drops must be a whole number; got 2.5");
    expect(() => layOutSteps(1, 1, 0, 0.3, 1, 0.005)).toThrow("drops must be 1 to 100; got 0");
    expect(() => layOutSteps(1, 1, 1, 1.3, 1, 0.005)).toThrow("unevenness must be 0 to 1");
    expect(() => layOutSteps(1, 1, 1, 0.3, 0, 0.005)).toThrow("seed must be 1 to 1000000");
  });
});
