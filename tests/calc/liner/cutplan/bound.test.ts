import { describe, expect, it } from "vitest";
import { lowerBound } from "../../../../src/calc/liner/cutplan/bound";
import { cutPlan } from "../../../../src/calc/liner/cutplan/plan";
import { makeOffers } from "../../../../src/calc/liner/cutplan/purchase";
import type { Roll } from "../../../../src/calc/liner/cutplan/request";
import { toSteps } from "../../../../src/calc/liner/cutplan/steps";

/** Twelve pieces 4 m wide and 5.00 to 5.11 m long: 60.66 m, 242.64 m². */
const PIECES = Array.from({ length: 12 }, (_, index) => ({ name: `P${index}`, length: 5 + index / 100, width: 4 }));
const BLANKS = PIECES.map(({ length, width }) => ({ length: toSteps(length), width: toSteps(width) }));
const bound = (roll: Roll): number => lowerBound(BLANKS, makeOffers([roll]), false);

describe("money that no plan can undercut", () => {
  it("is the whole width of a roll for pieces wider than half of it, by length or by area", () => {
    // 60.66 m of a roll 6 m wide, at 3 a metre, or at 0.5 a square metre
    expect(bound({ width: 6, price: 3, per: "length", longest: Infinity })).toBeCloseTo(181.98, 6);
    expect(bound({ width: 6, price: 0.5, per: "area", longest: Infinity })).toBeCloseTo(181.98, 6);
  });

  it("is what whole rolls can cost", () => {
    // 60.66 m of rolls of 12 m at 10: two pieces of 5 m and more a roll, so six rolls for twelve pieces.
    const roll: Roll = { width: 4, price: 10, per: "roll", longest: 12 };
    expect(bound(roll)).toBe(60);
    expect(cutPlan({ pieces: PIECES, rolls: [roll], turn: false })).toMatchObject({ cost: 60, proven: true });
  });

  it("knows what may lie abreast", () => {
    // On a roll 10 m wide, pieces 4 m wide and 5 m long lie two abreast and leave 2 m: 12 of them take 30 m at 1 a metre,
    // where their area alone would be 24 m.
    const pieces = Array.from({ length: 12 }, () => ({ length: toSteps(5), width: toSteps(4) }));
    const offers = makeOffers([{ width: 10, price: 1, per: "length", longest: Infinity }]);
    expect(lowerBound(pieces, offers, false)).toBeCloseTo(30, 6);
  });

  it("is at least the dearest piece alone", () => {
    // One piece of 5 m from rolls of 100 m at 200.
    const roll: Roll = { width: 4, price: 200, per: "roll", longest: 100 };
    expect(lowerBound(BLANKS.slice(0, 1), makeOffers([roll]), false)).toBe(200);
  });
});
