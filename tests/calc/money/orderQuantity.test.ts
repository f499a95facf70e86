import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { orderQuantity } from "../../../src/calc/money/orderQuantity";

describe("orderQuantity", () => {
  it("rounds the need with its waste up to whole packs", () => {
    expect(orderQuantity(23.2, 0, 5)).toBe(25); // 4.64 packs
    expect(orderQuantity(61, 0, 20)).toBe(80); // 3.05 packs
    expect(orderQuantity(21, 0.1, 0.5)).toBe(23.5); // 23.1 tons by the half ton
    expect(orderQuantity(7.01)).toBe(8); // single pieces unless a pack is named
    expect(orderQuantity(0.3, 0, 0.125)).toBe(0.375); // 2.4 packs of an eighth
  });

  it("does not buy a pack for noise", () => {
    expect(orderQuantity(2.0000000001)).toBe(2);
    expect(orderQuantity(100, 0.1, 10)).toBe(110); // 100 × 1.1 is 110.00000000000001 in binary
    expect(orderQuantity(0.3, 0, 0.1)).toBe(0.3); // 0.3 / 0.1 is 2.9999999999999996 in binary
    expect(orderQuantity(1e9, 0, 1)).toBe(1e9);
  });

  it("still buys one for a real part of a pack", () => {
    expect(orderQuantity(2.001)).toBe(3);
    expect(orderQuantity(1e-9, 0, 10)).toBe(10);
  });

  it("keeps the supplier's minimum, in whole packs, but orders nothing for nothing", () => {
    expect(orderQuantity(3, 0, 0.5, 8)).toBe(8);
    expect(orderQuantity(3, 0, 5, 8)).toBe(10);
    expect(orderQuantity(0, 0.1, 5, 8)).toBe(0);
  });

  it("names what is out of range", () => {
    expect(() => orderQuantity(-1)).toThrow("need must be 0 to");
    expect(() => orderQuantity(1, 10)).toThrow("waste must be 0 to 2; got 10");
    expect(() => orderQuantity(1, 0, 0)).toThrow("pack must be");
    expect(() => orderQuantity(1, 0, 1, NaN)).toThrow("minimum must be a finite number");
  });

  it("covers the need with less than a pack to spare, in whole packs (fast-check)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(0.1, 0.125, 0.25, 0.5, 1, 5, 12, 18, 50),
        (need, waste, pack) => {
          const order = orderQuantity(need, waste, pack);
          const wanted = need * (1 + waste);
          expect(order).toBeGreaterThanOrEqual(wanted - pack * 2e-6);
          expect(order - wanted).toBeLessThan(pack * (1 + 2e-6));
          expect(Math.abs(order / pack - Math.round(order / pack))).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it("never falls when the need rises (fast-check)", () => {
    const amount = fc.double({ min: 0, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(amount, amount, fc.constantFrom(0.1, 1, 7), (a, b, pack) => {
        expect(orderQuantity(Math.min(a, b), 0.07, pack)).toBeLessThanOrEqual(
          orderQuantity(Math.max(a, b), 0.07, pack),
        );
      }),
    );
  });
});
