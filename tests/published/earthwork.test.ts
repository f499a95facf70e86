import { describe, expect, it } from "vitest";
import { readSoil, soilVolume } from "../../src/calc/earth/soil";
import { SOILS } from "../../src/calc/tables/soils";
import { STEEPEST_SLOPES, STEEPEST_SLOPES_DIN } from "../../src/calc/tables/slopes";
import { PITVOLUME } from "../../src/functions/earth/pitvolume";
import { expectPublished, given, publishedCase, publishedCases } from "./cases";

const EARTHWORK = "9 earthwork";
const named = (prefix: string) => publishedCases(EARTHWORK, prefix).map((c) => [c.id, c] as const);

describe("soil factors against published tables", () => {
  it.each(named("EW-FM").filter(([id]) => id !== "EW-FM-Coral"))("%s", (_, c) => {
    const soil = readSoil(String(c.inputs["material"]?.value).split(" / ").pop() ?? "");
    const from = {
      bank: soilVolume(soil, "bank", 1),
      loose: soilVolume(soil, "loose", 1),
      compacted: soilVolume(soil, "compacted", 1),
    };
    expectPublished(c, "bankToLoose", from.bank.loose);
    expectPublished(c, "bankToCompacted", from.bank.compacted);
    expectPublished(c, "looseToBank", from.loose.bank);
    expectPublished(c, "looseToCompacted", from.loose.compacted);
    expectPublished(c, "compactedToBank", from.compacted.bank);
    expectPublished(c, "compactedToLoose", from.compacted.loose);
  });

  // Coral is in no table here; the user states its figures, 50 % swell and 30 % more than the bank when compacted.
  it("EW-FM-Coral, as the user's own figures", () => {
    const c = publishedCase("EW-FM-Coral");
    const soil = readSoil("swell 50% shrink -30%");
    expectPublished(c, "looseToCompacted", soilVolume(soil, "loose", 1).compacted);
    expectPublished(c, "compactedToLoose", soilVolume(soil, "compacted", 1).loose);
  });

  it.each(named("EW-AK"))("%s: load factor of the stated swell", (_, c) => {
    const soil = readSoil(`swell ${given(c.expected, "swell")}% shrink 0%`);
    expectPublished(c, "loadFactor", soilVolume(soil, "loose", 1).bank);
  });

  it.each([
    ["EW-AK-Gravelsand", "sandy gravel"],
    ["EW-AK-Silt", "silt"],
  ])("%s: the table's %s", (id, name) => {
    const row = SOILS.find((soil) => soil.name === name);
    expectPublished(publishedCase(id), "swell", ((row?.loose ?? NaN) - 1) * 100);
  });
});

describe("earth volumes against published ones", () => {
  it("EW-OSHA-FACTS: what needs an engineer is not calculated", () => {
    const deepest = 20; // ft, the case's engineerRequiredAbove
    expect(publishedCase("EW-OSHA-FACTS").expected["engineerRequiredAbove"]?.value).toBe(deepest);
    expect(PITVOLUME.evaluate([8, 8, deepest, 1])).toBeGreaterThan(0);
    expect(() => PITVOLUME.evaluate([8, 8, deepest + 0.1, 1])).toThrow("depth must be 0 to 20 ft");
  });
});

describe("the steepest slopes", () => {
  it.each(named("EW-OSHA-").filter(([id]) => id !== "EW-OSHA-FACTS"))("%s", (_, c) => {
    const name = String(c.inputs["soil"]?.value);
    const row = STEEPEST_SLOPES.find((slope) => slope.name.startsWith(name));
    expectPublished(c, "hPerV", row?.slope ?? NaN);
    expectPublished(c, "angle", (Math.atan2(1, row?.slope ?? NaN) * 180) / Math.PI);
  });

  // DIN 4124 gives angles to the level (from memory): 80° in rock, 60° in stiff soil, 45° in loose or soft soil.
  it.each([80, 60, 45].map((angle, row) => [angle, row] as const))("of DIN 4124, %s°", (angle, row) => {
    expect(STEEPEST_SLOPES_DIN[row]?.slope).toBeCloseTo(1 / Math.tan((angle * Math.PI) / 180), 2);
  });
});
