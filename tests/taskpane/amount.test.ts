import { expect, it } from "vitest";
import { amount } from "../../src/taskpane/amount";

it("amounts are written as people write them: a sign before the number, a word behind it", () => {
  expect(amount("12,420.82", "$")).toBe("$12,420.82");
  expect(amount("-3.00", "C$")).toBe("-C$3.00");
  expect(amount("8,120.50", "kr")).toBe("8,120.50 kr");
  expect(amount("4.2", "ft/s")).toBe("4.2 ft/s");
  expect(amount("8.00", "")).toBe("8.00");
});
