import { describe, expect, it } from "vitest";
import type { Effect } from "../../../src/job/range/draws";
import { placesNearEnds, placesToLook } from "../../../src/job/range/looks";
import { spreadOf } from "../../../src/job/range/spread";
import { TENTH } from "./tenth";

/** A fact that moves the price by so much at its tenths, in proportion. */
const straight = (name: string, change: number, common?: Effect["common"]): Effect => ({
  name,
  points: [
    [-TENTH, -change],
    [TENTH, change],
  ],
  jumps: false,
  common,
});

/** Share of two normal numbers' plane on which a price lies between two others, by numeric integration. */
function shareBetween(price: (places: readonly number[]) => number, low: number, high: number): number {
  const STEP = 0.02;
  let share = 0;
  for (let a = -5; a < 5; a += STEP) {
    for (let b = -5; b < 5; b += STEP) {
      const value = price([a, b]);
      if (value >= low && value <= high) share += (Math.exp(-(a * a + b * b) / 2) / (2 * Math.PI)) * STEP * STEP;
    }
  }
  return share;
}

/*
 * Sums of normal numbers are normal, their variances add: with changes a and b at the tenths the sum's tenths lie at
 * √(a² + b²), and with correlation r at √(a² + b² + 2 r a b).
 */
describe("the spread of a price", () => {
  it("of one fact is what the fact does", () => {
    const { low, high, shares } = spreadOf([straight("one", 1000)]);
    expect(low).toBeCloseTo(-1000, -0.7);
    expect(high).toBeCloseTo(1000, -0.7);
    expect(shares.get("one")).toBeCloseTo(1, 6);
  });

  it("of a fact that does nothing is nothing", () => {
    expect(spreadOf([straight("none", 0)])).toMatchObject({ low: 0, high: 0 });
    expect(spreadOf([])).toMatchObject({ low: 0, high: 0 });
  });

  it("of 300 and 400 is 500, and they carry 36 and 64 %", () => {
    const { low, high, shares } = spreadOf([straight("three", 300), straight("four", 400)]);
    expect(Math.abs(low + 500)).toBeLessThan(12);
    expect(Math.abs(high - 500)).toBeLessThan(12);
    expect(Math.abs((shares.get("three") ?? 0) - 0.36)).toBeLessThan(0.02);
    expect(Math.abs((shares.get("four") ?? 0) - 0.64)).toBeLessThan(0.02);
  });

  it("of 300 and 400 that go together by a half is √(300² + 400² + 300 x 400) = 608", () => {
    const common = { name: "weather", share: 0.5 };
    const { low, high } = spreadOf([straight("three", 300, common), straight("four", 400, common)]);
    expect(Math.abs(low + 608.3)).toBeLessThan(15);
    expect(Math.abs(high - 608.3)).toBeLessThan(15);
  });

  it("of ten alike is √10 of one", () => {
    const { high } = spreadOf(Array.from({ length: 10 }, (_, index) => straight(`fact ${index}`, 100)));
    expect(Math.abs(high - 316.2)).toBeLessThan(8);
  });

  it("of two that multiply: (1 + x)(1 + y) with 10 % at the tenths keeps within 1 % of the product's tenths", () => {
    // By numeric integration of the product of two normals with standard deviation 0.07803: 0.8617 and 1.1443.
    const times = (name: string): Effect => ({
      name,
      points: [
        [-TENTH, Math.log(0.9)],
        [TENTH, Math.log(1.1)],
      ],
      jumps: false,
    });
    const { low, high } = spreadOf([times("x"), times("y")]);
    expect(Math.abs(Math.exp(low) - 0.8617)).toBeLessThan(0.01);
    expect(Math.abs(Math.exp(high) - 1.1443)).toBeLessThan(0.01);
  });

  it("goes to what the whole does where that was looked at: three times as much as the facts say one by one", () => {
    const effects = [straight("three", 300), straight("four", 400)];
    const looks = placesToLook(effects).map((places) => {
      const [a = 0, b = 0] = places;
      return { places, whole: (3 * (300 * a + 400 * b)) / TENTH };
    });
    const { low, high } = spreadOf(effects, looks);
    expect(Math.abs(low + 1500)).toBeLessThan(36);
    expect(Math.abs(high - 1500)).toBeLessThan(36);
  });

  it("leaves out looks that came to nothing", () => {
    const effects = [straight("three", 300), straight("four", 400)];
    const looks = placesToLook(effects).map((places, look) => {
      const [a = 0, b = 0] = places;
      return { places, whole: look % 4 === 0 ? undefined : (300 * a + 400 * b) / TENTH };
    });
    const { low, high } = spreadOf(effects, looks);
    expect(Math.abs(low + 500)).toBeLessThan(12);
    expect(Math.abs(high - 500)).toBeLessThan(12);
  });

  it("finds a jump that no fact shows alone: 900 more where both are over 0.5, which is one draw in ten", () => {
    // P(z > 0.5) = 0.3085, so of both 0.0952. How much lies between the ends is integrated above.
    const effects = [straight("three", 300), straight("four", 400)];
    const whole = ([a = 0, b = 0]: readonly number[]): number =>
      (300 * a + 400 * b) / TENTH + (a > 0.5 && b > 0.5 ? 900 : 0);
    const first = placesToLook(effects).map((places) => ({ places, whole: whole(places) }));
    const next = placesNearEnds(effects, first).map((places) => ({ places, whole: whole(places) }));
    expect(next.length).toBeGreaterThan(30);
    const { low, high } = spreadOf(effects, [...first, ...next]);
    const kept = shareBetween(whole, low, high);
    expect(Math.abs(kept - 0.8), `${kept} between ${low} and ${high}`).toBeLessThan(0.02);
  });

  it("looks near the ends once it knows about where they are", () => {
    const effects = [straight("three", 300), straight("four", 400)];
    const whole = ([a = 0, b = 0]: readonly number[]): number => (300 * a + 400 * b) / TENTH + 60 * Math.sin(9 * a * b);
    const first = placesToLook(effects).map((places) => ({ places, whole: whole(places) }));
    const far = (looks: readonly (readonly number[])[]): number =>
      looks.filter((places) => Math.abs(Math.abs(whole(places)) - 500) > 200).length / looks.length;
    const next = placesNearEnds(effects, first);
    // Of plain draws about two thirds lie as far from both ends.
    expect(far(first.map(({ places }) => places))).toBeGreaterThan(0.55);
    expect(far(next)).toBeLessThan(0.4);
  });
});
