import { describe, expect, it } from "vitest";
import { USUAL_SOLID_SHARE } from "../../src/calc/stone/boulder";
import { STONETONS } from "../../src/functions/stone/stonetons";
import { given, publishedCase } from "./cases";

describe("loose stone against published figures", () => {
  it("SN-EPA: a cubic yard of crushed stone", () => {
    const c = publishedCase("SN-EPA");
    const pounds = (STONETONS.evaluate([given(c.inputs, "volume"), "crushed stone", 0, "US"]) as number) * 2000;
    expect(pounds).toBeCloseTo(given(c.expected, "weight"), 6);
  });

  it("SN-VOID: the usual solid share is what the published voids leave", () => {
    const { expected } = publishedCase("SN-VOID");
    expect(USUAL_SOLID_SHARE).toBeLessThanOrEqual(1 - given(expected, "low"));
    expect(USUAL_SOLID_SHARE).toBeGreaterThanOrEqual(1 - given(expected, "high"));
  });
});
