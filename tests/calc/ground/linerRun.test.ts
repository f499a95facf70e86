import { describe, expect, it } from "vitest";
import { linerRun, type LinerStation } from "../../../src/calc/ground/linerRun";

const flat = (station: number, bed: number, drop = 0): LinerStation => ({
  station,
  bed,
  drop,
  width: 1.2,
  bank: 0,
  bankSlope: 0,
});

describe("a developed liner", () => {
  it("follows treads and risers: 0.6 m of rise and 1.2 m of tread are 1.8 m of sheet, 34 % more than the slope", () => {
    // By hand: rises 0.2 + 0.15 + 0.25, treads 0.4 + 0.5 + 0.3; the straight slope is √(0.6² + 1.2²) = 1.341641.
    const steps = [flat(0, 10), flat(0.4, 9.8, 0.2), flat(0.9, 9.65, 0.15), flat(1.2, 9.4, 0.25)];
    const along = linerRun(steps, { edge: 0, slack: 0 }).at(-1)?.along ?? NaN;
    expect(along).toBeCloseTo(1.8, 12);
    const slope = linerRun([flat(0, 10), flat(1.2, 9.4)], { edge: 0, slack: 0 }).at(-1)?.along ?? NaN;
    expect(along / slope).toBeCloseTo(1.341641, 6);
  });

  it("goes up the banks as the wetted perimeter of a trapezoid", () => {
    // A course's channel: bottom 4.1, depth 3, sides 1/3 to 1: perimeter 4.1 + 6 √(1 + 1/9) = 10.42456; edges 0.3 each.
    const at = { station: 0, bed: 10, drop: 0, width: 4.1, bank: 3, bankSlope: 1 / 3 };
    const [first] = linerRun([at, { ...at, station: 1 }], { edge: 0.3, slack: 0 });
    expect(first?.across).toBeCloseTo(10.42456 + 0.6, 5);
  });

  it("adds slack to both ways", () => {
    // By hand: 2 m level, 1.2 m wide, 0.3 m edges, 10 %: 2.2 m along, (1.2 + 0.6) × 1.1 = 1.98 m across.
    const last = linerRun([flat(0, 10), flat(2, 10)], { edge: 0.3, slack: 0.1 }).at(-1);
    expect(last?.along).toBeCloseTo(2.2, 12);
    expect(last?.across).toBeCloseTo(1.98, 12);
  });

  it("refuses one station, and stations out of order", () => {
    expect(() => linerRun([flat(0, 10)], { edge: 0, slack: 0 })).toThrow("at least two; got 1");
    expect(() => linerRun([flat(1, 10), flat(1, 10)], { edge: 0, slack: 0 })).toThrow("each once");
  });
});
