import { describe, expect, it } from "vitest";
import { flowAtDepth, normalFlow } from "../../src/calc/water/bed";
import { expectNear, expectCase, given, arithmeticCase, arithmeticCases } from "./cases";
import { FOOT, INCH, inSI } from "../published/si";
import { bedOf } from "../published/worked";

const CHANNELS = "7 open channel";

describe("beds by arithmetic", () => {
  it("OC-02 Ponce: speed and flow at a depth, and the depth back from the flow", () => {
    const c = arithmeticCase("OC-02");
    const { speed, area } = flowAtDepth(bedOf(c), inSI(c, "y"));
    expectCase(c, "velocity", speed);
    expectCase(c, "flow", speed * area);
    expect(normalFlow(given(c.expected, "flow"), bedOf(c)).depth).toBeCloseTo(inSI(c, "y"), 3);
  });

  it("OC-03 the slope that Manning gives carries the flow (0.00088, rounded off in print, does not)", () => {
    const c = arithmeticCase("OC-03");
    const bed = { ...bedOf(c), slope: given(c.expected, "slope") };
    const { speed, area } = flowAtDepth(bed, inSI(c, "y"));
    expectCase(c, "area", area / FOOT ** 2);
    expectNear(speed * area, inSI(c, "Q"), 0.001);
    expectNear(inSI(c, "Q") / area / FOOT, given(c.expected, "velocity"), 1e-4);
    const printed = flowAtDepth({ ...bed, slope: 0.00088 }, inSI(c, "y"));
    expect((printed.speed * printed.area) / inSI(c, "Q")).toBeGreaterThan(1.01);
  });

  it.each(arithmeticCases(CHANNELS, "OC-ND-").map((c) => [c.id, c] as const))("%s rock bed, normal depth", (_, c) => {
    const { depth, speed, froude } = normalFlow(inSI(c, "flow"), bedOf(c));
    expectCase(c, "depth", depth / INCH);
    expectCase(c, "velocity", speed / FOOT);
    expectCase(c, "froude", froude);
  });
});
