import { describe, it } from "vitest";
import { saturationPressure } from "../../src/calc/water/evaporation";
import { fromInside, toInside } from "../../src/calc/quantity/measures";
import { expectCase, given, arithmeticCase, arithmeticCases } from "./cases";

const EVAPORATION = "11 evaporation";

describe("evaporation by arithmetic", () => {
  // The second value is IAPWS-95, an independent equation of state, through the chemicals library.
  it.each(arithmeticCases(EVAPORATION, "EV-SVP-").map((c) => [c.id, c] as const))("%s vapour pressure", (_, c) => {
    const pressure = saturationPressure(given(c.inputs, "T"));
    expectCase(c, "tetens", pressure);
    expectCase(c, "iapws", pressure);
  });

  it("EV-HYD-10 vapour pressure by another program", () => {
    const c = arithmeticCase("EV-HYD-10");
    const kPa = saturationPressure(given(c.inputs, "T"));
    expectCase(c, "es", kPa * 1000);
    expectCase(c, "psi", kPa / 6.894757);
  });

  /** A depth lost over an area, both in US units, as gallons: nothing but our units. */
  const gallons = (squareFeet: number, inches: number): number =>
    fromInside("water", toInside("area", squareFeet, "US") * toInside("size", inches, "US"), "US");

  it.each(arithmeticCases(EVAPORATION, "EV-GAL-").map((c) => [c.id, c] as const))("%s inches over an area", (_, c) => {
    expectCase(c, "volume", gallons(given(c.inputs, "area"), given(c.inputs, "depth")));
  });

  it("EV-PANEX a pan's inches over an area", () => {
    const c = arithmeticCase("EV-PANEX");
    const inches = given(c.inputs, "pan") * given(c.inputs, "coefficient");
    expectCase(c, "loss", gallons(given(c.inputs, "area"), inches));
  });
});
