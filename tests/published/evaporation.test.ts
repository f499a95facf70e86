import { describe, expect, it } from "vitest";
import { saturationPressure } from "../../src/calc/water/evaporation";
import { EVAPLOSS } from "../../src/functions/water/evaploss";
import { expectPublished, given, publishedCase } from "./cases";

describe("evaporation against published values", () => {
  it("EV-FAO-245 FAO-56, example 3", () => {
    const c = publishedCase("EV-FAO-245");
    expectPublished(c, "es", saturationPressure(given(c.inputs, "T")));
  });

  it("EV-74 what was measured beside the equation stands in the help", () => {
    const { expected } = publishedCase("EV-74");
    const percent = (name: string): string => String(Math.round(given(expected, name) * 100));
    expect(EVAPLOSS.limits).toContain(`${percent("ratio")} %`);
    expect(EVAPLOSS.limits).toContain(`${percent("activeIncreaseLow")} to ${percent("activeIncreaseHigh")} % more`);
  });
});
