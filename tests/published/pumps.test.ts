import { describe, it } from "vitest";
import { findPipe } from "../../src/calc/pipe/bore";
import { makeSystem } from "../../src/calc/pipe/route";
import { cableDrop, findWire } from "../../src/calc/pump/cable";
import { makeCurve, pumpHead } from "../../src/calc/pump/curve";
import { dutyPoint } from "../../src/calc/pump/duty";
import { pumpWatts, runCostCents } from "../../src/calc/pump/power";
import { expectNear, expectPublished, given, publishedCase, publishedCases } from "./cases";
import { FOOT, GPM, INCH, inSI } from "./si";

const PUMPS = "5 pump laws and power";
const CABLES = "12 electrical";
const HORSEPOWER = 745.699872; // NIST SP 811, appendix B.8

/** A pump whose curve has its second point at (flow, head), so that its scaled place can be looked up. */
function scaled(flow: number, head: number, ratio: number): number {
  const curve = makeCurve([
    { flow: 0, head: head * 1.5 },
    { flow, head },
  ]);
  return pumpHead(curve, flow * ratio, ratio);
}

describe("pump laws against published values", () => {
  it.each(["PU-AFF-01", "PU-AFF-02"])("%s: a point of the curve moves as the handbook says", (id) => {
    const c = publishedCase(id);
    const ratio = given(c.inputs, "N2") / given(c.inputs, "N1");
    const flow = given(c.inputs, "Q1") * GPM;
    expectPublished(c, "Q2", (flow * ratio) / GPM);
    expectPublished(c, "H2", scaled(flow, given(c.inputs, "H1") * FOOT, ratio) / FOOT);
  });

  it.each(
    publishedCases(PUMPS, "PU-AFF-")
      .filter((c) => c.inputs["speedRatio"])
      .map((c) => [c.id, c] as const),
  )("%s", (_, c) => {
    const ratio = given(c.inputs, "speedRatio");
    const flow = given(c.inputs, "Q1") * GPM;
    expectPublished(c, "Q2", (flow * ratio) / GPM);
    expectPublished(c, "H2", scaled(flow, given(c.inputs, "H1") * FOOT, ratio) / FOOT);
  });

  it("PU-AFF-SYS: with a lift the flow falls faster than the speed (EP-04 to EP-09)", () => {
    const c = publishedCase("PU-AFF-SYS");
    // EP-04's curve A - B Q^C through (0, 28), (150, 20), (250, 8): C = ln(20/8) / ln(250/150), B = 8 / 150^C
    const exponent = Math.log(20 / 8) / Math.log(250 / 150);
    const end = (28 / 8) ** (1 / exponent) * 150;
    const curve = makeCurve(
      Array.from({ length: 200 }, (_, i) => {
        const flow = (end * i) / 199;
        return { flow: flow * GPM, head: Math.max(0, 28 - 8 * (flow / 150) ** exponent) * FOOT };
      }),
    );
    const pipe = findPipe({ size: 3 * INCH, isBore: false }, "Sch 40 PVC");
    const route = makeSystem(9 * FOOT, [{ pipe, length: 80 * FOOT, k: 5.2 }]);
    const ratio = dutyPoint(curve, route, 1, 0.8).flow / dutyPoint(curve, route).flow;
    // 0.02 % instead of 0.01 %: EPANET's Hazen-Williams constant differs by 0.3 % of friction.
    expectNear(ratio, given(c.expected, "ratioFlow"), 0.0002);
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

  it.each(publishedCases(PUMPS, "PU-WHP").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const [flow, head] = [inSI(c, "flow"), inSI(c, "head")];
    expectPublished(c, "waterPower", pumpWatts(flow, head, 1) / HORSEPOWER);
    const electric = pumpWatts(flow, head, given(c.inputs, "wireToWaterEff"));
    expectPublished(c, "electricPower", electric / 1000);
  });

  it.each(publishedCases(PUMPS, "PU-SI").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const [flow, head] = [inSI(c, "flow"), inSI(c, "head")];
    expectPublished(c, "hydraulicPower", pumpWatts(flow, head, 1));
    expectPublished(c, "inputPower", pumpWatts(flow, head, given(c.inputs, "eff")));
  });

  it("PU-W2W: water power over the input measured at the meter", () => {
    const c = publishedCase("PU-W2W");
    const water = pumpWatts(inSI(c, "flow"), inSI(c, "TDH"), 1);
    expectPublished(c, "waterPower", water / HORSEPOWER);
    const input = given(c.inputs, "volts") * given(c.inputs, "amps") * given(c.inputs, "powerFactor");
    expectPublished(c, "efficiency", water / input);
  });

  it("PU-KWH: yearly cost", () => {
    const c = publishedCase("PU-KWH");
    const terms = {
      hoursPerDay: given(c.inputs, "hours"),
      daysPerYear: given(c.inputs, "days"),
      tariff: given(c.inputs, "rate"),
    };
    expectPublished(c, "cost", runCostCents(given(c.inputs, "power"), terms) / 100);
    expectPublished(c, "energy", runCostCents(given(c.inputs, "power"), { ...terms, tariff: 1 }) / 100);
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

  it.each(publishedCases(CABLES, "EL-VDC").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const wire = findWire(/(\d+) AWG/.exec(c.description)?.[0] ?? "");
    const lost = cableDrop(given(c.inputs, "current"), inSI(c, "length"), wire);
    expectPublished(c, "VD", lost);
    expectPublished(c, "percent", (lost / given(c.inputs, "V")) * 100);
  });

  it.each([
    ["EL-VD-01", "12 AWG"],
    ["EL-VD-02", "8 AWG"],
    ["EL-VD-03", "12 AWG"],
  ])("%s licence-exam example", (id, size) => {
    const c = publishedCase(id);
    const lost = cableDrop(given(c.inputs, "I"), inSI(c, "L"), findWire(size));
    expectPublished(c, "VD", lost);
    expectPublished(c, "percent", (lost / given(c.inputs, "V")) * 100);
  });

  it("EL-TC: the metric sizes are brought from 20 °C to 75 °C by the code's factor", () => {
    const c = publishedCase("EL-TC");
    // IEC 60228 gives 7.41 Ω/km for 2.5 mm² at 20 °C.
    expectPublished(c, "factor", 0.00741 / findWire("2.5 mm2").resistance);
  });
});
