import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boulderMix } from "../../../src/calc/stone/mix";

describe("boulderMix", () => {
  it("counts whole stones and says which are too heavy to lift", () => {
    // By hand: π/6 × 2,600 × 0.2³ = 10.89 kg; 500 / 10.89 = 45.9, so 46. π/6 × 2,600 × 0.5³ = 170.17 kg; 1500 / 170.17 = 8.8, so 9.
    const [small, big] = boulderMix(
      2000,
      [
        { size: 0.2, share: 0.25 },
        { size: 0.5, share: 0.75 },
      ],
      2600,
    );
    expect(small).toMatchObject({ weight: 500, count: 46, tooHeavyByHand: false });
    expect(small?.each).toBeCloseTo(10.891, 3);
    expect(big).toMatchObject({ weight: 1500, count: 9, tooHeavyByHand: true });
    expect(big?.each).toBeCloseTo(170.17, 2);
  });

  it("does not gain a stone where the count is whole", () => {
    const each = (Math.PI / 6) * 2600 * 0.3 ** 3;
    expect(boulderMix(each * 7, [{ size: 0.3, share: 1 }], 2600)[0]?.count).toBe(7);
  });

  it("keeps the limit of the user", () => {
    const mix = [{ size: 0.3, share: 1 }]; // 36.8 kg
    expect(boulderMix(1000, mix, 2600)[0]?.tooHeavyByHand).toBe(true);
    expect(boulderMix(1000, mix, 2600, 40)[0]?.tooHeavyByHand).toBe(false);
  });

  it("gives weights that add up to the total, counts that suffice, and takes rounded shares", () => {
    const sizes = fc.array(
      fc.record({
        size: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
        part: fc.double({ min: 0.01, max: 1, noNaN: true }),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(sizes, fc.double({ min: 0, max: 100_000, noNaN: true }), (rows, total) => {
        const sum = rows.reduce((all, { part }) => all + part, 0);
        const parts = boulderMix(
          total,
          rows.map(({ size, part }) => ({ size, share: part / sum })),
          2650,
        );
        const weight = parts.reduce((all, part) => all + part.weight, 0);
        expect(Math.abs(weight - total)).toBeLessThanOrEqual(1e-9 * Math.max(1, total));
        for (const { count, each, weight: needed } of parts) {
          expect(count * each).toBeGreaterThanOrEqual(needed - 1e-6 * each);
          expect((count - 1) * each).toBeLessThan(needed + 1e-6 * each);
        }
      }),
    );
    const thirds = [0.333, 0.333, 0.333].map((share, i) => ({ size: 0.2 + i / 10, share }));
    expect(boulderMix(999, thirds, 2650).map((part) => part.weight)).toEqual(
      [333, 333, 333].map((w) => expect.closeTo(w, 9)),
    );
  });

  it("refuses shares that do not add up, and stones of no size", () => {
    expect(() =>
      boulderMix(
        1000,
        [
          { size: 0.2, share: 0.3 },
          { size: 0.3, share: 0.6 },
        ],
        2600,
      ),
    ).toThrow("mix shares must add up to 100 %; they add up to 90 %");
    expect(() => boulderMix(1000, [], 2600)).toThrow("they add up to 0 %");
    expect(() => boulderMix(1000, [{ size: 0, share: 1 }], 2600)).toThrow("size must be 0.01 to 5 m; got 0 m");
    expect(() => boulderMix(1000, [{ size: 0.2, share: 1 }], 2600, -1)).toThrow("hand limit must be 0 to 100 kg");
    expect(() => boulderMix(-1, [{ size: 0.2, share: 1 }], 2600)).toThrow("weight must be 0 to 10000000 kg");
  });
});
