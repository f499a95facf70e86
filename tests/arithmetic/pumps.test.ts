import { describe, it } from "vitest";
import { findPipe } from "../../src/calc/pipe/bore";
import { makeSystem } from "../../src/calc/pipe/route";
import { cableDrop, findWire } from "../../src/calc/pump/cable";
import { makeCurve } from "../../src/calc/pump/curve";
import { dutyPoint } from "../../src/calc/pump/duty";
import { pumpWatts, runCostCents } from "../../src/calc/pump/power";
import { expectNear, expectCase, given, arithmeticCase, arithmeticCases } from "./cases";
import { FOOT, GPM, INCH, inSI } from "../published/si";
import { HORSEPOWER, scaled } from "../published/worked";

const PUMPS = "5 pump laws and power";
const CABLES = "12 electrical";

describe("pump laws by arithmetic", () => {
  it.each(
    arithmeticCases(PUMPS, "PU-AFF-")
      .filter((c) => c.inputs["speedRatio"])
      .map((c) => [c.id, c] as const),
  )("%s", (_, c) => {
    const ratio = given(c.inputs, "speedRatio");
    const flow = given(c.inputs, "Q1") * GPM;
    expectCase(c, "Q2", (flow * ratio) / GPM);
    expectCase(c, "H2", scaled(flow, given(c.inputs, "H1") * FOOT, ratio) / FOOT);
  });

  it("PU-AFF-SYS: with a lift the flow falls faster than the speed (EP-04 to EP-09)", () => {
    const c = arithmeticCase("PU-AFF-SYS");
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

describe("power and cost by arithmetic", () => {
  it.each(arithmeticCases(PUMPS, "PU-WHP").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const [flow, head] = [inSI(c, "flow"), inSI(c, "head")];
    expectCase(c, "waterPower", pumpWatts(flow, head, 1) / HORSEPOWER);
    const electric = pumpWatts(flow, head, given(c.inputs, "wireToWaterEff"));
    expectCase(c, "electricPower", electric / 1000);
  });

  it.each(arithmeticCases(PUMPS, "PU-SI").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const [flow, head] = [inSI(c, "flow"), inSI(c, "head")];
    expectCase(c, "hydraulicPower", pumpWatts(flow, head, 1));
    expectCase(c, "inputPower", pumpWatts(flow, head, given(c.inputs, "eff")));
  });

  it("PU-W2W: water power over the input measured at the meter", () => {
    const c = arithmeticCase("PU-W2W");
    const water = pumpWatts(inSI(c, "flow"), inSI(c, "TDH"), 1);
    expectCase(c, "waterPower", water / HORSEPOWER);
    const input = given(c.inputs, "volts") * given(c.inputs, "amps") * given(c.inputs, "powerFactor");
    expectCase(c, "efficiency", water / input);
  });

  it("PU-KWH: yearly cost", () => {
    const c = arithmeticCase("PU-KWH");
    const terms = {
      hoursPerDay: given(c.inputs, "hours"),
      daysPerYear: given(c.inputs, "days"),
      tariff: given(c.inputs, "rate"),
    };
    expectCase(c, "cost", runCostCents(given(c.inputs, "power"), terms) / 100);
    expectCase(c, "energy", runCostCents(given(c.inputs, "power"), { ...terms, tariff: 1 }) / 100);
  });
});

describe("cables by arithmetic", () => {
  it.each(arithmeticCases(CABLES, "EL-VDC").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const wire = findWire(/(\d+) AWG/.exec(c.description)?.[0] ?? "");
    const lost = cableDrop(given(c.inputs, "current"), inSI(c, "length"), wire);
    expectCase(c, "VD", lost);
    expectCase(c, "percent", (lost / given(c.inputs, "V")) * 100);
  });
});
