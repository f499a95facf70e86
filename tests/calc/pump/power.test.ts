import { describe, expect, it } from "vitest";
import { overYears, runCostCents } from "../../../src/calc/pump/power";

describe("the cost of running a pump", () => {
  it("is rounded as all money is: once, half a cent up in decimal", () => {
    // By hand: 10.5 kWh × 0.67 = 7.035; 1.5 kWh × 0.67 = 1.005, which in binary lies below the half cent.
    expect(runCostCents(10_500, { hoursPerDay: 1, daysPerYear: 1, tariff: 0.67 })).toBe(704);
    expect(runCostCents(1500, { hoursPerDay: 1, daysPerYear: 1, tariff: 0.67 })).toBe(101);
    // By hand: 0.1 W-hours too few, 1499.9 W × 0.67 = 1.004933.
    expect(runCostCents(1499.9, { hoursPerDay: 1, daysPerYear: 1, tariff: 0.67 })).toBe(100);
  });

  it("adds up over the years, part of a year included", () => {
    // By hand: 267.08 × 5 = 1335.40; 267.09 × 2.5 = 667.725, so 667.73.
    expect(overYears(26708, 5)).toBe(133540);
    expect(overYears(26709, 2.5)).toBe(66773);
  });
});
