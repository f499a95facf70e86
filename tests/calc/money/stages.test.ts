import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sumCents } from "../../../src/calc/money/cents";
import { splitIntoStages } from "../../../src/calc/money/stages";

describe("splitIntoStages", () => {
  it("gives the cents that are left to the largest remainders", () => {
    // 100.00 in thirds: 33.33 each leaves one cent, remainders equal, the first stage takes it.
    expect(splitIntoStages(10000, [1 / 3, 1 / 3, 1 / 3])).toEqual([3334, 3333, 3333]);
    // 0.10 by 0.55, 0.25, 0.2: 5.5, 2.5, 2 cents; one cent left, equal remainders, the first takes it.
    expect(splitIntoStages(10, [0.55, 0.25, 0.2])).toEqual([6, 2, 2]);
    // 1000.01 by 0.3, 0.3, 0.4: 30000.3, 30000.3, 40000.4 cents; the one left goes to the 0.4.
    expect(splitIntoStages(100001, [0.3, 0.3, 0.4])).toEqual([30000, 30000, 40001]);
  });

  it("keeps a share that is whole on paper from losing its cent", () => {
    // 0.1 + 0.2 + 0.7 is 0.9999999999999999 in binary.
    expect(splitIntoStages(1000, [0.1, 0.2, 0.7])).toEqual([100, 200, 700]);
    expect(splitIntoStages(29, [1])).toEqual([29]);
  });

  it("gives a stage that is not used nothing", () => {
    expect(splitIntoStages(1, [0, 0.5, 0, 0.5])).toEqual([0, 1, 0, 0]);
    expect(splitIntoStages(0, [0.5, 0.5])).toEqual([0, 0]);
  });

  it("says by how much the shares miss", () => {
    expect(() => splitIntoStages(100, [0.3, 0.3, 0.3])).toThrow("they add up to 0.9. Raise one of them by 0.1");
    expect(() => splitIntoStages(100, [0.6, 0.6])).toThrow("Lower one of them by 0.2");
    expect(() => splitIntoStages(100, [30, 70])).toThrow("share 1 must be 0 to 1; got 30");
    expect(() => splitIntoStages(100, [])).toThrow("add up to 0");
    expect(() => splitIntoStages(-1, [1])).toThrow("total must be 0 to");
  });

  it("adds up to the cent, each stage within a cent of its share (fast-check)", () => {
    const weights = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e14 }), weights, (total, parts) => {
        const whole = parts.reduce((sum, part) => sum + part, 0);
        fc.pre(whole > 0);
        const shares = parts.map((part) => part / whole);
        const cents = splitIntoStages(total, shares);
        expect(sumCents(cents)).toBe(total);
        cents.forEach((amount, index) => {
          // The share itself is only as exact as a double.
          expect(Math.abs(amount - total * (shares[index] ?? 0))).toBeLessThan(1 + total * 1e-14);
        });
      }),
    );
  });
});
