import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { basinCheck, type BasinDuty } from "../../../src/calc/basin/check";

const duty: BasinDuty = {
  hold: 2,
  drainBack: 0.6,
  lowWater: 0.4,
  lossPerDay: 0.05,
  days: 10,
  footprint: 6,
  voidFraction: 0.4,
};
const water = fc.double({ min: 0, max: 10, noNaN: true });

describe("basinCheck", () => {
  it("balances by hand", () => {
    // need 0.6 + 0.4 + 0.5 = 1.5; margin 0.5; drop 0.6 / 2.4 = 0.25 m; (2 - 1) / 0.05 = 20 days
    const { need, margin, drop, daysToAir, overflow } = basinCheck(duty);
    expect(need).toBeCloseTo(1.5, 12);
    expect(margin).toBeCloseTo(0.5, 12);
    expect(drop).toBeCloseTo(0.25, 12);
    expect(daysToAir).toBeCloseTo(20, 9);
    expect(overflow).toBe(0);
  });

  it("runs for ever without loss, not at all without water, and drops nothing without a footprint", () => {
    expect(basinCheck({ ...duty, lossPerDay: 0 }).daysToAir).toBeUndefined();
    expect(basinCheck({ ...duty, hold: 0.9 }).daysToAir).toBe(0);
    expect(basinCheck({ ...duty, hold: 0.9 }).overflow).toBeCloseTo(0.1, 12);
    expect(basinCheck({ ...duty, footprint: undefined }).drop).toBeUndefined();
  });

  it("has margin exactly when the pump lasts the planned days (fast-check)", () => {
    const loss = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(water, water, water, loss, fc.integer({ min: 1, max: 60 }), (hold, drainBack, lowWater, l, days) => {
        const { margin, daysToAir, overflow } = basinCheck({ ...duty, hold, drainBack, lowWater, lossPerDay: l, days });
        if (Math.abs(margin) > 1e-9) expect(margin > 0).toBe((daysToAir ?? NaN) > days);
        if (overflow > 0) expect(margin).toBeLessThan(0);
      }),
    );
  });

  it("says what is wrong", () => {
    expect(() => basinCheck({ ...duty, hold: -1 })).toThrow("hold must be 0 to 100000 m³");
    expect(() => basinCheck({ ...duty, days: 400 })).toThrow("days must be 0 to 366");
    expect(() => basinCheck({ ...duty, footprint: 0 })).toThrow("footprint must be 0.01");
    expect(() => basinCheck({ ...duty, voidFraction: 4 })).toThrow("void fraction must be 0.05 to 1");
    expect(() => basinCheck({ ...duty, lossPerDay: NaN })).toThrow("loss per day must be a finite number");
  });
});
