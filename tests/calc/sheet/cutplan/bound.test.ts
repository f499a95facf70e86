import { describe, expect, it } from "vitest";
import { lowerBound } from "../../../../src/calc/sheet/cutplan/bound";
import { cutPlan } from "../../../../src/calc/sheet/cutplan/plan";
import { makeOffers } from "../../../../src/calc/sheet/cutplan/purchase";
import type { Roll } from "../../../../src/calc/sheet/cutplan/request";
import { toSteps } from "../../../../src/calc/sheet/cutplan/steps";
import { USUAL_EFFORT } from "../../../../src/calc/sheet/cutplan/search";

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

  it("is a part of a whole roll for what is used of it", () => {
    // 60.66 m of rolls of 12 m at 10: 50.55; two pieces a roll take six of them, 60.
    const roll: Roll = { width: 4, price: 10, per: "roll", longest: 12 };
    expect(bound(roll)).toBeCloseTo(50.55, 6);
    const plan = cutPlan({ pieces: PIECES, rolls: [roll], turn: false }, { ...USUAL_EFFORT, work: 300_000 });
    expect(plan).toMatchObject({ cost: 60, proven: false });
    expect(plan.lowerBound).toBeCloseTo(50.55, 1);
  });

  it("is at least the dearest piece alone", () => {
    // One piece of 5 m from rolls of 100 m at 200.
    const roll: Roll = { width: 4, price: 200, per: "roll", longest: 100 };
    expect(lowerBound(BLANKS.slice(0, 1), makeOffers([roll]), false)).toBe(200);
  });
});
