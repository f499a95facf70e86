import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bermVolume, pitVolume } from "../../../src/calc/earth/earthworks";

const side = fc.double({ min: 0.1, max: 30, noNaN: true });
const depth = fc.double({ min: 0.05, max: 3, noNaN: true });
const slope = fc.double({ min: 0, max: 4, noNaN: true });

/** Volume of a solid of level sections by the midpoint rule: the independent way to every formula here. */
function bySections(height: number, areaAt: (z: number) => number): number {
  const sections = 2000;
  let volume = 0;
  for (let i = 0; i < sections; i++) volume += areaAt(((i + 0.5) / sections) * height) * (height / sections);
  return volume;
}

describe("pitVolume", () => {
  it("equals the sum of thin level sections", () => {
    fc.assert(
      fc.property(side, side, depth, slope, (length, width, d, z) => {
        const sections = bySections(d, (h) => (length + 2 * z * h) * (width + 2 * z * h));
        expect(Math.abs(pitVolume(length, width, d, z) / sections - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 50 },
    );
  });

  it("is the sum of a lower pit and the pit above it", () => {
    fc.assert(
      fc.property(side, side, depth, depth, slope, (length, width, low, high, z) => {
        const whole = pitVolume(length, width, low + high, z);
        const wider = 2 * z * low;
        const parts = pitVolume(length, width, low, z) + pitVolume(length + wider, width + wider, high, z);
        expect(parts / whole).toBeCloseTo(1, 10);
      }),
    );
  });

  it("grows with every argument", () => {
    fc.assert(
      fc.property(side, side, depth, slope, (length, width, d, z) => {
        const volume = pitVolume(length, width, d, z);
        expect(pitVolume(length * 1.01, width, d, z)).toBeGreaterThan(volume);
        expect(pitVolume(length, width, d * 1.01, z)).toBeGreaterThan(volume);
        expect(pitVolume(length, width, d, z + 0.01)).toBeGreaterThan(volume);
      }),
    );
  });

  it("is a box when its sides stand upright, and nothing without depth", () => {
    expect(pitVolume(3, 2, 0.75)).toBeCloseTo(4.5, 12); // by hand: 3 × 2 × 0.75
    expect(pitVolume(3, 2, 0, 1)).toBe(0);
  });

  it("refuses overhanging sides and pits that need an engineer", () => {
    expect(() => pitVolume(3, 2, 1, -0.5)).toThrow("side slope must be 0 to 10 run per 1 of rise; got -0.5");
    expect(() => pitVolume(3, 2, 7)).toThrow("depth must be 0 to 6.1 m; got 7 m");
    expect(() => pitVolume(-3, 2, 1)).toThrow("length must be 0 to 500 m");
    expect(() => pitVolume(3, Infinity, 1)).toThrow("width must be a finite number");
  });
});

describe("bermVolume", () => {
  it("equals the sum of thin level sections", () => {
    fc.assert(
      fc.property(side, side, depth, slope, (length, crest, height, z) => {
        const sections = bySections(height, (h) => length * (crest + 2 * z * (height - h)));
        expect(Math.abs(bermVolume(length, crest, height, z) / sections - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 50 },
    );
  });

  it("grows with every argument, and may end in a ridge", () => {
    fc.assert(
      fc.property(side, depth, slope, (length, height, z) => {
        const ridge = bermVolume(length, 0, height, z);
        expect(bermVolume(length, 0.1, height, z)).toBeGreaterThan(ridge);
        expect(bermVolume(length, 0, height, z + 0.1)).toBeGreaterThan(ridge);
        expect(bermVolume(length, 0.1, height * 1.01, z)).toBeGreaterThan(bermVolume(length, 0.1, height, z));
      }),
    );
  });

  it("refuses overhanging sides", () => {
    expect(() => bermVolume(3, 1, 0.5, -1)).toThrow("side slope must be 0 to 10 run per 1 of rise; got -1");
    expect(() => bermVolume(3, 1, 9, 2)).toThrow("height must be 0 to 6.1 m");
  });
});
