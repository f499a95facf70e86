import { describe, expect, it } from "vitest";
import { BASIN_PARTS, GRAVEL_VOIDS } from "../../src/calc/tables/basinParts";
import { given, publishedCase } from "./cases";

describe("the basin against published storage", () => {
  it("ST-040, ST-MOD, ST-TRCA the void fractions of the table", () => {
    const of = (name: string): number => BASIN_PARTS.find((row) => row.name === name)?.voidFraction ?? NaN;
    expect(of("pit")).toBe(given(publishedCase("ST-040").expected, "porosity"));
    expect(GRAVEL_VOIDS).toBe(of("pit"));
    const modules = publishedCase("ST-MOD");
    expect(of("modules")).toBeGreaterThanOrEqual(given(modules.expected, "low"));
    expect(of("modules")).toBeLessThanOrEqual(given(modules.expected, "high"));
    // The guide's more careful figure for any aggregate is named in the row's source.
    const careful = given(publishedCase("ST-TRCA").expected, "porosity");
    expect(BASIN_PARTS[0]?.source).toContain(String(careful));
  });
});
