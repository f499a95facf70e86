import { describe, expect, it } from "vitest";
import { soilOf, soilVolume } from "../../src/calc/earth/soil";
import { BERMVOLUME } from "../../src/functions/earth/bermvolume";
import { PITVOLUME } from "../../src/functions/earth/pitvolume";
import { SOILBALANCE } from "../../src/functions/earth/soilbalance";
import { expectCase, given, arithmeticCase, arithmeticCases } from "./cases";

const EARTHWORK = "9 earthwork";
const named = (prefix: string) => arithmeticCases(EARTHWORK, prefix).map((c) => [c.id, c] as const);

describe("soil factors by arithmetic", () => {
  it("EW-SW30 and EW-LOAD: what swell means", () => {
    const thirty = arithmeticCase("EW-SW30");
    const soil = soilOf(given(thirty.expected, "swell") / 100, 0);
    expect(soilVolume(soil, "bank", given(thirty.inputs, "bank")).loose).toBeCloseTo(given(thirty.inputs, "loose"), 9);
    const load = arithmeticCase("EW-LOAD");
    const { bank } = soilVolume(soilOf(given(load.inputs, "swell") / 100, 0), "loose", 1);
    expectCase(load, "loadFactor", bank);
    expectCase(load, "looseDensity", given(load.inputs, "bankDensity") * bank);
  });

  it("EW-DEN: swell from the two densities", () => {
    const c = arithmeticCase("EW-DEN");
    const swell = given(c.inputs, "bankDensity") / given(c.inputs, "looseDensity") - 1;
    expectCase(c, "swell", swell * 100);
    const ton = soilVolume(soilOf(swell, 0), "bank", 2000 / given(c.inputs, "bankDensity"));
    expectCase(c, "bankPerTon", ton.bank);
    expectCase(c, "loosePerTon", ton.loose);
  });

  it("EW-BORROW: bank to dig for a compacted fill, by densities", () => {
    const c = arithmeticCase("EW-BORROW");
    // Densities say it another way: compacted / bank volume = bank density / fill density.
    const soil = soilOf(0.2, 1 - given(c.inputs, "gammaBorrow") / given(c.inputs, "gammaFill"));
    const { bank } = soilVolume(soil, "compacted", given(c.inputs, "fill"));
    expectCase(c, "borrow", bank / (1 - given(c.inputs, "wasteFraction")));
  });
});

describe("earth volumes by arithmetic", () => {
  it.each(named("EW-PIT"))("%s", (_, c) => {
    const [length, width, depth, z] = ["bottomLength", "bottomWidth", "depth", "z"].map((name) =>
      given(c.inputs, name),
    );
    const yards = PITVOLUME.evaluate([length, width, depth, z, "US"]) as number;
    expectCase(c, "volumeYd", yards);
    expectCase(c, "volume", yards * 27);
    expectCase(c, "pyramidFrustum", yards * 27);
    // The average of the ends overstates a sloped pit; the exact formula may not.
    expect(yards * 27).toBeLessThanOrEqual(given(c.expected, "averageEndArea") * (1 + 1e-12));
  });

  it.each(named("EW-BERM"))("%s", (_, c) => {
    const [length, crest, height, z] = ["length", "topWidth", "height", "z"].map((name) => given(c.inputs, name));
    const compacted = BERMVOLUME.evaluate([length, crest, height, z, "US"]) as number;
    expectCase(c, "compacted", compacted);
    expectCase(c, "area", (compacted * 27) / (length ?? NaN));
    // The soil balance of that berm: bank and loose needed, of the second row of its table.
    const berm = (SOILBALANCE.evaluate([0, compacted, "loam", 10, "US"]) as unknown[][])[2];
    expectCase(c, "bankNeeded_loam", berm?.[1] as number);
    expectCase(c, "looseNeeded_loam", berm?.[2] as number);
  });
});
