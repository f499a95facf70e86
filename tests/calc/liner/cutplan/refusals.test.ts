import { describe, expect, it } from "vitest";
import { cutPlan } from "../../../../src/calc/liner/cutplan/plan";
import type { PlanRequest } from "../../../../src/calc/liner/cutplan/request";
import { Problem } from "../../../../src/calc/problem";

const basin = { name: "Basin", length: 9, width: 8 };
const skirt = { name: "Skirt", length: 3, width: 2 };
const wide = { width: 6, price: 10, per: "length", longest: 30 } as const;
const narrow = { width: 4, price: 6, per: "length", longest: 30 } as const;
const request: PlanRequest = { pieces: [skirt], rolls: [narrow, wide], turn: true };

describe("a plan that cannot be", () => {
  it.each<[string, Partial<PlanRequest>, string]>([
    ["no pieces", { pieces: [] }, "cuts is needed"],
    ["too many pieces", { pieces: Array.from({ length: 201 }, () => skirt) }, "cuts takes at most 200 pieces; got 201"],
    ["no rolls", { rolls: [] }, "rolls is needed"],
    [
      "more parts than a plan is made for",
      // By hand: 9 m in lengths of 0.1 m that lap 0.05 m: (9 - 0.05) / 0.05 = 179 lengths, in 2 strips of up to 6 m.
      { pieces: [basin], rolls: [{ ...wide, longest: 0.1 }], turn: false, seamLap: 0.05 },
      "cuts need at least 358 parts with seams 0.05 m wide; a plan takes at most 200",
    ],
    ["a length of 0", { pieces: [skirt, { ...skirt, length: 0 }] }, "cuts 2: length must be"],
    ["a negative width", { pieces: [{ ...skirt, width: -2 }] }, "cuts 1: width must be"],
    ["a width of no number", { pieces: [{ ...skirt, width: Number.NaN }] }, "cuts 1: width must be"],
    ["a roll of no width", { rolls: [{ ...wide, width: 0 }] }, "rolls row 1: width must be"],
    ["a price below 0", { rolls: [{ ...wide, price: -1 }] }, "rolls row 1: price must be"],
    ["one price missing", { rolls: [wide, { ...narrow, price: 0 }] }, "rolls row 2: price is needed"],
    [
      "a full roll without its length",
      { rolls: [{ ...wide, per: "roll", longest: Infinity }] },
      "rolls row 1: longest length is needed",
    ],
    [
      "a piece wider than every roll both ways",
      { pieces: [skirt, basin] },
      "Basin, 9 m by 8 m, is wider both ways than the widest roll of 6 m; use a larger roll, or allow a seam",
    ],
    [
      "a piece that would have to be turned",
      { pieces: [{ ...skirt, width: 7 }], turn: false },
      "Skirt, 3 m by 7 m, is not to be turned and wider than the widest roll of 6 m",
    ],
    [
      "a piece longer than any length sold",
      { pieces: [{ name: "Fall", length: 40, width: 5 }] },
      "Fall, 40 m by 5 m, is longer than the longest length of 30 m of the rolls wide enough for it",
    ],
    [
      "a seam as wide as the rolls",
      { pieces: [basin], rolls: [{ ...narrow, width: 0.5 }], seamLap: 0.5 },
      "seam must be narrower",
    ],
    ["a seam of no lap", { pieces: [basin], seamLap: 0 }, "seam must be"],
  ])("%s", (_, wrong, sentence) => {
    expect(() => cutPlan({ ...request, ...wrong })).toThrow(sentence);
    expect(() => cutPlan({ ...request, ...wrong })).toThrow(Problem);
  });
});
