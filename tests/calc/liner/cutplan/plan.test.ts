import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutPlan } from "../../../../src/calc/liner/cutplan/plan";
import type { Piece, PlanRequest, Roll } from "../../../../src/calc/liner/cutplan/request";
import { USUAL_EFFORT } from "../../../../src/calc/liner/cutplan/search";
import { leastCost } from "./bruteForce";
import { inspect, isGuillotine, placed } from "./inspect";

const piece = (length: number, width: number, name = `${length} by ${width}`): Piece => ({ name, length, width });
const roll = (width: number, price: number, per: Roll["per"] = "length", longest = Infinity): Roll => ({
  width,
  price,
  per,
  longest,
});
const quick = { ...USUAL_EFFORT, work: 300_000 };

const wholeRoll = fc.record({
  width: fc.integer({ min: 4, max: 9 }),
  price: fc.integer({ min: 1, max: 12 }),
  per: fc.constantFrom<Roll["per"]>("length", "area", "roll"),
  longest: fc.integer({ min: 6, max: 20 }),
});
const wholePiece = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 4 }));
const named = (sizes: readonly (readonly [number, number])[]): Piece[] =>
  sizes.map(([length, width], index) => piece(length, width, `P${index}`));

describe("the inspector of the tests", () => {
  it("knows a pinwheel, which no edge-to-edge cut parts", () => {
    expect(isGuillotine([placed(0, 0, 2, 1), placed(2, 0, 1, 2), placed(1, 2, 2, 1), placed(0, 1, 1, 2)])).toBe(false);
    expect(isGuillotine([placed(0, 0, 2, 1), placed(2, 0, 1, 2), placed(0, 1, 1, 2)])).toBe(true);
  });

  it("sees an overlap", () => {
    const request: PlanRequest = { pieces: [piece(2, 2), piece(2, 2)], rolls: [roll(4, 1)], turn: true };
    const plan = cutPlan(request);
    const [a, b] = plan.placements;
    if (!a || !b) throw new Error("two placements wanted");
    inspect(plan, request);
    expect(() => inspect({ ...plan, placements: [a, { ...b, across: b.across - 0.5 }] }, request)).toThrow();
  });
});

describe("few pieces: the least cost", () => {
  it("is what trying every cut at every position finds", () => {
    fc.assert(
      fc.property(
        fc.array(wholePiece, { minLength: 1, maxLength: 4 }),
        fc.array(wholeRoll, { minLength: 1, maxLength: 3 }),
        fc.boolean(),
        (sizes, rolls, turn) => {
          const request = { pieces: named(sizes), rolls, turn };
          const plan = cutPlan(request);
          inspect(plan, request);
          expect(plan.proven).toBe(true);
          expect(plan.cost).toBeCloseTo(leastCost(request), 6);
        },
      ),
      { numRuns: 250 },
    );
  });

  it("is what trying everything finds, for six pieces", () => {
    fc.assert(
      fc.property(fc.array(wholePiece, { minLength: 6, maxLength: 6 }), fc.boolean(), (sizes, turn) => {
        const request = { pieces: named(sizes), rolls: [roll(6, 2), roll(4, 1.5, "length", 12)], turn };
        const plan = cutPlan(request);
        inspect(plan, request);
        expect(plan.cost).toBeCloseTo(leastCost(request), 6);
      }),
      { numRuns: 12 },
    );
  });

  it("turns a piece where that saves", () => {
    // By hand: two pieces of 6 by 2 on a roll 6 wide: as they are 6 long; turned, behind each other, 4 long.
    const pieces = [piece(6, 2), piece(6, 2)];
    expect(cutPlan({ pieces, rolls: [roll(6, 1)], turn: true }).cost).toBe(4);
    expect(cutPlan({ pieces, rolls: [roll(6, 1)], turn: false }).cost).toBe(6);
  });

  it("weighs a full roll against a cut length", () => {
    // By hand: 10 m at 3 is 30; a full roll of 12 m costs 25, at 40 it no longer pays.
    const pieces = [piece(10, 4)];
    expect(cutPlan({ pieces, rolls: [roll(4, 3), roll(4, 25, "roll", 12)], turn: true }).cost).toBe(25);
    expect(cutPlan({ pieces, rolls: [roll(4, 3), roll(4, 40, "roll", 12)], turn: true }).cost).toBe(30);
  });

  it("buys several lengths where one would be too long", () => {
    // By hand: three pieces of 5 by 4 on a roll 4 wide, at most 11 long: lengths of 10 and 5.
    const request = { pieces: [piece(5, 4), piece(5, 4), piece(5, 4)], rolls: [roll(4, 2, "length", 11)], turn: false };
    const plan = cutPlan(request);
    inspect(plan, request);
    expect(plan.bought.map(({ start, length }) => [start, length])).toEqual([
      [0, 10],
      [10, 5],
    ]);
    expect(plan.cost).toBe(30);
  });

  it("takes the shorter plan of equal cost", () => {
    // By hand: 4 m of the narrow roll at 3, or 2 m of the wide one at 6.
    const plan = cutPlan({ pieces: [piece(2, 2), piece(2, 2)], rolls: [roll(2, 3), roll(4, 6)], turn: true });
    expect(plan.cost).toBe(12);
    expect(plan.bought.map((b) => [b.roll, b.length])).toEqual([[1, 2]]);
  });

  it("plans for the least area where no roll has a price", () => {
    // By hand: 5 by 2 fills 5 m of the roll of 2, and would waste half of the roll of 4.
    const plan = cutPlan({ pieces: [piece(5, 2)], rolls: [roll(4, 0), roll(2, 0, "roll", 30)], turn: false });
    expect(plan).toMatchObject({ cost: 0, lowerBound: 0, proven: true, waste: 0, bought: [{ roll: 1, length: 5 }] });
  });

  it("fits pieces that fill a roll exactly, in feet", () => {
    const foot = 0.3048;
    const third = (10 / 3) * foot;
    const plan = cutPlan({
      pieces: [1, 2, 3].map(() => piece(7 * foot, third)),
      rolls: [roll(10 * foot, 1)],
      turn: false,
    });
    expect(plan.bought[0]?.length).toBeCloseTo(7 * foot, 6);
  });
});

describe("many pieces", () => {
  const size = fc.double({ min: 0.3, max: 3, noNaN: true });
  const anyRolls = fc.constantFrom<readonly Roll[]>(
    [roll(6, 10)],
    [roll(3.05, 4, "area"), roll(6.1, 30, "length", 30)],
    [roll(4, 6, "length", 9), roll(6, 120, "roll", 12)],
    [roll(6, 200, "roll", 15)],
  );

  it("are all cut, edge to edge, without overlap, for no less than the lower bound", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(size, size), { minLength: 12, maxLength: 40 }),
        anyRolls,
        fc.boolean(),
        (sizes, rolls, turn) => {
          const request = { pieces: named(sizes), rolls, turn };
          inspect(cutPlan(request, quick), request);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("cost no more than each bought on its own", () => {
    const alone = (p: Piece): number => cutPlan({ pieces: [p], rolls: [roll(5, 7)], turn: true }).cost;
    fc.assert(
      fc.property(fc.array(fc.tuple(size, size), { minLength: 12, maxLength: 16 }), (sizes) => {
        const pieces = named(sizes);
        const together = cutPlan({ pieces, rolls: [roll(5, 7)], turn: true }, quick).cost;
        expect(together).toBeLessThanOrEqual(pieces.reduce((sum, p) => sum + alone(p), 0));
      }),
      { numRuns: 15 },
    );
  });

  it("come near the proven least cost where both ways can be gone", () => {
    // The search is given pieces that the proof still covers by adding four slivers that cost next to nothing.
    const sizes = [5, 4, 3.5, 3, 2.5, 2.2, 1.8, 1.4].map((length, i) => [length, 0.7 + 0.37 * i] as const);
    const few = named(sizes);
    const slivers = [1, 2, 3, 4].map((i) => piece(0.01, 0.01 + i / 1e4, `S${i}`));
    const rolls = [roll(5, 1)];
    const proven = cutPlan({ pieces: few, rolls, turn: true });
    const found = cutPlan({ pieces: [...few, ...slivers], rolls, turn: true });
    expect(proven.proven).toBe(true);
    expect(found.cost).toBeLessThanOrEqual(proven.cost * 1.03);
  });

  it("that are alike are still proven", () => {
    // By hand: forty of 2 by 1 on a roll of 4 leave no waste on 20 m.
    const plan = cutPlan({ pieces: Array.from({ length: 40 }, () => piece(2, 1)), rolls: [roll(4, 1)], turn: true });
    expect(plan).toMatchObject({ proven: true, cost: 20 });
    expect(plan.waste).toBeCloseTo(0, 9);
  });

  it("up to 200 are planned", () => {
    const sizes = Array.from(
      { length: 200 },
      (_, i) => [0.5 + ((i * 37) % 100) / 40, 0.4 + ((i * 53) % 100) / 60] as const,
    );
    const request = { pieces: named(sizes), rolls: [roll(6, 3), roll(4, 2.2)], turn: true };
    const plan = cutPlan(request);
    inspect(plan, request);
    expect(plan.cost).toBeLessThan(plan.lowerBound * 1.2);
  });
});

describe("the same request", () => {
  it("gives the same plan", () => {
    const sizes = Array.from({ length: 15 }, (_, i) => [1 + ((i * 7) % 11) / 3, 0.5 + ((i * 5) % 13) / 7] as const);
    const request = { pieces: named(sizes), rolls: [roll(4, 3), roll(6, 5, "length", 20)], turn: true };
    expect(cutPlan(request, quick)).toEqual(cutPlan(request, quick));
    const few = { ...request, pieces: request.pieces.slice(0, 6) };
    expect(cutPlan(few)).toEqual(cutPlan(few));
  });
});
