import { describe, expect, it } from "vitest";
import { besideUnit, readWritten } from "../../../../src/calc/money/reconcile/writtenQuantity";

describe("a quantity as it is written on a paper", () => {
  it.each([
    ["0.5 ton", 0.5, "ton"],
    ["48,000 lb", 48000, "lb"],
    ["2 ft 6 in", 2.5, "ft"],
    ["6 rolls", 6, "rolls"],
    ["1 1/2 pallets", 1.5, "pallets"],
    ["-2 ea.", -2, "ea"],
    ["1,250", 1250, undefined],
    ["3 + 4", 7, undefined],
  ])("%s is %s %s", (text, quantity, unit) => {
    expect(readWritten(text, "quantity").quantity).toBeCloseTo(quantity, 9);
    expect(readWritten(text, "quantity").unit).toBe(unit);
  });

  it.each(["half", "ton", "5 to 6 ton", "about 5", "", "x".repeat(5000), `${"1".repeat(5000)} #`])(
    "%s is not read",
    (text) => {
      expect(() => readWritten(text, "quantity")).toThrow("quantity");
    },
  );

  it("comes in the unit that stands beside it", () => {
    // NIST SP 811: 2,000 lb are a short ton.
    expect(besideUnit({ quantity: 1000, unit: "lb" }, "ton", undefined, "quantity")).toEqual({
      quantity: 0.5,
      unit: "ton",
    });
    expect(besideUnit({ quantity: 6, unit: "rolls" }, "Roll", undefined, "quantity").quantity).toBe(6);
    expect(besideUnit({ quantity: 6, unit: "rolls" }, undefined, undefined, "quantity").unit).toBe("rolls");
    expect(besideUnit({ quantity: 24, unit: "t" }, "m3", 1600, "quantity")).toEqual({ quantity: 15, unit: "m3" });
    expect(() => besideUnit({ quantity: 6, unit: "rolls" }, "ton", undefined, "quantity")).toThrow(
      "quantity is in rolls and its unit says ton; write one unit",
    );
  });
});
