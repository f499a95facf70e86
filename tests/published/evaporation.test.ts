import { describe, expect, it } from "vitest";
import { evaporationPerDay, evaporationRate, saturationPressure } from "../../src/calc/water/evaporation";
import { fromInside, toInside } from "../../src/calc/quantity/measures";
import { EVAPLOSS } from "../../src/functions/water/evaploss";
import { expectNear, expectPublished, given, publishedCase, publishedCases } from "./cases";

const EVAPORATION = "11 evaporation";
const SECONDS_PER_HOUR = 3600;

describe("evaporation against published values", () => {
  it("EV-FAO-245 FAO-56, example 3", () => {
    const c = publishedCase("EV-FAO-245");
    expectPublished(c, "es", saturationPressure(given(c.inputs, "T")));
  });

  // The second value is IAPWS-95, an independent equation of state, through the chemicals library.
  it.each(publishedCases(EVAPORATION, "EV-SVP-").map((c) => [c.id, c] as const))("%s vapour pressure", (_, c) => {
    const pressure = saturationPressure(given(c.inputs, "T"));
    expectPublished(c, "tetens", pressure);
    expectPublished(c, "iapws", pressure);
  });

  it("EV-HYD-10 vapour pressure printed by the hydraulics vignette", () => {
    const c = publishedCase("EV-HYD-10");
    const kPa = saturationPressure(given(c.inputs, "T"));
    expectPublished(c, "es", kPa * 1000);
    expectPublished(c, "psi", kPa / 6.894757);
  });

  it.each(publishedCases(EVAPORATION, "EV-ASH-").map((c) => [c.id, c] as const))("%s ASHRAE, SI constants", (_, c) => {
    const [area, wind, humidity] = [given(c.inputs, "area"), given(c.inputs, "V"), given(c.inputs, "RH")];
    const [water, air] = [given(c.inputs, "Twater"), given(c.inputs, "Tair")];
    const [pw, pa] = [saturationPressure(water), humidity * saturationPressure(air)];
    expectPublished(c, "pw", pw);
    expectPublished(c, "pa", pa);
    const rate = area * evaporationRate(pw - pa, wind, given(c.inputs, "Y")) * SECONDS_PER_HOUR;
    expectPublished(c, "rate", rate);
    expectPublished(c, "litresPerDay", rate * 24);
    // The whole, with the latent heat at the water's temperature rather than the case's round 2440 kJ/kg.
    const whole = evaporationPerDay({ area, waterTemperature: water, airTemperature: air, humidity, wind });
    expectNear(whole * 1000, given(c.expected, "litresPerDay"), 0.006);
  });

  /** A depth lost over an area, both in US units, as gallons: nothing but our units. */
  const gallons = (squareFeet: number, inches: number): number =>
    fromInside("water", toInside("area", squareFeet, "US") * toInside("size", inches, "US"), "US");

  it.each(publishedCases(EVAPORATION, "EV-GAL-").map((c) => [c.id, c] as const))("%s inches over an area", (_, c) => {
    expectPublished(c, "volume", gallons(given(c.inputs, "area"), given(c.inputs, "depth")));
  });

  it("EV-PANEX a pan's inches over an area", () => {
    const c = publishedCase("EV-PANEX");
    const inches = given(c.inputs, "pan") * given(c.inputs, "coefficient");
    expectPublished(c, "loss", gallons(given(c.inputs, "area"), inches));
  });

  it("EV-74 what was measured beside the equation stands in the help", () => {
    const { expected } = publishedCase("EV-74");
    const percent = (name: string): string => String(Math.round(given(expected, name) * 100));
    expect(EVAPLOSS.limits).toContain(`${percent("ratio")} %`);
    expect(EVAPLOSS.limits).toContain(`${percent("activeIncreaseLow")} to ${percent("activeIncreaseHigh")} % more`);
  });
});
