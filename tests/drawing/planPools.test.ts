import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { boxLength, poolShapes } from "../../src/drawing/planPools";

const size = fc.double({ min: 0.05, max: 200, noNaN: true });

describe("the pools of the plan", () => {
  it("keep their water surface and lie between their lip and the one above", () => {
    fc.assert(
      fc.property(
        fc.array(size, { maxLength: 6 }),
        fc.array(size, { minLength: 1, maxLength: 12 }),
        (areas, treads) => {
          const lips = treads.map((_, index) => treads.slice(0, index).reduce((sum, tread) => sum + tread, 0));
          const shapes = poolShapes(
            areas.map((area) => ({ area, lip: 0 })),
            lips,
          );
          expect(shapes).toHaveLength(Math.max(0, Math.min(areas.length, lips.length) - 1));
          shapes.forEach(({ start, length, width }, index) => {
            // An ellipse of half axes a and b covers pi a b.
            const area = areas[index + 1] ?? 0;
            expect(Math.abs((Math.PI * length * width) / 4 - area)).toBeLessThan(1e-9 * area);
            expect(start + length).toBeCloseTo(lips[index + 1] ?? NaN, 9);
            expect(start).toBeGreaterThanOrEqual((lips[index] ?? 0) - 1e-9);
          });
        },
      ),
    );
  });

  it("are round where the tread is long enough", () => {
    // By hand: 3.1416 square feet is a circle of 2 ft across, which fits into a tread of 5 ft.
    const [shape] = poolShapes(
      [
        { area: 1, lip: 0 },
        { area: Math.PI, lip: 0 },
      ],
      [0, 5],
    );
    expect(shape).toEqual({ start: 3, length: 2, width: 2 });
  });
});

describe("the spillway box", () => {
  it("is as long as its water needs at the width of the bed, where that is known and shorter than the run", () => {
    // By hand: 6 square feet on a bed of 3 ft are 2 ft.
    const pools = [
      { area: 6, lip: 0 },
      { area: 9, lip: 0 },
    ];
    expect(boxLength(pools, 3, 8)).toBe(2);
    expect(boxLength(pools, 3, 2)).toBeUndefined();
    expect(boxLength([{ area: 0, lip: 0 }], 3, 8)).toBeUndefined();
    expect(boxLength([], 3, 8)).toBeUndefined();
  });
});
