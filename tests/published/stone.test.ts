import { describe, expect, it } from "vitest";
import { USUAL_SOLID_SHARE } from "../../src/calc/stone/boulder";
import { exactly } from "../../src/calc/stone/density";
import { boulderMix } from "../../src/calc/stone/mix";
import { LB_PER_FT3 } from "../../src/calc/tables/densities";
import { ROCKS } from "../../src/calc/tables/rocks";
import { STONES } from "../../src/calc/tables/stones";
import { BOULDERWEIGHT } from "../../src/functions/stone/boulderweight";
import { GRAVELTONS } from "../../src/functions/stone/graveltons";
import { STONETONS } from "../../src/functions/stone/stonetons";
import { expectPublished, given, publishedCase, publishedCases } from "./cases";
import { INCH } from "./si";

const STONE = "10 stone";
const named = (prefix: string) => publishedCases(STONE, prefix).map((c) => [c.id, c] as const);

describe("rock densities against the published table", () => {
  it.each(named("SN-SG"))("%s", (_, c) => {
    const row = ROCKS.find(({ name }) => name === String(c.inputs["rock"]?.value).toLowerCase());
    expectPublished(c, "low", (row?.low ?? NaN) / 1000);
    expectPublished(c, "high", (row?.high ?? NaN) / 1000);
    expectPublished(c, "lowPcf", (row?.low ?? NaN) / LB_PER_FT3);
    expectPublished(c, "highPcf", (row?.high ?? NaN) / LB_PER_FT3);
  });
});

describe("one stone against published weights", () => {
  it.each(named("SN-W"))("%s", (_, c) => {
    const size = given(c.inputs, "diameter");
    const rock = `${given(c.inputs, "unitWeight")} lb/ft3`;
    expectPublished(c, "weight", BOULDERWEIGHT.evaluate([size, size, size, rock, "rounded", "", "US"]) as number);
    // A mix of that one size counts by the same weight.
    const density = exactly(given(c.inputs, "unitWeight") * LB_PER_FT3);
    const [part] = boulderMix(1000, [{ size: size * INCH, share: 1 }], density, undefined, "rounded");
    expectPublished(c, "weight", (part?.each ?? NaN) / 0.45359237);
  });

  it("SN-BOULDER", () => {
    const c = publishedCase("SN-BOULDER");
    const [a, b, height] = ["a", "b", "c"].map((name) => given(c.inputs, name));
    const rock = `${given(c.inputs, "unitWeight")} lb/ft3`;
    const weight = (shape: string) => BOULDERWEIGHT.evaluate([a, b, height, rock, shape, "", "US"]) as number;
    expectPublished(c, "weight", weight("rounded"));
    // The case's note: a box is 1 / 0.524 = 1.91 times as heavy.
    expect(weight("box") / weight("rounded")).toBeCloseTo(1.91, 2);
  });
});

describe("loose stone against published figures", () => {
  it.each(named("SN-T-"))("%s", (_, c) => {
    const stone = `${given(c.inputs, "density")} ton/yd3`;
    const tons = GRAVELTONS.evaluate([given(c.inputs, "area"), given(c.inputs, "depth"), stone, 0, "US"]) as number;
    expectPublished(c, "tons", tons);
    expectPublished(c, "volume", tons / given(c.inputs, "density"));
    expectPublished(c, "tons", STONETONS.evaluate([given(c.expected, "volume"), stone, 0, "US"]) as number);
  });

  it("SN-EPA: a cubic yard of crushed stone", () => {
    const c = publishedCase("SN-EPA");
    const pounds = (STONETONS.evaluate([given(c.inputs, "volume"), "crushed stone", 0, "US"]) as number) * 2000;
    expect(pounds).toBeCloseTo(given(c.expected, "weight"), 6);
  });

  // Bulk density from specific gravity and porosity: the rows of the table that say they were computed so.
  it.each([
    ["SN-BULK-2.5-0.4", "low"],
    ["SN-BULK-2.65-0.4", "usual"],
    ["SN-BULK-2.65-0.35", "high"],
  ] as const)("%s: the %s of river stone and cobble, to the pound", (id, column) => {
    const bulk = given(publishedCase(id).expected, "bulk");
    for (const name of ["river stone", "cobble"]) {
      const row = STONES.find((stone) => stone.name === name);
      expect(Math.abs((row?.[column] ?? NaN) / LB_PER_FT3 - bulk)).toBeLessThan(0.75);
    }
  });

  it.each(named("SN-BULK"))("%s: tons per cubic yard from pounds per cubic foot", (_, c) => {
    const tons = STONETONS.evaluate([1, `${given(c.expected, "bulk")} lb/ft3`, 0, "US"]) as number;
    expectPublished(c, "tonsPerYd3", tons);
  });

  it("SN-VOID: the usual solid share is what the published voids leave", () => {
    const { expected } = publishedCase("SN-VOID");
    expect(USUAL_SOLID_SHARE).toBeLessThanOrEqual(1 - given(expected, "low"));
    expect(USUAL_SOLID_SHARE).toBeGreaterThanOrEqual(1 - given(expected, "high"));
  });
});
