import { describe, it } from "vitest";
import { findWire } from "../../src/calc/pump/cable";
import { pumpWatts, runCostCents } from "../../src/calc/pump/power";
import { expectNear, expectPublished, given, publishedCase, publishedCases } from "./cases";
import { FOOT, GPM, inSI } from "./si";
import { HORSEPOWER, scaled } from "./worked";

const CABLES = "12 electrical";

describe("pump laws against published values", () => {
  it.each(["PU-AFF-01", "PU-AFF-02"])("%s: a point of the curve moves as the handbook says", (id) => {
    const c = publishedCase(id);
    const ratio = given(c.inputs, "N2") / given(c.inputs, "N1");
    const flow = given(c.inputs, "Q1") * GPM;
    expectPublished(c, "Q2", (flow * ratio) / GPM);
    expectPublished(c, "H2", scaled(flow, given(c.inputs, "H1") * FOOT, ratio) / FOOT);
  });
});

describe("power and cost against published values", () => {
  it("PU-P-01 Crane, example 7.15", () => {
    const c = publishedCase("PU-P-01");
    const watts = pumpWatts(inSI(c, "flow"), inSI(c, "TDH"), given(c.inputs, "efficiency"));
    expectPublished(c, "brakePower", watts / HORSEPOWER);
  });

  it("PU-P-02 Crane, example 7.34: brake power, electric power and cost of 8000 h", () => {
    const c = publishedCase("PU-P-02");
    const [flow, head] = [inSI(c, "flow"), inSI(c, "head")];
    const [pump, motor, drive] = ["pumpEff", "motorEff", "vsdEff"].map((name) => given(c.inputs, name));
    expectPublished(c, "brakePower", pumpWatts(flow, head, pump ?? 0) / HORSEPOWER);
    const watts = pumpWatts(flow, head, (pump ?? 0) * (motor ?? 0) * (drive ?? 0));
    expectPublished(c, "electricalPower", watts / HORSEPOWER);
    const terms = { hoursPerDay: 8000 / 365, daysPerYear: 365, tariff: given(c.inputs, "rate") };
    expectPublished(c, "cost", runCostCents(watts, terms) / 100);
  });
});

describe("cables against published values", () => {
  // NEC chapter 9, Table 8, stranded: Ω per 1000 ft, and the rule 12.9 Ω·cmil/ft / cmil.
  it.each(publishedCases(CABLES, "EL-T8T").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const { resistance } = findWire(String(c.inputs["awg"]?.value));
    const perKilofoot = resistance * 304.8;
    expectPublished(c, "resistance", perKilofoot);
    expectNear(perKilofoot, (12.9 / given(c.inputs, "circularMils")) * 1000, 0.012);
  });

  it("EL-TC: the metric sizes are brought from 20 °C to 75 °C by the code's factor", () => {
    const c = publishedCase("EL-TC");
    // IEC 60228 gives 7.41 Ω/km for 2.5 mm² at 20 °C.
    expectPublished(c, "factor", 0.00741 / findWire("2.5 mm2").resistance);
  });
});
