import { describe, expect, it } from "vitest";
import { remarksOf } from "../../../src/job/range/remarks";

describe("what is said of a range", () => {
  const plain = { low: 5000, likely: 5760, high: 7000, trials: 300, priceless: 0 };

  it("is nothing where the likely price lies between its ends, or nothing moves it", () => {
    expect(remarksOf(plain)).toEqual([]);
    expect(remarksOf({ ...plain, low: 5760, high: 5760 })).toEqual([]);
  });

  it.each([
    ["less", { low: 5760 }],
    ["more", { high: 5760 }],
  ])("is that few nearby designs cost %s where the likely price is that end", (rare, end) => {
    const [edge = "", ...others] = remarksOf({ ...plain, ...end });
    expect(edge).toMatch(/^The likely design is at an edge: /);
    expect(edge).toMatch(new RegExp(`few nearby designs cost ${rare}\\.$`));
    expect(others).toEqual([]);
  });

  it("is how many trials came to no price, before an edge", () => {
    expect(remarksOf({ ...plain, low: 5760, priceless: 12 })).toEqual([
      "12 of 300 trial designs came to no price and were left out.",
      expect.stringMatching(/at an edge/),
    ]);
  });
});
