import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactly } from "../../../src/calc/stone/density";
import { boulderMix, type MixSize } from "../../../src/calc/stone/mix";
import { LB_PER_FT3 } from "../../../src/calc/tables/densities";

const EASY = exactly(2600);
const mean = fc.double({ min: 0.05, max: 1.5, noNaN: true });
const sizes = fc.array(fc.record({ size: mean, part: fc.double({ min: 0.01, max: 1, noNaN: true }) }), {
  minLength: 1,
  maxLength: 6,
});

function shared(rows: readonly { size: number; part: number }[]): MixSize[] {
  const sum = rows.reduce((all, { part }) => all + part, 0);
  return rows.map(({ size, part }) => ({ size, share: part / sum }));
}

describe("boulderMix", () => {
  it("counts whole stones, and says the least and the most that one weighs", () => {
    // By hand, k = (1 + π/6) / 2 = 0.761799: 0.761799 × 2,600 × 0.2³ = 15.845 kg, × 0.5³ = 247.585 kg.
    // Biggest first: 1500 / 247.585 = 6.06, so 6, which is 14.5 kg short; 500 / 15.845 = 31.56, where 32 end at -7.5 and 31 at -23.3.
    const [small, big] = boulderMix(
      2000,
      [
        { size: 0.2, share: 0.25 },
        { size: 0.5, share: 0.75 },
      ],
      { low: 2500, usual: 2600, high: 2700 },
    );
    expect(small).toMatchObject({ weight: 500, count: 32, tooHeavyByHand: false });
    expect(small?.each).toBeCloseTo(15.845, 3);
    expect(big).toMatchObject({ weight: 1500, count: 6, tooHeavyByHand: true });
    expect(big?.each).toBeCloseTo(247.585, 3);
    // As an ellipsoid of the lightest π/6 × 2,500 × 0.2³ = 10.472 kg; as a box of the heaviest 2,700 × 0.2³ = 21.6 kg.
    expect(small?.light).toBeCloseTo(10.472, 3);
    expect(small?.heavy).toBeCloseTo(21.6, 9);
  });

  it("neither gains nor loses a stone where the count is whole", () => {
    const each = (Math.PI / 6) * 2600 * 0.3 ** 3;
    expect(boulderMix(each * 7, [{ size: 0.3, share: 1 }], EASY, 23, "rounded")[0]?.count).toBe(7);
  });

  it("judges by hand or by machine on the heavy side, at the limit of the user", () => {
    // A 10 in fieldstone: as a ball of 165 lb/ft³ it is 49.996 lb and would pass 50; as a box of 165 it is 95.5 lb, of 170, 98.4 lb.
    const fieldstone = { low: 150 * LB_PER_FT3, usual: 165 * LB_PER_FT3, high: 170 * LB_PER_FT3 };
    const hand = (limit: number) =>
      boulderMix(1000, [{ size: 0.254, share: 1 }], fieldstone, limit * 0.45359237, "rounded")[0];
    expect((hand(50)?.each ?? 0) / 0.45359237).toBeCloseTo(49.996, 3);
    expect((hand(50)?.heavy ?? 0) / 0.45359237).toBeCloseTo(98.38, 2);
    expect([50, 73, 98, 99].map((limit) => hand(limit)?.tooHeavyByHand)).toEqual([true, true, true, false]);
    // A 28 in granite passed a machine of 1,500 lb at 1,100 lb; at 2.65 t/m³ its box weighs 2,102 lb: (28/12)³ × 165.43.
    const [granite] = boulderMix(5000, [{ size: 28 * 0.0254, share: 1 }], exactly(2650));
    expect((granite?.heavy ?? 0) / 0.45359237).toBeCloseTo(2102, 0);
  });

  it("gives weights that add up to the total, and takes rounded shares", () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0, max: 100_000, noNaN: true }), (rows, total) => {
        const weight = boulderMix(total, shared(rows), exactly(2650)).reduce((all, part) => all + part.weight, 0);
        expect(Math.abs(weight - total)).toBeLessThanOrEqual(1e-9 * Math.max(1, total));
      }),
      { seed: 18 },
    );
    const thirds = [0.333, 0.333, 0.333].map((share, i) => ({ size: 0.2 + i / 10, share }));
    expect(boulderMix(999, thirds, exactly(2650)).map((part) => part.weight)).toEqual(
      [333, 333, 333].map((w) => expect.closeTo(w, 9)),
    );
  });

  it("counts within one stone of each share, and all stones within half of the biggest of the total", () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0, max: 100_000, noNaN: true }), (rows, total) => {
        const parts = boulderMix(total, shared(rows), exactly(2650));
        for (const { count, each, weight } of parts) {
          expect(Math.abs(count * each - weight), `${count} of ${each} kg for ${weight} kg`).toBeLessThan(each);
        }
        const counted = parts.reduce((all, { count, each }) => all + count * each, 0);
        const biggest = Math.max(...parts.map(({ each }) => each));
        expect(Math.abs(counted - total), `${counted} kg for ${total} kg`).toBeLessThanOrEqual(biggest * 0.500001);
      }),
      { seed: 18 },
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
        EASY,
      ),
    ).toThrow("mix shares must add up to 100%; they add up to 90%");
    expect(() => boulderMix(1000, [], EASY)).toThrow("they add up to 0%");
    expect(() => boulderMix(1000, [{ size: 0, share: 1 }], EASY)).toThrow("size must be 0.01 to 5 m; got 0 m");
    expect(() => boulderMix(1000, [{ size: 0.2, share: 1 }], EASY, -1)).toThrow("hand limit must be 0 to 100 kg");
    expect(() => boulderMix(-1, [{ size: 0.2, share: 1 }], EASY)).toThrow("weight must be 0 to 10000000 kg");
  });
});
