import { describe, it } from "vitest";
import { saturationPressure } from "../../src/calc/water/evaporation";
import { expectPublished, given, publishedCase } from "./cases";

describe("evaporation against published values", () => {
  it("EV-FAO-245 FAO-56, example 3", () => {
    const c = publishedCase("EV-FAO-245");
    expectPublished(c, "es", saturationPressure(given(c.inputs, "T")));
  });
});
