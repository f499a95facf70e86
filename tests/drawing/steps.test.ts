import { expect, it } from "vitest";
import { lipStations, sum } from "../../src/drawing/steps";

it("puts each lip where the tread before it ends, and the run at the end of the last", () => {
  // By hand: 3, 3 + 2, and 3 + 2 + 4.
  expect(lipStations([3, 2, 4])).toEqual([0, 3, 5]);
  expect(sum([3, 2, 4])).toBe(9);
  expect(lipStations([])).toEqual([]);
});
