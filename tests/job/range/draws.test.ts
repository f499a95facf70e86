import { describe, expect, it } from "vitest";
import { aloneOf, type Effect } from "../../../src/job/range/draws";
import { spreadOf } from "../../../src/job/range/spread";
import { TENTH } from "./tenth";

describe("what a fact does alone", () => {
  it("of a word that changes in one case of four either way shows once that is more than a tenth", () => {
    const word: Effect = {
      name: "soil",
      points: [
        [-TENTH, -200],
        [TENTH, 500],
      ],
      jumps: true,
    };
    expect(spreadOf([word])).toMatchObject({ low: -200, high: 500 });
    expect(aloneOf(word)(0.6)).toBe(0);
    expect(aloneOf(word)(0.7)).toBe(500);
  });

  it("runs between the points it was looked at, and on past the last", () => {
    const bent: Effect = {
      name: "bent",
      points: [
        [-2, -30],
        [-1, -10],
        [1, 10],
        [2, 40],
      ],
      jumps: false,
    };
    expect(aloneOf(bent)(0.5)).toBe(5);
    expect(aloneOf(bent)(1.5)).toBe(25);
    expect(aloneOf(bent)(3)).toBe(70);
    expect(aloneOf(bent)(-1.5)).toBe(-20);
  });
});
