import { describe, expect, it } from "vitest";
import { cutPlan } from "../../../../src/calc/sheet/cutplan/plan";
import type { PlanRequest } from "../../../../src/calc/sheet/cutplan/request";
import { partPiece } from "../../../../src/calc/sheet/cutplan/seams";
import { Problem } from "../../../../src/calc/problem";
import { inspect } from "./inspect";

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
    ["a seam of no lap", { pieces: [basin], seamLap: 0 }, "seam must be"],
  ])("%s", (_, wrong, sentence) => {
    expect(() => cutPlan({ ...request, ...wrong })).toThrow(sentence);
    expect(() => cutPlan({ ...request, ...wrong })).toThrow(Problem);
  });
});

describe("seams", () => {
  it("join what fits no roll, with the lap added and the seam counted", () => {
    // By hand: 9 by 8 from the roll of 6 with 0.1 lap: two strips 9 long, together 8.1 wide, one seam of 9; or across,
    // two strips 8 long, together 9.1 wide, one seam of 8, which is the shorter.
    const equal = partPiece(basin, [wide], true, 0.1, "equal");
    expect(equal?.seamLength).toBeCloseTo(8, 9);
    expect(equal?.parts.map((p) => p.name)).toEqual(["Basin (1 of 2)", "Basin (2 of 2)"]);
    for (const part of equal?.parts ?? []) {
      expect(part.length).toBeCloseTo(4.55, 9);
      expect(part.width).toBeCloseTo(8, 9);
    }
    const full = partPiece(basin, [wide], true, 0.1, "full widths");
    expect(full?.parts.map((p) => p.length)).toEqual([6, expect.closeTo(3.1, 9)]);
  });

  it("also join end to end what is longer than any length", () => {
    // By hand: 70 by 5 from lengths of at most 30: three, with two seams of 5 across.
    const run = partPiece({ name: "Fall", length: 70, width: 5 }, [wide], true, 0.2, "equal");
    expect(run?.parts.length).toBe(3);
    expect(run?.seamLength).toBeCloseTo(10, 9);
    // Three equal lengths and two laps: (70 + 0.4) / 3.
    expect(run?.parts[0]?.length).toBeCloseTo(70.4 / 3, 9);
  });

  it("are made only where a piece fits no roll, and are never called proven", () => {
    const plan = cutPlan({ ...request, pieces: [basin, skirt], seamLap: 0.1 });
    expect(plan.placements.map((p) => p.name).sort()).toEqual(["Basin (1 of 2)", "Basin (2 of 2)", "Skirt"]);
    expect(plan.seamLength).toBeCloseTo(8, 9);
    expect(plan.proven).toBe(false);
    expect(plan.lowerBound).toBeLessThanOrEqual(plan.cost);
    const whole = cutPlan({ ...request, seamLap: 0.1 });
    expect(whole).toMatchObject({ seamLength: 0, proven: true });
    inspect(whole, request);
  });

  it("refuses a lap as wide as the rolls", () => {
    const strip = { ...narrow, width: 0.5 };
    expect(() => cutPlan({ ...request, pieces: [basin], rolls: [strip], seamLap: 0.5 })).toThrow(
      "seam must be narrower than every roll",
    );
  });
});
