import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { basinDepth, basinHold } from "../../../src/calc/basin/hold";

const basin = fc.record({
  length: fc.double({ min: 0.3, max: 30, noNaN: true }),
  width: fc.double({ min: 0.3, max: 30, noNaN: true }),
  voidFraction: fc.double({ min: 0.06, max: 1, noNaN: true }),
  sideSlope: fc.double({ min: 0, max: 3, noNaN: true }),
});
const depth = fc.double({ min: 1e-4, max: 6, noNaN: true });

/** Volume by adding up thin level slices: nothing of the formula is used. */
function slices(length: number, width: number, slope: number, deep: number, count = 2000): number {
  const thick = deep / count;
  let volume = 0;
  for (let i = 0; i < count; i++) {
    const up = (i + 0.5) * thick;
    volume += (length + 2 * slope * up) * (width + 2 * slope * up) * thick;
  }
  return volume;
}

describe("basinHold", () => {
  it("is length × width × depth × void fraction between upright walls", () => {
    expect(basinHold({ length: 3, width: 2, voidFraction: 0.4, sideSlope: 0 }, 0.8)).toBeCloseTo(1.92, 12);
  });

  it("agrees with slices added up, for sloped walls too (fast-check)", () => {
    fc.assert(
      fc.property(basin, depth, (b, d) => {
        const added = b.voidFraction * slices(b.length, b.width, b.sideSlope, d);
        expect(Math.abs(basinHold(b, d) / added - 1)).toBeLessThan(1e-5);
      }),
      { numRuns: 50 },
    );
  });

  it("grows with depth, void fraction and wall slope (fast-check)", () => {
    fc.assert(
      fc.property(basin, depth, (b, d) => {
        const hold = basinHold(b, d);
        expect(basinHold(b, d * 1.01)).toBeGreaterThan(hold);
        expect(basinHold({ ...b, sideSlope: b.sideSlope + 0.1 }, d)).toBeGreaterThan(hold);
        expect(basinHold({ ...b, voidFraction: b.voidFraction * 0.9 }, d)).toBeLessThan(hold);
      }),
    );
  });

  it("says what is wrong", () => {
    const fine = { length: 3, width: 2, voidFraction: 0.4, sideSlope: 0 };
    expect(() => basinHold({ ...fine, voidFraction: 40 }, 1)).toThrow("void fraction must be 0.05 to 1");
    expect(() => basinHold({ ...fine, length: 0 }, 1)).toThrow("length must be 0.01 to 500 m");
    expect(() => basinHold(fine, 7)).toThrow("depth must be 0 to 6.1 m");
    expect(() => basinHold(fine, NaN)).toThrow("depth must be a finite number");
  });
});

describe("basinDepth", () => {
  it("inverts basinHold (fast-check)", () => {
    fc.assert(
      fc.property(basin, depth, (b, d) => {
        expect(Math.abs(basinDepth(basinHold(b, d), b) / d - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("is 0 for no water and refuses what the basin cannot hold", () => {
    const small = { length: 1, width: 1, voidFraction: 0.4, sideSlope: 0 };
    expect(basinDepth(0, small)).toBe(0);
    expect(() => basinDepth(10, small)).toThrow(/volume must be 0 to 2440 L .* give a longer or wider basin/);
    expect(() => basinDepth(NaN, small)).toThrow("volume must be");
  });
});
