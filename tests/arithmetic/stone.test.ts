import { describe, expect, it } from "vitest";
import { exactly } from "../../src/calc/stone/density";
import { boulderMix } from "../../src/calc/stone/mix";
import { LB_PER_FT3 } from "../../src/calc/tables/densities";
import { STONES } from "../../src/calc/tables/stones";
import { BOULDERWEIGHT } from "../../src/functions/stone/boulderweight";
import { GRAVELTONS } from "../../src/functions/stone/graveltons";
import { STONETONS } from "../../src/functions/stone/stonetons";
import { expectCase, given, arithmeticCase, arithmeticCases } from "./cases";
import { INCH } from "../published/si";

const STONE = "10 stone";
const named = (prefix: string) => arithmeticCases(STONE, prefix).map((c) => [c.id, c] as const);

describe("one stone by arithmetic", () => {
  it.each(named("SN-W"))("%s", (_, c) => {
    const size = given(c.inputs, "diameter");
    const rock = `${given(c.inputs, "unitWeight")} lb/ft3`;
    expectCase(c, "weight", BOULDERWEIGHT.evaluate([size, size, size, rock, "rounded", "", "US"]) as number);
    // A mix of that one size counts by the same weight.
    const density = exactly(given(c.inputs, "unitWeight") * LB_PER_FT3);
    const [part] = boulderMix(1000, [{ size: size * INCH, share: 1 }], density, undefined, "rounded");
    expectCase(c, "weight", (part?.each ?? NaN) / 0.45359237);
  });

  it("SN-BOULDER", () => {
    const c = arithmeticCase("SN-BOULDER");
    const [a, b, height] = ["a", "b", "c"].map((name) => given(c.inputs, name));
    const rock = `${given(c.inputs, "unitWeight")} lb/ft3`;
    const weight = (shape: string) => BOULDERWEIGHT.evaluate([a, b, height, rock, shape, "", "US"]) as number;
    expectCase(c, "weight", weight("rounded"));
    // The case's note: a box is 1 / 0.524 = 1.91 times as heavy.
    expect(weight("box") / weight("rounded")).toBeCloseTo(1.91, 2);
  });
});

describe("loose stone by arithmetic", () => {
  it.each(named("SN-T-"))("%s", (_, c) => {
    const stone = `${given(c.inputs, "density")} ton/yd3`;
    const tons = GRAVELTONS.evaluate([given(c.inputs, "area"), given(c.inputs, "depth"), stone, 0, "US"]) as number;
    expectCase(c, "tons", tons);
    expectCase(c, "volume", tons / given(c.inputs, "density"));
    expectCase(c, "tons", STONETONS.evaluate([given(c.expected, "volume"), stone, 0, "US"]) as number);
  });

  // Bulk density from specific gravity and porosity: the rows of the table that say they were computed so.
  it.each([
    ["SN-BULK-2.5-0.4", "low"],
    ["SN-BULK-2.65-0.4", "usual"],
    ["SN-BULK-2.65-0.35", "high"],
  ] as const)("%s: the %s of river stone and cobble, to the pound", (id, column) => {
    const bulk = given(arithmeticCase(id).expected, "bulk");
    for (const name of ["river stone", "cobble"]) {
      const row = STONES.find((stone) => stone.name === name);
      expect(Math.abs((row?.[column] ?? NaN) / LB_PER_FT3 - bulk)).toBeLessThan(0.75);
    }
  });

  it.each(named("SN-BULK"))("%s: tons per cubic yard from pounds per cubic foot", (_, c) => {
    const tons = STONETONS.evaluate([1, `${given(c.expected, "bulk")} lb/ft3`, 0, "US"]) as number;
    expectCase(c, "tonsPerYd3", tons);
  });
});
