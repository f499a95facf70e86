import { describe, expect, it } from "vitest";
import { fitPlane } from "../../../src/job/range/surface";

describe("the plane through points", () => {
  it("is the line of least squares where nothing holds it back", () => {
    // Through (0, 1), (1, 3), (2, 2), (3, 5): mean 1.5 and 2.75, slope (-1.5 x -1.75 - 0.5 x 0.25 - 0.5 x 0.75 + 1.5 x 2.25) / 5
    // = 5.5 / 5 = 1.1, so 2.75 - 1.1 x 1.5 = 1.1 at 0.
    const rows = [0, 1, 2, 3].map((x) => [1, x]);
    const { at } = fitPlane(rows, [1, 3, 2, 5], [1e-9, 1e-9]);
    expect(at([1, 0])).toBeCloseTo(1.1, 6);
    expect(at([1, 3])).toBeCloseTo(4.4, 6);
  });

  it("leans less on a column that it is held back from", () => {
    // One column without a level: slope = Σxy / (Σx² + weight) = (1 x 2 + 2 x 4) / (5 + 5) = 1.
    const { at } = fitPlane([[1], [2]], [2, 4], [5]);
    expect(at([1])).toBeCloseTo(1, 9);
  });

  it("says of each point what the others alone would tell", () => {
    const rows = [0, 1, 2, 3].map((x) => [1, x]);
    const misses = [1, 3, 2, 5];
    const { leftOut } = fitPlane(rows, misses, [1e-9, 1e-9]);
    // Without the last, through (0, 1), (1, 3), (2, 2): slope 0.5, 1.5 at 0, so 3 at 3.
    expect(leftOut[3]).toBeCloseTo(3, 5);
    // Without the first, through (1, 3), (2, 2), (3, 5): slope 1, mean 10/3 at 2, so 4/3 at 0.
    expect(leftOut[0]).toBeCloseTo(4 / 3, 5);
  });
});
