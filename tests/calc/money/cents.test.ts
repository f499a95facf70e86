import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromCents, lineCents, roundCents, sumCents, toCents } from "../../../src/calc/money/cents";

describe("cents", () => {
  it("round half away from zero in decimal, where binary floats would not", () => {
    // By hand; in binary 1.005 × 100 is 100.49999999999999 and 7 × 1.115 is 7.804999999999999.
    expect(toCents(1.005)).toBe(101);
    expect(toCents(-1.005)).toBe(-101);
    expect(roundCents(2.675)).toBe(2.68);
    expect(lineCents(7, 1.115)).toBe(781);
    expect(lineCents(-7, 1.115)).toBe(-781);
    // Far from half a cent: 3 × 1.119 = 3.357, 3 × 1.111 = 3.333.
    expect(lineCents(3, 1.119)).toBe(336);
    expect(lineCents(3, 1.111)).toBe(333);
    expect(lineCents(-3, 1.119)).toBe(-336);
  });

  it("drop the noise of a turned quantity before it meets a price", () => {
    // 0.1 + 0.2 is 0.30000000000000004; 0.3 × 33.35 is 10.005, half a cent to round up. One step lower is noise too.
    expect(lineCents(0.1 + 0.2, 33.35)).toBe(1001);
    expect(lineCents(0.29999999999999993, 33.35)).toBe(1001);
  });

  it("drop the noise of a price that was turned into another unit", () => {
    // By hand: 10.5 ft at 0.67 a ft is 7.035, so 704 cents, whichever unit the product is made in. In whole half feet and
    // cents the product is exact, and half a cent up is half a step more before the floor.
    for (let halfFeet = 1; halfFeet < 400; halfFeet += 2) {
      for (const cents of [67, 33, 115, 257, 3335]) {
        const exact = Math.floor((halfFeet * cents + 1) / 2);
        expect(lineCents((halfFeet / 2) * 0.3048, cents / 100 / 0.3048), `${halfFeet / 2} ft at ${cents} cents`).toBe(
          exact,
        );
      }
    }
  });

  it("refuse what is not an amount, by name", () => {
    expect(() => toCents(NaN, "price")).toThrow("price must be a finite number");
    expect(() => toCents(2e12, "price")).toThrow("price must lie within");
    expect(() => lineCents(1e9, 1e9)).toThrow("quantity times price must lie within");
  });

  it("come back from money unchanged (fast-check)", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e13, max: 1e13 }), (cents) => {
        expect(toCents(fromCents(cents))).toBe(cents);
      }),
    );
  });

  it("add up exactly, whatever the order (fast-check)", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1e9, max: 1e9 }), { maxLength: 200 }), (cents) => {
        const exact = cents.reduce((sum, each) => sum + BigInt(each), 0n);
        expect(BigInt(sumCents(cents))).toBe(exact);
        expect(sumCents([...cents].reverse())).toBe(sumCents(cents));
      }),
    );
  });
});
