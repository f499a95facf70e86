import { describe, expect, it } from "vitest";
import { dayOf, daySerial, isoDay } from "../../src/host/dates";

/** 39448: Excel's own documentation of DATE; 2958465: ECMA-376 part 1, 18.17.4.1. */
const PUBLISHED = [
  [2008, 1, 1, 39448],
  [9999, 12, 31, 2958465],
] as const;

describe("days as serial numbers", () => {
  it.each(PUBLISHED)("%i-%i-%i is %i", (year, month, day, serial) => {
    const iso = `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
    expect(daySerial(iso)).toBe(serial);
    expect(isoDay(serial)).toBe(iso);
    // The user's own day, from its first minute to its last.
    expect(dayOf(new Date(year, month - 1, day, 0, 1))).toBe(serial);
    expect(dayOf(new Date(year, month - 1, day, 23, 59))).toBe(serial);
  });

  it("refuses what is no day", () => {
    expect(daySerial("14.4.2026")).toBe("");
    expect(isoDay("soon")).toBe("");
  });
});
