import { describe, expect, it } from "vitest";
import { partingsOf } from "../../../../src/calc/liner/cutplan/partings";
import { cutPlan } from "../../../../src/calc/liner/cutplan/plan";
import { repeatableRandom } from "../../../../src/calc/liner/cutplan/random";
import type { Piece, PlanRequest, Roll } from "../../../../src/calc/liner/cutplan/request";
import { inspect } from "./inspect";

const basin: Piece = { name: "Basin", length: 9, width: 8 };
const skirt: Piece = { name: "Skirt", length: 3, width: 2 };
const wide: Roll = { width: 6, price: 10, per: "length", longest: 30 };
const narrow: Roll = { width: 4, price: 6, per: "length", longest: 30 };
const request: PlanRequest = { pieces: [basin], rolls: [wide], turn: true, seamLap: 0.1 };
const sizes = (parts: readonly Piece[]): string =>
  parts.map((p) => `${p.length.toFixed(2)} by ${p.width.toFixed(2)}`).join(", ");

describe("ways to part a piece", () => {
  it("are strips that lap, equal or of full widths, along either side", () => {
    // By hand, 9 by 8 from a roll 6 wide, lap 0.1: two strips 9 long, together 8.1 wide, or 8 long, together 9.1 wide.
    const ways = partingsOf(basin, [wide], true, 0.1, []);
    const two = ways
      .filter(({ parts }) => parts.length === 2)
      .map(({ parts, seamLength }) => [sizes(parts), seamLength]);
    expect(two).toContainEqual(["9.00 by 4.05, 9.00 by 4.05", 9]);
    expect(two).toContainEqual(["9.00 by 6.00, 9.00 by 2.10", 9]);
    expect(two).toContainEqual(["4.55 by 8.00, 4.55 by 8.00", 8]);
    expect(two).toContainEqual(["6.00 by 8.00, 3.10 by 8.00", 8]);
    expect(ways[0]?.parts[0]?.name).toBe("Basin (1 of 2)");
  });

  it("leave room for what may lie beside a strip", () => {
    // 6 less the skirt's 2 leaves 4, and 8.1 less 4 leaves 4.1.
    const ways = partingsOf(basin, [wide], true, 0.1, [skirt]);
    expect(ways.map(({ parts }) => sizes(parts))).toContain("9.00 by 4.10, 9.00 by 4.00");
  });

  it("also go end to end where no roll is long enough", () => {
    // By hand: 70 by 5 from lengths of at most 30: three, (70 + 2 x 0.2) / 3 each, with two seams of 5.
    const [first] = partingsOf({ name: "Fall", length: 70, width: 5 }, [wide], true, 0.2, []);
    expect(first?.parts.length).toBe(3);
    expect(first?.seamLength).toBeCloseTo(10, 9);
  });

  it("are none where every roll holds the piece", () => {
    expect(partingsOf(skirt, [wide, narrow], true, 0.1, [])).toEqual([{ parts: [skirt], seamLength: 0 }]);
  });
});

describe("a plan with seams", () => {
  it("weighs the price of the seam against the rolls", () => {
    // By hand: a roll 9 m wide at 30 holds 9 by 8 whole, 8 m of it: 240. Two strips from the roll 6 m wide at 10 are 16 m
    // (4.55 wide, 8 long each) or 18 m: 160 and a seam of 8 m. Seams at 9 a metre cost 72, together 232; at 11, 88, 248.
    const rolls = [wide, { ...wide, width: 9, price: 30 }];
    expect(cutPlan({ ...request, rolls, seamPrice: 9 })).toMatchObject({ cost: 232, rollCost: 160, seamLength: 8 });
    expect(cutPlan({ ...request, rolls, seamPrice: 11 })).toMatchObject({ cost: 240, rollCost: 240, seamLength: 0 });
  });

  it("is an ordinary one where every roll holds every piece", () => {
    const plain = { ...request, pieces: [skirt], rolls: [narrow, wide] };
    const plan = cutPlan(plain);
    inspect(plan, plain);
    expect(plan).toMatchObject({ seamLength: 0, proven: true, mayPart: false });
  });
});

/** Whole-metre strips of a side with laps of 1 m, up to three of them. */
function strips(side: number): number[][] {
  const found: number[][] = [[side]];
  for (let a = 2; a <= side; a++) {
    const b = side + 1 - a;
    if (b >= 2 && a >= b) found.push([a, b]);
    for (let c = 2; c <= a; c++) {
      const d = side + 2 - a - c;
      if (d >= 2 && d <= c) found.push([a, c, d]);
    }
  }
  return found;
}

/**
 * The least cost over every parting of the pieces into up to three whole-metre strips or lengths. What a set of parts
 * costs is asked of the plan without seams, which is held against brute force elsewhere.
 */
function leastOverPartings({ pieces, rolls, turn, seamPrice = 0 }: PlanRequest): number {
  const holds = (roll: Roll, l: number, w: number): boolean =>
    (l <= roll.longest && w <= roll.width) || (turn && w <= roll.longest && l <= roll.width);
  const ways = pieces.map(({ length, width }) =>
    strips(length).flatMap((lengths) =>
      strips(width).flatMap((widths) => {
        const parts = lengths.flatMap((l) => widths.map((w) => ({ name: "", length: l, width: w })));
        const seam = (lengths.length - 1) * width + (widths.length - 1) * length;
        return parts.length <= 3 && parts.every((p) => rolls.some((roll) => holds(roll, p.length, p.width)))
          ? [{ parts, seam }]
          : [];
      }),
    ),
  );
  let combinations: (typeof ways)[number][] = [[]];
  // A piece that every roll holds stays whole: its first way.
  pieces.forEach(({ length, width }, index) => {
    const own = rolls.every((roll) => holds(roll, length, width)) ? ways[index]?.slice(0, 1) : ways[index];
    combinations = combinations.flatMap((some) => (own ?? []).map((way) => [...some, way]));
  });
  const rate = Math.min(...rolls.map(({ per, price, width }) => (per === "area" ? price : price / width)));
  let least = Infinity;
  for (const combination of combinations) {
    const parts = combination.flatMap((way) => way.parts);
    const seams = seamPrice * combination.reduce((sum, way) => sum + way.seam, 0);
    if (rate * parts.reduce((sum, p) => sum + p.length * p.width, 0) + seams >= least) continue;
    least = Math.min(least, cutPlan({ pieces: parts, rolls, turn }).cost + seams);
  }
  return least;
}

/** Three to five pieces, the first wider than most rolls, on one or two rolls; whole metres. */
function seamJob(seed: number): PlanRequest {
  const random = repeatableRandom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(random() * (to - from + 1));
  const rolls = Array.from({ length: whole(1, 2) }, (): Roll => {
    return { width: whole(4, 8), price: whole(2, 9), per: random() < 0.3 ? "area" : "length", longest: whole(12, 25) };
  });
  const others = Array.from({ length: whole(2, 4) }, (_, i) => ({
    name: `P${i}`,
    length: whole(1, 5),
    width: whole(1, 4),
  }));
  const first = { name: "Basin", length: whole(8, 12), width: whole(6, 10) };
  return { pieces: [first, ...others], rolls, turn: random() < 0.7, seamLap: 1, seamPrice: whole(0, 2) / 2 };
}

describe("jobs of three to five pieces with seams", () => {
  const jobs = Array.from({ length: 40 }, (_, index) => seamJob(index + 1));

  it("never cost more than the least over every parting in whole metres, and the bound never passes that", () => {
    for (const job of jobs) {
      const plan = cutPlan(job);
      const least = leastOverPartings(job);
      expect(plan.cost, JSON.stringify(job)).toBeLessThanOrEqual(least + 0.005);
      expect(plan.lowerBound, JSON.stringify(job)).toBeLessThanOrEqual(least + 0.005);
    }
  });

  it("never cost more when more rolls are on offer", () => {
    jobs.forEach((job, index) => {
      const more = [...job.rolls, ...seamJob(1000 + index).rolls, { ...wide, width: 12, price: 9 }];
      const cost = cutPlan(job).cost;
      expect(cutPlan({ ...job, rolls: more }).cost, JSON.stringify(job)).toBeLessThanOrEqual(cost + 0.005);
    });
  });
});
